package club.yearline.catalog;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Records;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a publication changes. Entries and pictures that are not mentioned stay as they are.
 *
 * @param put entries as they shall read; those that read so already make no new version
 * @param withdrawn entries to take out
 * @param pictures pictures to add, or to replace by name
 * @param withdrawnPictures names of pictures to take out
 * @param note what it changes, in a line or two
 * @param proposedBy who proposed it
 * @param approvedBy who approved it
 */
public record Edition(
    List<Entry> put,
    Set<EntryRef> withdrawn,
    List<PictureFile> pictures,
    Set<String> withdrawnPictures,
    String note,
    Contributor proposedBy,
    Contributor approvedBy) {

  public Edition {
    put = List.copyOf(put);
    withdrawn = Set.copyOf(withdrawn);
    pictures = List.copyOf(pictures);
    withdrawnPictures = Set.copyOf(withdrawnPictures);
    for (Entry entry : put) {
      if (withdrawn.contains(EntryRef.of(entry))) {
        throw new IllegalArgumentException(
            "An edition cannot both put and withdraw the " + EntryRef.of(entry));
      }
    }
  }

  /** An edition that puts entries as one person proposed and approved them. */
  public static Edition of(String note, @Nullable String by, Collection<? extends Entry> put) {
    Contributor both = Contributor.named(by);
    return new Edition(List.copyOf(put), Set.of(), List.of(), Set.of(), note, both, both);
  }

  /** This edition, with these entries taken out. */
  public Edition withdrawing(Collection<EntryRef> entries) {
    return new Edition(
        put, Set.copyOf(entries), pictures, withdrawnPictures, note, proposedBy, approvedBy);
  }

  /** This edition, with these pictures added or replaced. */
  public Edition withPictures(Collection<PictureFile> files) {
    return new Edition(
        put, withdrawn, List.copyOf(files), withdrawnPictures, note, proposedBy, approvedBy);
  }

  /** This edition, with the pictures of these names taken out. */
  public Edition withdrawingPictures(Collection<String> names) {
    return new Edition(put, withdrawn, pictures, Set.copyOf(names), note, proposedBy, approvedBy);
  }

  /** This edition, as one person proposed and another approved it. */
  public Edition by(Contributor proposer, Contributor approver) {
    return new Edition(put, withdrawn, pictures, withdrawnPictures, note, proposer, approver);
  }

  /**
   * The records that it would make of others.
   *
   * @throws IllegalArgumentException if it withdraws what is not there
   */
  public Records after(Records before) {
    return Amendment.of(this, before).after();
  }
}
