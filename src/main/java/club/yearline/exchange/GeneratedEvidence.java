package club.yearline.exchange;

import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import club.yearline.citation.SourceKind;
import club.yearline.citation.Stance;
import club.yearline.effectivity.SourceEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Invents the sources of a family, and citations of them. */
final class GeneratedEvidence {

  private static final List<SourceKind> KINDS =
      List.of(
          SourceKind.PARTS_CATALOGUE,
          SourceKind.SERVICE_BULLETIN,
          SourceKind.PERIODICAL,
          SourceKind.OBSERVATION);

  /** One citation in so many speaks against its record. */
  private static final int DISPUTED = 40;

  private static final int PAGES = 300;

  private final String family;
  private final Random random;
  private int citations;

  GeneratedEvidence(String family, Random random) {
    this.family = family;
    this.random = random;
  }

  List<SourceEntry> sources() {
    List<SourceEntry> sources = new ArrayList<>();
    for (int i = 0; i < KINDS.size(); i++) {
      SourceKind kind = KINDS.get(i);
      String title = "Invented " + kind.code().replace('-', ' ') + " of " + family;
      sources.add(
          new SourceEntry(
              new Source(
                  key(i),
                  kind,
                  title,
                  "Berg, Ulla",
                  "Invented Press",
                  "IP-" + i,
                  "196X",
                  null,
                  null,
                  null)));
    }
    return sources;
  }

  private String key(int source) {
    return family + "-source-" + source;
  }

  /** A supporting citation of a whole record. */
  Citation supporting() {
    return citation(null, Stance.SUPPORTS);
  }

  /** Two citations of a change: one of all of it, one of a variant's cut-in. */
  List<Citation> ofChange(String variant) {
    boolean disputed = random.nextInt(DISPUTED) == 0;
    return List.of(supporting(), citation(variant, disputed ? Stance.DISPUTES : Stance.SUPPORTS));
  }

  private Citation citation(@Nullable String variant, Stance stance) {
    return new Citation(
        String.format("%s-citation-%03d", family, citations++),
        variant,
        key(random.nextInt(KINDS.size())),
        "p. " + (1 + random.nextInt(PAGES)),
        stance,
        null);
  }
}
