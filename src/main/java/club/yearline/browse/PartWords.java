package club.yearline.browse;

import club.yearline.catalog.Wording;
import club.yearline.citation.Citation;
import club.yearline.citation.SourceKind;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Change;
import club.yearline.effectivity.CutIn;
import club.yearline.effectivity.Descent;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Exchange;
import club.yearline.effectivity.Feature;
import club.yearline.effectivity.FeatureKind;
import club.yearline.effectivity.FeatureValue;
import club.yearline.effectivity.Offered;
import club.yearline.effectivity.ProductionRun;
import club.yearline.effectivity.SoldName;
import club.yearline.effectivity.SourceEntry;
import club.yearline.effectivity.Variant;
import club.yearline.effectivity.Visibility;
import club.yearline.effectivity.YearMeaning;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Says the parts of entries in words, each in one line.
 *
 * @param names where keys find their names; a key that has none there stands for itself
 */
record PartWords(Catalogue names, Wording wording, RecordTexts texts) {

  /** A part of an entry in words. */
  String say(Object part, Entry owner) {
    if (part instanceof CutIn cutIn) {
      return texts.get("part.of", variant(cutIn.variant()), wording.cutIn(cutIn));
    }
    if (part instanceof Offered offered) {
      return texts.get(
          "part.offered",
          feature(owner).map(f -> wording.offered(f, offered)).orElse(offered.value()),
          texts.message("mark.fit." + offered.fit().code()));
    }
    if (part instanceof Citation citation) {
      return citation(citation);
    }
    if (part instanceof FeatureValue value) {
      return joined(value.label(), value.cue(), value.picture(), value.pictureCredit());
    }
    if (part instanceof Descent descent) {
      String relation = texts.get("relation." + descent.relation().code());
      return joined(texts.get("part.of", relation, variant(descent.from())), descent.note());
    }
    return production(part).or(() -> word(part)).orElse(part.toString());
  }

  private Optional<String> production(Object part) {
    if (part instanceof SoldName name) {
      String years =
          new Ranges(wording, texts).range(text(name.firstYear()), text(name.lastYear()));
      return Optional.of(joined(name.name(), years));
    }
    if (part instanceof ProductionRun run) {
      String years = wording.years(run.firstYear(), run.lastYear());
      String built = run.built() == null ? "" : wording.airframes(run.built());
      return Optional.of(joined(years, built));
    }
    return Optional.empty();
  }

  private Optional<String> word(Object part) {
    if (part instanceof Boolean yes) {
      return Optional.of(texts.get(yes ? "yes" : "no"));
    }
    if (part instanceof Visibility visibility) {
      return Optional.of(texts.get("visibility." + visibility.code()));
    }
    if (part instanceof Exchange exchange) {
      return Optional.of(texts.get("exchange." + exchange.code()));
    }
    if (part instanceof FeatureKind kind) {
      return Optional.of(texts.get("feature-kind." + kind.code()));
    }
    if (part instanceof YearMeaning meaning) {
      return Optional.of(texts.get("year-meaning." + meaning.code()));
    }
    return part instanceof SourceKind kind
        ? Optional.of(texts.get("source-kind." + kind.code()))
        : Optional.empty();
  }

  private String citation(Citation citation) {
    String source =
        names
            .source(citation.source())
            .map(SourceEntry::source)
            .map(s -> s.title())
            .orElse(citation.source());
    String only = citation.variant() == null ? null : variant(citation.variant());
    String stance = citation.supports() ? null : texts.message("mark.disputed");
    return joined(source, citation.locator(), only, stance, citation.note());
  }

  private Optional<Feature> feature(Entry owner) {
    return owner instanceof Change change ? names.feature(change.feature()) : Optional.empty();
  }

  private String variant(String key) {
    return names.variant(key).map(Variant::designation).orElse(key);
  }

  private static @Nullable String text(@Nullable Integer year) {
    return year == null ? null : year.toString();
  }

  private static String joined(@Nullable String... parts) {
    return Stream.of(parts)
        .filter(p -> p != null && !p.isEmpty())
        .collect(Collectors.joining("; "));
  }
}
