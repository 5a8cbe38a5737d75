package club.yearline.browse;

import club.yearline.browse.DifferencePage.EditItem;
import club.yearline.browse.DifferencePage.KindEdits;
import club.yearline.catalog.EntryEdit;
import club.yearline.effectivity.Entry;
import club.yearline.effectivity.EntryKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Makes what pages show of edits: folded by kind, and of each kind no more than can be read.
 *
 * @param names names entries, of the later state
 * @param fields compares entries
 * @param suffix what pins a link to the later state's revision
 */
record EditViews(EntryNames names, EntryFields fields, RecordTexts texts, String suffix) {

  /** How many edits are shown together, shared among the kinds. */
  private static final int SHOWN = 120;

  List<KindEdits> of(List<EntryEdit> edits) {
    Map<EntryKind, List<EntryEdit>> byKind =
        edits.stream()
            .collect(Collectors.groupingBy(e -> e.ref().kind(), TreeMap::new, Collectors.toList()));
    int each = SHOWN / Math.max(byKind.size(), 1);
    List<KindEdits> kinds = new ArrayList<>();
    byKind.forEach((kind, own) -> kinds.add(kind(kind, own, each)));
    return kinds;
  }

  private KindEdits kind(EntryKind kind, List<EntryEdit> edits, int most) {
    List<EditItem> shown = edits.stream().limit(most).map(this::item).toList();
    return new KindEdits(
        "records.kind." + kind.code() + ".many", counts(edits), shown, edits.size() - shown.size());
  }

  private String counts(List<EntryEdit> edits) {
    return Stream.of("added", "changed", "withdrawn")
        .map(
            what -> {
              long count = edits.stream().filter(e -> what(e).equals(what)).count();
              return count == 0 ? "" : texts.get("edits." + what, count);
            })
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private EditItem item(EntryEdit edit) {
    Entry shown = Objects.requireNonNull(edit.after() == null ? edit.before() : edit.after());
    boolean changed = edit.before() != null && edit.after() != null;
    return new EditItem(
        names.name(shown),
        edit.after() == null ? null : names.path(shown) + suffix,
        what(edit),
        changed ? fields.differences(edit.before(), edit.after()) : List.of());
  }

  private static String what(EntryEdit edit) {
    if (edit.before() == null) {
      return "added";
    }
    return edit.after() == null ? "withdrawn" : "changed";
  }
}
