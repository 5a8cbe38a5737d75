package club.yearline.news;

import club.yearline.catalog.EntryEdit;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Impact;
import club.yearline.effectivity.ImpactRow;
import java.util.List;

/**
 * What a revision did, counted.
 *
 * @param added entries added
 * @param changed entries that read otherwise
 * @param withdrawn entries withdrawn
 * @param compared whether there was anything before whose answers could change
 * @param answersChanged stretches whose answer changed
 * @param onOtherEvidence stretches with the same answer on other evidence
 * @param answersNew stretches that had no answer before
 * @param answersGone stretches that have none any more
 */
record Tally(
    int added,
    int changed,
    int withdrawn,
    boolean compared,
    int answersChanged,
    int onOtherEvidence,
    int answersNew,
    int answersGone) {

  static Tally of(List<EntryEdit> edits, Catalogue before, Catalogue after) {
    boolean compared = !before.records().variants().isEmpty();
    List<ImpactRow> impact = compared ? Impact.between(before, after) : List.of();
    return new Tally(
        (int) edits.stream().filter(e -> e.before() == null).count(),
        (int) edits.stream().filter(e -> e.before() != null && e.after() != null).count(),
        (int) edits.stream().filter(e -> e.after() == null).count(),
        compared,
        count(impact, ImpactRow.Kind.CHANGED),
        count(impact, ImpactRow.Kind.EVIDENCE_ONLY),
        count(impact, ImpactRow.Kind.APPEARS),
        count(impact, ImpactRow.Kind.DISAPPEARS));
  }

  private static int count(List<ImpactRow> impact, ImpactRow.Kind kind) {
    return (int) impact.stream().filter(row -> row.kind() == kind).count();
  }
}
