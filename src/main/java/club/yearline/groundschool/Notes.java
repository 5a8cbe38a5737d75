package club.yearline.groundschool;

import club.yearline.citation.Citation;
import club.yearline.citation.Reference;
import club.yearline.citation.Source;
import club.yearline.citing.Style;
import club.yearline.citing.Styles;
import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.SourceEntry;
import club.yearline.groundschool.HandoutView.Mark;
import club.yearline.groundschool.HandoutView.Note;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Numbers sources in the order in which they are first called upon. */
final class Notes {

  private final Catalogue catalogue;
  private final Styles styles;
  private final Map<String, Note> notes = new LinkedHashMap<>();

  Notes(Catalogue catalogue, Styles styles) {
    this.catalogue = catalogue;
    this.styles = styles;
  }

  /** The notes so far. */
  List<Note> all() {
    return List.copyOf(notes.values());
  }

  /** What citations point to: each source and place once, those against it marked. */
  List<Mark> marks(List<Citation> citations) {
    List<Mark> marks = new ArrayList<>();
    for (Citation citation : citations) {
      Note note = notes.computeIfAbsent(citation.source(), this::note);
      String place = citation.locator() == null ? "" : ", " + citation.locator();
      Mark mark = new Mark(note.number(), note.number() + place, citation.supports());
      if (!marks.contains(mark)) {
        marks.add(mark);
      }
    }
    return marks;
  }

  private Note note(String key) {
    Source source = catalogue.source(key).map(SourceEntry::source).orElseThrow();
    return new Note(
        notes.size() + 1, source.title(), styles.cite(Reference.of(source), Style.ISO_690));
  }
}
