package club.yearline.browse;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.SourceEntry;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Entries field by field, for showing what an edit changed. Goes through the components of the
 * entries' records, so that no field can be forgotten here.
 */
final class EntryFields {

  private final PartWords parts;

  EntryFields(PartWords parts) {
    this.parts = parts;
  }

  /** What reads differently; null stands for an entry that is not there. */
  List<FieldDifference> differences(@Nullable Entry before, @Nullable Entry after) {
    Map<String, List<String>> old = before == null ? Map.of() : fields(before);
    Map<String, List<String>> now = after == null ? Map.of() : fields(after);
    Map<String, List<String>> all = new LinkedHashMap<>(old);
    now.forEach(all::putIfAbsent);
    List<FieldDifference> differences = new ArrayList<>();
    for (String field : all.keySet()) {
      List<String> was = old.getOrDefault(field, List.of());
      List<String> is = now.getOrDefault(field, List.of());
      if (!was.equals(is)) {
        differences.add(new FieldDifference(field, without(was, is), without(is, was)));
      }
    }
    return differences;
  }

  /** Lines that both have say nothing about the difference, unless only their order differs. */
  private static List<String> without(List<String> lines, List<String> others) {
    List<String> left = lines.stream().filter(l -> !others.contains(l)).toList();
    boolean reordered = left.isEmpty() && lines.size() == others.size();
    return reordered && others.stream().allMatch(lines::contains) ? lines : left;
  }

  private Map<String, List<String>> fields(Entry entry) {
    Record recorded = entry instanceof SourceEntry source ? source.source() : (Record) entry;
    Map<String, List<String>> fields = new LinkedHashMap<>();
    for (RecordComponent component : recorded.getClass().getRecordComponents()) {
      List<String> lines = lines(read(component, recorded), entry);
      if (!component.getName().equals("key") && !lines.isEmpty()) {
        fields.put("records.field." + component.getName(), lines);
      }
    }
    return fields;
  }

  private List<String> lines(@Nullable Object value, Entry owner) {
    if (value == null) {
      return List.of();
    }
    return value instanceof List<?> list
        ? list.stream().map(part -> parts.say(part, owner)).toList()
        : List.of(parts.say(value, owner));
  }

  private static @Nullable Object read(RecordComponent component, Record of) {
    try {
      return component.getAccessor().invoke(of);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("Cannot read " + component + " of " + of.getClass(), e);
    }
  }
}
