package club.yearline.accounts;

import java.util.concurrent.TimeUnit;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;

/** Forgets what has been kept long enough. */
@Component
class Housekeeping {

  private final Club club;
  private final SecurityLog log;
  private final FailedSignIns failed;
  private final Devices devices;
  private final JoinRequests requests;
  private final PasskeyChallenges challenges;

  Housekeeping(
      Club club,
      SecurityLog log,
      FailedSignIns failed,
      Devices devices,
      JoinRequests requests,
      PasskeyChallenges challenges) {
    this.club = club;
    this.log = log;
    this.failed = failed;
    this.devices = devices;
    this.requests = requests;
    this.challenges = challenges;
  }

  @Scheduled(initialDelay = 10, fixedDelay = 60, timeUnit = TimeUnit.MINUTES)
  void tidy() {
    log.forgetOlderThan(club.settings().logDays());
    failed.forgetOld();
    devices.forgetOld();
    requests.forgetOld();
    challenges.forgetOld();
  }
}
