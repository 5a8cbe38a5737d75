package club.yearline.corrections;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Throttle;
import org.springframework.stereotype.Component;

/** Keeps anybody from flooding those who read corrections; far above what typing takes. */
@Component
class Pace {

  private static final int SUBMISSIONS_AN_HOUR = 60;
  private static final int REMARKS_AN_HOUR = 120;
  private static final int FILES_AN_HOUR = 100;

  private final Throttle throttle;

  Pace(Throttle throttle) {
    this.throttle = throttle;
  }

  /** Before something is handed in. */
  void submission(Actor actor) {
    require("submit", actor, SUBMISSIONS_AN_HOUR);
  }

  /** Before something is said. */
  void remark(Actor actor) {
    require("remark", actor, REMARKS_AN_HOUR);
  }

  /** Before a file is looked at, which costs most. */
  void file(Actor actor) {
    require("attach", actor, FILES_AN_HOUR);
  }

  private void require(String what, Actor actor, int times) {
    throttle.require(what, actor.id(), times);
  }
}
