package club.yearline.fleet;

import club.yearline.accounts.AccountClosed;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Takes out what a person has registered whose account is closed, in the same transaction. Of what
 * published corrections stand on, old or new and the place in the window remain.
 */
@Component
class FleetLeaving {

  private final Keeping keeping;
  private final StoredInspections inspections;

  FleetLeaving(Keeping keeping, StoredInspections inspections) {
    this.keeping = keeping;
    this.inspections = inspections;
  }

  @EventListener
  void on(AccountClosed closed) {
    keeping.forgetAll(closed.person());
    inspections.forget(closed.person());
  }
}
