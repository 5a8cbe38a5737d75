package club.yearline.corrections;

import club.yearline.catalog.PictureFile;
import club.yearline.effectivity.Entry;
import java.util.List;

/**
 * What a data package would put into the catalogue.
 *
 * @param entries the entries that it has otherwise than published, or that are new
 * @param pictures likewise
 * @param onto number of the revision that it was compared with
 */
public record PackageProposal(List<Entry> entries, List<PictureFile> pictures, int onto) {

  public PackageProposal {
    entries = List.copyOf(entries);
    pictures = List.copyOf(pictures);
  }
}
