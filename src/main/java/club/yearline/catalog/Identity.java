package club.yearline.catalog;

import club.yearline.effectivity.EntryKind;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import org.jspecify.annotations.Nullable;

/** Who an entry is, whatever its versions say. Never changed, never deleted. */
@Entity
@Table(name = "entry")
class Identity {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "entry_seq")
  @SequenceGenerator(name = "entry_seq", sequenceName = "entry_seq", allocationSize = 500)
  private @Nullable Long id;

  @Enumerated(EnumType.STRING)
  private EntryKind kind;

  @Column(name = "entry_key")
  private String key;

  protected Identity() {}

  private Identity(EntryRef ref) {
    kind = ref.kind();
    key = ref.key();
  }

  static Identity of(EntryRef ref) {
    return new Identity(ref);
  }

  /** Its number, once persisted. */
  long id() {
    if (id == null) {
      throw new IllegalStateException("The entry " + key + " is not stored yet");
    }
    return id;
  }

  EntryRef ref() {
    return new EntryRef(kind, key);
  }
}
