package club.yearline.accounts;

import club.yearline.web.Refusal;
import jakarta.servlet.http.HttpServletRequest;
import org.springframework.stereotype.Component;

/** How often people without an account may do something: counted by their network. */
@Component
public class VisitorPace {

  private final Throttle throttle;

  VisitorPace(Throttle throttle) {
    this.throttle = throttle;
  }

  /**
   * Counts one more time.
   *
   * @param what what is done, such as {@code join}
   * @param anHour how often a network may do it in an hour
   * @throws Refusal if that was too often
   */
  public void count(String what, HttpServletRequest request, int anHour) {
    String network = ClientAddress.of(request).network();
    throttle.require(what, network, anHour);
  }
}
