package club.yearline.quiz;

import club.yearline.accounts.AccountClosed;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Takes away the links of a person whose account is closed, in the same transaction. */
@Component
class QuizLeaving {

  private final QuizLinks links;

  QuizLeaving(QuizLinks links) {
    this.links = links;
  }

  @EventListener
  void on(AccountClosed closed) {
    links.removeAll(closed.person());
  }
}
