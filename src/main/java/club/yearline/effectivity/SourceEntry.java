package club.yearline.effectivity;

import club.yearline.citation.Citation;
import club.yearline.citation.Source;
import java.util.List;

/** A source as a catalogue entry. */
public record SourceEntry(Source source) implements Entry {

  @Override
  public String key() {
    return source.key();
  }

  @Override
  public EntryKind kind() {
    return EntryKind.SOURCE;
  }

  @Override
  public List<Citation> citations() {
    return List.of();
  }
}
