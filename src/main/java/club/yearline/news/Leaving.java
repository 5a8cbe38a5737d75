package club.yearline.news;

import club.yearline.accounts.AccountClosed;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Erases what was kept for a person whose account is closed, in the same transaction. */
@Component
class Leaving {

  private final Messages messages;
  private final Watches watches;
  private final MailWishes wishes;
  private final Outbox outbox;

  Leaving(Messages messages, Watches watches, MailWishes wishes, Outbox outbox) {
    this.messages = messages;
    this.watches = watches;
    this.wishes = wishes;
    this.outbox = outbox;
  }

  @EventListener
  void on(AccountClosed closed) {
    messages.forget(closed.person());
    watches.forget(closed.person());
    wishes.forget(closed.person());
    outbox.forget(closed.person());
  }
}
