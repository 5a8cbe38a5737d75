package club.yearline.citation;

import static club.yearline.citation.Grade.AIRFRAME;
import static club.yearline.citation.Grade.MAKER_OR_AUTHORITY;
import static club.yearline.citation.Grade.PUBLISHED;

import java.util.Optional;

/** What kind of evidence a source is, and so which grade it lends. */
public enum SourceKind {
  TYPE_CERTIFICATE_DATA_SHEET(MAKER_OR_AUTHORITY),
  PARTS_CATALOGUE(MAKER_OR_AUTHORITY),
  MAINTENANCE_MANUAL(MAKER_OR_AUTHORITY),
  FLIGHT_MANUAL(MAKER_OR_AUTHORITY),
  SERVICE_BULLETIN(MAKER_OR_AUTHORITY),
  AIRWORTHINESS_DIRECTIVE(MAKER_OR_AUTHORITY),
  SUPPLEMENTAL_TYPE_CERTIFICATE(MAKER_OR_AUTHORITY),
  PRODUCTION_RECORD(MAKER_OR_AUTHORITY),
  BOOK(PUBLISHED),
  PERIODICAL(PUBLISHED),
  BROCHURE(PUBLISHED),
  WEB_PAGE(PUBLISHED),
  PHOTOGRAPH(AIRFRAME),
  LOGBOOK(AIRFRAME),
  OBSERVATION(AIRFRAME),
  RECOLLECTION(Grade.RECOLLECTION);

  private final Grade grade;
  private final String code = name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');

  SourceKind(Grade grade) {
    this.grade = grade;
  }

  /** The grade of evidence that a source of this kind makes. */
  public Grade grade() {
    return grade;
  }

  /** The word used in files, addresses and the API. */
  public String code() {
    return code;
  }

  /** Reads the word used in files; empty where there is no such kind. */
  public static Optional<SourceKind> of(String code) {
    for (SourceKind kind : values()) {
      if (kind.code.equals(code)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
