package club.yearline.catalog;

import static club.yearline.effectivity.EntryKind.VARIANT;

import club.yearline.effectivity.Descent;
import club.yearline.effectivity.Relation;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import org.jspecify.annotations.Nullable;

/** A descent within a version of the younger variant. */
@Embeddable
record DescentPart(
    long fromId, @Enumerated(EnumType.STRING) Relation relation, @Nullable String note) {

  static DescentPart of(Descent descent, EntryIds ids) {
    return new DescentPart(ids.id(VARIANT, descent.from()), descent.relation(), descent.note());
  }

  Descent toDescent(Sweep sweep) {
    return new Descent(sweep.key(fromId), relation, note);
  }
}
