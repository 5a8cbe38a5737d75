package club.yearline.groundschool;

import club.yearline.accounts.AccountClosed;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Takes out what a person has kept whose account is closed, in the same transaction. */
@Component
class HandoutsLeaving {

  private final SavedHandouts saved;

  HandoutsLeaving(SavedHandouts saved) {
    this.saved = saved;
  }

  @EventListener
  void on(AccountClosed closed) {
    saved.removeAll(closed.person());
  }
}
