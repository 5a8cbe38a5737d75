package club.yearline.catalog;

import club.yearline.effectivity.EntryKind;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The numbers of entries during one publication: those there were and those it adds. */
final class EntryIds {

  private final Identities identities;
  private final Map<EntryKind, Map<String, Long>> known = new EnumMap<>(EntryKind.class);

  EntryIds(Identities identities) {
    this.identities = identities;
  }

  /** Gives numbers to those of the entries that have none yet. */
  void assign(Collection<EntryRef> refs) {
    List<EntryRef> unknown =
        refs.stream().distinct().filter(ref -> !of(ref.kind()).containsKey(ref.key())).toList();
    for (Identity added : identities.add(unknown)) {
      of(added.ref().kind()).put(added.ref().key(), added.id());
    }
  }

  long id(EntryKind kind, String key) {
    Long id = of(kind).get(key);
    if (id == null) {
      throw new IllegalArgumentException(
          "There is no " + new EntryRef(kind, key) + " to refer to; publish it first or with it");
    }
    return id;
  }

  @Nullable Long idOrNull(EntryKind kind, @Nullable String key) {
    return key == null ? null : id(kind, key);
  }

  private Map<String, Long> of(EntryKind kind) {
    return known.computeIfAbsent(kind, identities::ofKind);
  }
}
