package club.yearline.effectivity;

import club.yearline.citation.Citation;
import java.util.List;

/**
 * A catalogue entry: an identity ({@link #key}) with what one of its versions says. Entries hold
 * text exactly as recorded, so that a catalogue leaves as it came; {@link Catalogue} makes the
 * computed forms of them.
 */
public sealed interface Entry
    permits Family, Variant, Series, SerialBlock, Feature, Change, Retrofit, SourceEntry {

  /** Stable key, unique within the kind. */
  String key();

  /** What kind of entry this is. */
  EntryKind kind();

  /** The citations made by this entry; empty for sources, which are cited and do not cite. */
  List<Citation> citations();
}
