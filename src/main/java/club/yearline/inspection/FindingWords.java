package club.yearline.inspection;

import club.yearline.catalog.Wording;
import club.yearline.effectivity.Retrofit;
import club.yearline.effectivity.State;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** Findings in words, the same on the page, in the report and in the API. */
@Component
public class FindingWords {

  /** More ranges than these tell nobody where a value belongs. */
  private static final int MOST_HOMES = 8;

  private final Wording wording;
  private final Phrases phrases;

  FindingWords(Wording wording, Phrases phrases) {
    this.wording = wording;
    this.phrases = phrases;
  }

  /** The value seen, as a person says it. */
  public String observed(Finding finding) {
    return wording.value(finding.feature(), finding.seen().value());
  }

  /** The finding in a word. */
  String word(Match match) {
    return phrases.of("inspect.match." + match.code());
  }

  /** The finding in a sentence. */
  String says(Finding finding) {
    String key = "inspect.says." + finding.match().code();
    return switch (finding.match()) {
      case AS_BUILT, AS_BUILT_OPTION -> phrases.of(key);
      case RETROFIT -> phrases.of(key, expected(finding), documents(finding.retrofits()));
      case NOT_RECORDED ->
          phrases.of(finding.answer() == null ? key + ".no-feature" : key, expected(finding));
      case EITHER, DIFFERS -> phrases.of(key, expected(finding));
    };
  }

  private String expected(Finding finding) {
    if (finding.answer() == null) {
      return "";
    }
    String text = wording.answer(finding.answer());
    return finding.answer().state() == State.SPLITS ? phrases.of("inspect.by-serial", text) : text;
  }

  /** What else is to be known of a finding. */
  List<String> notes(Finding finding) {
    List<String> notes = new ArrayList<>();
    if (!finding.asBuiltAt().isEmpty()) {
      notes.add(phrases.of("inspect.belongs", homes(finding.asBuiltAt())));
    }
    if (!finding.possibleAt().isEmpty()) {
      notes.add(phrases.of("inspect.belongs.possible", homes(finding.possibleAt())));
    }
    if (finding.match() == Match.DIFFERS) {
      if (finding.asBuiltAt().isEmpty() && finding.possibleAt().isEmpty()) {
        notes.add(phrases.of("inspect.belongs.nowhere"));
      }
      notes.add(phrases.of("inspect.exchange." + finding.feature().exchange().code()));
    }
    for (Retrofit retrofit : finding.missing()) {
      notes.add(phrases.of("inspect.missing", document(finding, retrofit)));
    }
    return notes;
  }

  /** What to put to the logbooks; empty where there is nothing to ask. */
  public String ask(Finding finding) {
    return switch (finding.match()) {
      case DIFFERS ->
          phrases.of(
              "inspect.ask.differs",
              finding.feature().name(),
              observed(finding),
              expected(finding),
              phrases.of("inspect.ask." + finding.feature().exchange().code()));
      case RETROFIT ->
          phrases.of(
              "inspect.ask.retrofit",
              finding.feature().name(),
              observed(finding),
              documents(finding.retrofits()));
      default -> "";
    };
  }

  /** What a mandatory modification calls for. */
  String calledFor(CalledFor called) {
    Retrofit retrofit = called.retrofit();
    return phrases.of(
        "inspect.called",
        retrofit.document(),
        called.feature().name(),
        wording.value(called.feature(), retrofit.value()));
  }

  private String document(Finding finding, Retrofit retrofit) {
    return phrases.of(
        "inspect.called",
        retrofit.document(),
        finding.feature().name(),
        wording.value(finding.feature(), retrofit.value()));
  }

  private String documents(List<Retrofit> retrofits) {
    return retrofits.stream()
        .map(r -> r.note() == null ? r.document() : r.document() + " (" + r.note() + ")")
        .distinct()
        .collect(Collectors.joining(phrases.of("inspect.or")));
  }

  private String homes(List<Belongs> homes) {
    String named =
        homes.stream()
            .limit(MOST_HOMES)
            .map(b -> b.variant().designation() + " " + wording.years(b.firstYear(), b.lastYear()))
            .collect(Collectors.joining(", "));
    return homes.size() <= MOST_HOMES
        ? named
        : phrases.of("inspect.belongs.more", named, homes.size() - MOST_HOMES);
  }
}
