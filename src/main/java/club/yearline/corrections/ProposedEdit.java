package club.yearline.corrections;

import club.yearline.catalog.EntryRef;
import club.yearline.effectivity.EntryKind;
import club.yearline.tables.Sheet;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import org.jspecify.annotations.Nullable;

/** What a correction makes of one entry. */
@Entity
class ProposedEdit {

  @Id
  @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "proposed_edit_seq")
  @SequenceGenerator(name = "proposed_edit_seq", sequenceName = "proposed_edit_seq")
  private @Nullable Long id;

  @Convert(converter = Codes.OfKind.class)
  private EntryKind kind;

  private String entryKey;
  private int baseRevision;
  private boolean withdrawn;
  private String sheet;

  protected ProposedEdit() {}

  static ProposedEdit of(Proposal proposal) {
    ProposedEdit edit = new ProposedEdit();
    edit.kind = proposal.ref().kind();
    edit.entryKey = proposal.ref().key();
    edit.become(proposal);
    return edit;
  }

  /** Takes over what is now proposed for the entry. */
  void become(Proposal proposal) {
    this.baseRevision = proposal.base();
    this.withdrawn = proposal.sheet() == null;
    this.sheet = proposal.sheet() == null ? "{}" : SheetText.write(proposal.sheet());
  }

  EntryRef ref() {
    return new EntryRef(kind, entryKey);
  }

  Proposal proposal() {
    Sheet proposed = withdrawn ? null : SheetText.read(kind, entryKey, sheet);
    return new Proposal(ref(), proposed, baseRevision);
  }
}
