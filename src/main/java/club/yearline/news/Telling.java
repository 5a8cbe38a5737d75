package club.yearline.news;

import club.yearline.accounts.Actor;
import club.yearline.accounts.JoinAsked;
import club.yearline.accounts.People;
import club.yearline.accounts.Role;
import club.yearline.catalog.Revision;
import club.yearline.corrections.CorrectionMoved;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/**
 * Tells people what happened, in the transaction in which it happens: either both are stored or
 * neither. Nobody is told what they did themselves.
 */
@Component
class Telling {

  private final Messages messages;
  private final Watches watches;
  private final MailWishes wishes;
  private final Outbox outbox;
  private final Mailing mailing;
  private final People people;

  Telling(
      Messages messages,
      Watches watches,
      MailWishes wishes,
      Outbox outbox,
      Mailing mailing,
      People people) {
    this.messages = messages;
    this.watches = watches;
    this.wishes = wishes;
    this.outbox = outbox;
    this.mailing = mailing;
    this.people = people;
  }

  /** Tells those who watch what a revision touches. */
  void published(Revision revision, Set<Watched> touched) {
    Map<Long, List<Watched>> watchers = watches.of(touched);
    watchers.keySet().removeAll(Bylines.makers(revision));
    Map<Long, MailWish> wanted = wanted(watchers.keySet());
    watchers.forEach(
        (person, watched) ->
            tell(person, Message.About.revision(revision.number(), watched), wanted.get(person)));
  }

  @EventListener
  void on(CorrectionMoved moved) {
    switch (moved.what()) {
      case "submitted" -> tellModerators(moved, Message.Kind.SUBMITTED);
      case "sent-back" -> tellAuthor(moved, Message.Kind.SENT_BACK);
      case "mended" -> tellAuthor(moved, Message.Kind.MENDED);
      case "approved" -> tellAuthor(moved, Message.Kind.APPROVED);
      case "rejected" -> tellAuthor(moved, Message.Kind.REJECTED);
      case "remark" -> {
        if (moved.actor() == moved.author()) {
          tellModerators(moved, Message.Kind.ANSWERED);
        } else {
          tellAuthor(moved, Message.Kind.REMARK);
        }
      }
      default -> {
        // What is withdrawn concerns nobody any more.
      }
    }
  }

  @EventListener
  void on(JoinAsked asked) {
    tellAll(
        people.withRole(Role.MODERATOR).stream().map(Actor::id).toList(),
        Message.About.joinAsked(asked.request()));
  }

  private void tellAuthor(CorrectionMoved moved, Message.Kind kind) {
    if (moved.actor() != moved.author() && people.find(moved.author()).isPresent()) {
      tellAll(List.of(moved.author()), about(moved, kind));
    }
  }

  private void tellModerators(CorrectionMoved moved, Message.Kind kind) {
    tellAll(
        people.withRole(Role.MODERATOR).stream()
            .map(Actor::id)
            .filter(id -> id != moved.actor())
            .toList(),
        about(moved, kind));
  }

  private static Message.About about(CorrectionMoved moved, Message.Kind kind) {
    return Message.About.correction(kind, moved.correction(), moved.title(), moved.actor());
  }

  private void tellAll(Collection<Long> all, Message.About about) {
    Map<Long, MailWish> wanted = wanted(all);
    all.forEach(person -> tell(person, about, wanted.get(person)));
  }

  private Map<Long, MailWish> wanted(Collection<Long> all) {
    return mailing.isSet() ? wishes.of(all) : Map.of();
  }

  private void tell(long person, Message.About about, @Nullable MailWish wish) {
    Instant now = Instant.now();
    Long mail = null;
    if (wish == MailWish.EACH) {
      mail = outbox.add(person, now);
    } else if (wish == MailWish.DAILY) {
      mail = outbox.digest(person, now);
    }
    messages.add(person, about, mail);
  }
}
