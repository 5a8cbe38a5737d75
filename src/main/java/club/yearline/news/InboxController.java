package club.yearline.news;

import club.yearline.accounts.Actor;
import club.yearline.web.Pages;
import club.yearline.web.Refusal;
import club.yearline.web.Times;
import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What a person was told. */
@Controller
class InboxController {

  static final int ON_A_PAGE = 30;

  private final Messages messages;
  private final MessageWords words;
  private final MailWishes wishes;
  private final Mailing mailing;

  InboxController(Messages messages, MessageWords words, MailWishes wishes, Mailing mailing) {
    this.messages = messages;
    this.words = words;
    this.wishes = wishes;
    this.mailing = mailing;
  }

  /** A message as the list shows it. */
  record Line(String href, String text, String when, boolean read) {}

  @GetMapping("/inbox")
  String inbox(Actor actor, @RequestParam(defaultValue = "1") int page, Model model) {
    int count = (int) Math.max(1, (messages.count(actor.id()) + ON_A_PAGE - 1) / ON_A_PAGE);
    if (page < 1 || page > count) {
      throw Refusal.notFound("no-such-page", page, count);
    }
    List<Message> shown = messages.of(actor.id(), (page - 1) * ON_A_PAGE, ON_A_PAGE);
    model.addAttribute("lines", lines(shown));
    model.addAttribute("unread", messages.unread(actor.id()));
    model.addAttribute("latest", shown.isEmpty() ? 0 : shown.get(0).id());
    model.addAttribute("pages", new Pages("/inbox", page, count));
    model.addAttribute("mail", mailing.isSet());
    model.addAttribute("wishes", Stream.of(MailWish.values()).map(MailWish::code).toList());
    model.addAttribute("wish", wishes.of(actor.id()).code());
    return "news/inbox";
  }

  private List<Line> lines(List<Message> shown) {
    List<String> texts = words.say(shown);
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      Message message = shown.get(i);
      lines.add(
          new Line(
              "/inbox/" + message.id(),
              texts.get(i),
              Times.minute(message.sentAt()),
              message.read()));
    }
    return lines;
  }

  /** Leads to what a message is about, and marks it as read unless a browser only looks ahead. */
  @GetMapping("/inbox/{id}")
  String open(Actor actor, @PathVariable long id, HttpServletRequest request) {
    Message message =
        messages.find(id, actor.id()).orElseThrow(() -> Refusal.notFound("unknown-message"));
    if (request.getMethod().equals("GET") && request.getHeader("Sec-Purpose") == null) {
      messages.read(id, actor.id());
    }
    return "redirect:" + message.about().path();
  }

  @PostMapping("/inbox/read")
  String readAll(Actor actor, @RequestParam long upTo) {
    messages.readAll(actor.id(), upTo);
    return "redirect:/inbox";
  }

  @PostMapping("/inbox/mail")
  String wish(Actor actor, @RequestParam(defaultValue = "") String wish) {
    MailWish wanted =
        MailWish.of(wish).orElseThrow(() -> Refusal.notUnderstood("mail-wish-unreadable"));
    wishes.set(actor.id(), wanted);
    return "redirect:/inbox";
  }
}
