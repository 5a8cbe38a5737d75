package club.yearline.effectivity;

import club.yearline.citation.Citation;
import club.yearline.citation.Grade;
import club.yearline.citation.Source;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * What an answer rests on.
 *
 * @param grade the best grade among the supporting sources of the deciding changes
 * @param disputed whether any source disputes them
 * @param citations their citations that bear on the variant, of the whole record and of its cut-in
 */
public record Evidence(Grade grade, boolean disputed, List<Citation> citations) {

  static final Evidence NONE = new Evidence(Grade.NONE, false, List.of());

  public Evidence {
    citations = List.copyOf(citations);
  }

  static Evidence of(String variant, Collection<Possible> deciding, Map<String, Source> sources) {
    Grade grade = Grade.NONE;
    boolean disputed = false;
    List<Citation> citations = new ArrayList<>();
    for (Possible possible : deciding) {
      for (Citation citation :
          possible.change() == null ? List.<Citation>of() : possible.change().citations()) {
        Source source = sources.get(citation.source());
        if (source != null && citation.bearsOn(variant)) {
          citations.add(citation);
          disputed |= !citation.supports();
          grade = citation.supports() ? grade.orBetter(source.kind().grade()) : grade;
        }
      }
    }
    return new Evidence(grade, disputed, citations);
  }

  boolean weighsSame(Evidence other) {
    return grade == other.grade && disputed == other.disputed;
  }
}
