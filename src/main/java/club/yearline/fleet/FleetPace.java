package club.yearline.fleet;

import club.yearline.accounts.Actor;
import club.yearline.accounts.Throttle;
import org.springframework.stereotype.Component;

/** Keeps anybody from flooding the register; far above what looking and typing take. */
@Component
class FleetPace {

  private static final int AIRFRAMES_AN_HOUR = 120;
  private static final int OBSERVATIONS_AN_HOUR = 600;
  private static final int PHOTOGRAPHS_AN_HOUR = 100;
  private static final int EXPORTS_AN_HOUR = 20;

  private final Throttle throttle;

  FleetPace(Throttle throttle) {
    this.throttle = throttle;
  }

  /** Before an airframe is registered. */
  void airframe(Actor actor) {
    require("register", actor, AIRFRAMES_AN_HOUR);
  }

  /** Before something seen is recorded. */
  void observation(Actor actor) {
    require("observe", actor, OBSERVATIONS_AN_HOUR);
  }

  /** Before a photograph is looked at, which costs most. */
  void photograph(Actor actor) {
    require("photograph", actor, PHOTOGRAPHS_AN_HOUR);
  }

  /** Before everything is handed out. */
  void export(Actor actor) {
    require("export", actor, EXPORTS_AN_HOUR);
  }

  private void require(String what, Actor actor, int times) {
    throttle.require(what, actor.id(), times);
  }
}
