package club.yearline.corrections;

import club.yearline.catalog.Chapters;
import club.yearline.catalog.EntryRef;
import club.yearline.catalog.Snapshot;
import club.yearline.catalog.Snapshots;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Complaint;
import club.yearline.tables.Sheet;
import club.yearline.tables.SheetReader;
import club.yearline.tables.SheetReader.Fault;
import club.yearline.web.Refusal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.util.MultiValueMap;

/** Shows entries in forms, and reads what was typed. */
@Component
class EntryForm {

  /** The most characters of one field. */
  private static final int MOST_CHARACTERS = 10_000;

  private final Snapshots snapshots;
  private final Chapters chapters;
  private final FormViews views;

  EntryForm(Snapshots snapshots, Chapters chapters, FormViews views) {
    this.snapshots = snapshots;
    this.chapters = chapters;
    this.views = views;
  }

  /**
   * What somebody typed about an entry.
   *
   * @param proposal what it proposes
   * @param faults cells that cannot be read
   * @param isNew whether it was typed as an entry that is not there yet
   */
  record Typed(Proposal proposal, List<Fault> faults, boolean isNew) {}

  /** The kind that an address names. */
  static EntryKind kind(String code) {
    return Arrays.stream(EntryKind.values())
        .filter(kind -> kind.code().equals(code))
        .findFirst()
        .orElseThrow(() -> Refusal.notFound("unknown-kind", code));
  }

  /** An entry as published now, to be corrected; a blank one where no key is given. */
  Proposal begin(EntryKind kind, @Nullable String key) {
    Snapshot newest = snapshots.head();
    if (key == null || key.isEmpty()) {
      return new Proposal(new EntryRef(kind, ""), Sheet.blank(kind, ""), newest.number());
    }
    EntryRef ref = new EntryRef(kind, key);
    Sheet sheet =
        newest
            .entry(ref)
            .map(Sheet::of)
            .orElseThrow(() -> Refusal.notFound("unknown-entry", kind.code(), key));
    return new Proposal(ref, sheet, newest.number());
  }

  /** Reads what was typed; keys that people need not think of are made. */
  Typed read(EntryKind kind, MultiValueMap<String, String> typed) {
    boolean isNew = typed.getFirst("new") != null;
    String key = text(typed, "key");
    Sheet sheet = SheetForm.read(kind, key, typed);
    if (isNew && key.isEmpty()) {
      key = Names.keyOf(Names.of(new EntryRef(kind, ""), sheet));
      sheet = Sheet.of(kind, key, sheet.tables());
    }
    EntryRef ref = new EntryRef(kind, key);
    int base = base(text(typed, "base"));
    if (typed.getFirst("withdraw") != null && !isNew) {
      return new Typed(new Proposal(ref, null, base), List.of(), false);
    }
    Sheet keyed = keyed(sheet);
    List<Fault> faults = new ArrayList<>(SheetReader.read(keyed).faults());
    faults.addAll(tooLong(keyed));
    if (isNew && snapshots.head().entry(ref).isPresent()) {
      faults.add(new Fault(kind.resource(), 0, "key", Complaint.of("taken")));
    }
    return new Typed(new Proposal(ref, keyed, base), faults, isNew);
  }

  /** The format bounds names and titles only; what is typed is bounded everywhere. */
  private static List<Fault> tooLong(Sheet sheet) {
    List<Fault> faults = new ArrayList<>();
    for (Map.Entry<String, List<Map<String, String>>> table : sheet.tables().entrySet()) {
      for (int i = 0; i < table.getValue().size(); i++) {
        for (Map.Entry<String, String> cell : table.getValue().get(i).entrySet()) {
          if (cell.getValue().length() > MOST_CHARACTERS) {
            faults.add(
                new Fault(
                    table.getKey(), i, cell.getKey(), Complaint.of("too-long", MOST_CHARACTERS)));
          }
        }
      }
    }
    return faults;
  }

  /** Whether something would differ from what is published. */
  boolean changesAnything(Proposal proposal) {
    Sheet published = snapshots.head().entry(proposal.ref()).map(Sheet::of).orElse(null);
    return proposal.sheet() == null ? published != null : !proposal.sheet().equals(published);
  }

  /** What the page shows of a sheet. */
  FormView view(Sheet sheet, List<Fault> faults, @Nullable String grown) {
    Known known = Known.in(snapshots.head().catalogue(), chapters, sheet);
    return views.of(sheet, faults, known, grown);
  }

  /** What is wrong with the entry's key; null where nothing is. */
  @Nullable String keyFault(EntryKind kind, List<Fault> faults) {
    return faults.stream()
        .filter(f -> f.table().equals(kind.resource()) && f.column().equals("key"))
        .map(views::fault)
        .findFirst()
        .orElse(null);
  }

  /** A revision that does not exist would make the form's base unreadable later. */
  private int base(String typed) {
    int newest = snapshots.head().number();
    int base = typed.matches("[0-9]{1,9}") ? Integer.parseInt(typed) : newest;
    return Math.min(base, newest);
  }

  private Sheet keyed(Sheet sheet) {
    Sheet keyed = sheet;
    if (sheet.rows("citations").stream().anyMatch(row -> !row.containsKey("key"))) {
      Set<String> taken = CitationKeys.in(snapshots.head().catalogue().records());
      keyed =
          withKeys(
              keyed,
              "citations",
              row -> CitationKeys.free(sheet.key(), row.getOrDefault("source", ""), taken));
    }
    return withKeys(keyed, "feature-values", row -> Names.keyOf(row.getOrDefault("label", "")));
  }

  private interface KeyMaker {
    String keyFor(Map<String, String> row);
  }

  private static Sheet withKeys(Sheet sheet, String table, KeyMaker maker) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (Map<String, String> row : sheet.rows(table)) {
      Map<String, String> keyed = new LinkedHashMap<>(row);
      keyed.computeIfAbsent("key", k -> maker.keyFor(row));
      rows.add(keyed);
    }
    return sheet.with(table, rows);
  }

  static String text(MultiValueMap<String, String> typed, String name) {
    String value = typed.getFirst(name);
    return value == null ? "" : value.strip();
  }
}
