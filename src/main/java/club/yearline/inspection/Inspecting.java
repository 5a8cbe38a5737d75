package club.yearline.inspection;

import club.yearline.catalog.Chapters;
import club.yearline.catalog.Links;
import club.yearline.catalog.Reading;
import club.yearline.catalog.Wording;
import club.yearline.effectivity.Answer;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Located;
import club.yearline.effectivity.Question;
import club.yearline.expected.Plate;
import club.yearline.expected.Trouble;
import club.yearline.expected.Troubles;
import club.yearline.web.Phrases;
import jakarta.servlet.http.HttpServletRequest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Reads what was sent and works the inspection out, or says why there is none. */
@Component
class Inspecting {

  private final Chapters chapters;
  private final Wording wording;
  private final Phrases phrases;
  private final FindingWords words;

  Inspecting(Chapters chapters, Wording wording, Phrases phrases, FindingWords words) {
    this.chapters = chapters;
    this.wording = wording;
    this.phrases = phrases;
    this.words = words;
  }

  /**
   * What came of a request.
   *
   * @param sent what was sent
   * @param addresses addresses of the same observations
   * @param made the inspection; null where the claim points nowhere
   * @param trouble why it points nowhere; null where it does, or nothing was asked
   */
  record Outcome(Sent sent, Addresses addresses, @Nullable Made made, @Nullable Trouble trouble) {}

  /**
   * An inspection, ready to show.
   *
   * @param found the claim
   * @param inspection what was found
   * @param report the same in words
   */
  record Made(Located.Found found, List<Answer> expected, Inspection inspection, Report report) {}

  Outcome of(Reading reading, HttpServletRequest request) {
    return of(Links.of(reading, request), request.getParameterMap());
  }

  Outcome of(Links links, Map<String, String[]> parameters) {
    Catalogue catalogue = links.reading().catalogue();
    Sent sent = Sent.read(catalogue, parameters);
    Addresses addresses = new Addresses(links, sent.seen());
    if (sent.asked().isFresh()) {
      return new Outcome(sent, addresses, null, null);
    }
    Question question = sent.asked().question(catalogue);
    Located located = catalogue.locate(question);
    if (!sent.asked().yearIsUnreadable() && located instanceof Located.Found found) {
      return new Outcome(sent, addresses, made(addresses, found), null);
    }
    Troubles troubles = new Troubles(addresses.links(), wording, phrases, addresses::to);
    return new Outcome(
        sent,
        addresses,
        null,
        sent.asked().yearIsUnreadable()
            ? troubles.yearUnreadable(Objects.requireNonNull(sent.asked().year()).strip())
            : troubles.of(located, question));
  }

  private Made made(Addresses addresses, Located.Found found) {
    Catalogue catalogue = addresses.links().reading().catalogue();
    List<Answer> expected = catalogue.expected(found.position());
    Inspection inspection =
        Inspector.inspect(catalogue, found.position(), expected, addresses.seen());
    return new Made(found, expected, inspection, reports(addresses).of(inspection));
  }

  Plate plate(Addresses addresses) {
    return new Plate(addresses.links(), wording, phrases);
  }

  private Reports reports(Addresses addresses) {
    return new Reports(addresses, plate(addresses), words, phrases);
  }

  /** The walk-around list, with a finding under each feature that was looked at. */
  Walk walk(Outcome outcome, Made made) {
    Reports reports = reports(outcome.addresses());
    Map<String, Walk.Found> found = new HashMap<>();
    made.inspection().findings().forEach(f -> found.put(f.feature().key(), reports.found(f)));
    return new Walks(chapters, outcome.addresses().links(), phrases, outcome.sent(), found)
        .of(made.expected());
  }
}
