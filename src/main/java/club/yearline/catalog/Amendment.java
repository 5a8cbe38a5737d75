package club.yearline.catalog;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Records;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What an edition really changes.
 *
 * @param edits what it does to each entry that reads otherwise after it
 * @param begun entries that are new or read otherwise than before
 * @param ended entries whose version ends: they are withdrawn, or have a new version
 * @param after the records that the edition makes
 */
record Amendment(List<EntryEdit> edits, List<Entry> begun, Set<EntryRef> ended, Records after) {

  static Amendment of(Edition edition, Records before) {
    Map<EntryRef, Entry> open =
        before.entries().stream().collect(Collectors.toMap(EntryRef::of, Function.identity()));
    refuseUnknown(edition.withdrawn(), open.keySet());
    List<Entry> begun =
        edition.put().stream().filter(e -> !e.equals(open.get(EntryRef.of(e)))).toList();
    Set<EntryRef> ended = new HashSet<>(edition.withdrawn());
    begun.stream().map(EntryRef::of).filter(open::containsKey).forEach(ended::add);
    List<EntryEdit> edits =
        Stream.concat(
                begun.stream().map(e -> new EntryEdit(EntryRef.of(e), open.get(EntryRef.of(e)), e)),
                edition.withdrawn().stream().map(ref -> new EntryEdit(ref, open.get(ref), null)))
            .toList();
    return new Amendment(edits, begun, ended, after(edition, before));
  }

  /** An entry that is put twice is in there twice, so that it is found. */
  private static Records after(Edition edition, Records before) {
    Set<EntryRef> without = new HashSet<>(edition.withdrawn());
    edition.put().forEach(entry -> without.add(EntryRef.of(entry)));
    return Revising.records(before, without, edition.put(), pictures(edition, before));
  }

  private static List<Picture> pictures(Edition edition, Records before) {
    Set<String> without = new HashSet<>(edition.withdrawnPictures());
    edition.pictures().forEach(file -> without.add(file.name()));
    return Stream.concat(
            before.pictures().stream().filter(picture -> !without.contains(picture.name())),
            edition.pictures().stream().map(PictureFile::picture))
        .toList();
  }

  private static void refuseUnknown(Set<EntryRef> withdrawn, Set<EntryRef> open) {
    for (EntryRef ref : withdrawn) {
      if (!open.contains(ref)) {
        throw new IllegalArgumentException("There is no published " + ref + " to withdraw");
      }
    }
  }
}
