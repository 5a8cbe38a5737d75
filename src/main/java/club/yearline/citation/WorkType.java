package club.yearline.citation;

/**
 * What a work is, in the words of the formats. Airworthiness documents are reports to all of them:
 * styles for laws would drop their numbers. The correspondences are common practice, no source.
 */
public enum WorkType {
  PAGE("webpage", "misc", "ELEC", ""),
  DATA_SHEET("report", "techreport", "RPRT", "Type certificate data sheet"),
  PARTS_CATALOGUE("report", "manual", "RPRT", "Parts catalogue"),
  MAINTENANCE_MANUAL("report", "manual", "RPRT", "Maintenance manual"),
  FLIGHT_MANUAL("report", "manual", "RPRT", "Flight manual"),
  BULLETIN("report", "techreport", "RPRT", "Service bulletin"),
  DIRECTIVE("report", "techreport", "RPRT", "Airworthiness directive"),
  SUPPLEMENTAL("report", "techreport", "RPRT", "Supplemental type certificate"),
  PRODUCTION_RECORD("manuscript", "unpublished", "UNPB", "Production record"),
  BOOK("book", "book", "BOOK", ""),
  ARTICLE("article-magazine", "article", "MGZN", ""),
  BROCHURE("pamphlet", "booklet", "PAMP", "Brochure"),
  PHOTOGRAPH("graphic", "misc", "FIGURE", "Photograph"),
  LOGBOOK("manuscript", "unpublished", "UNPB", "Airframe logbook"),
  OBSERVATION("manuscript", "unpublished", "UNPB", "Observation"),
  LETTER("personal_communication", "unpublished", "PCOMM", "Recollection");

  private final String csl;
  private final String bibtex;
  private final String ris;
  private final String genre;

  WorkType(String csl, String bibtex, String ris, String genre) {
    this.csl = csl;
    this.bibtex = bibtex;
    this.ris = ris;
    this.genre = genre;
  }

  static WorkType of(SourceKind kind) {
    return switch (kind) {
      case TYPE_CERTIFICATE_DATA_SHEET -> DATA_SHEET;
      case PARTS_CATALOGUE -> PARTS_CATALOGUE;
      case MAINTENANCE_MANUAL -> MAINTENANCE_MANUAL;
      case FLIGHT_MANUAL -> FLIGHT_MANUAL;
      case SERVICE_BULLETIN -> BULLETIN;
      case AIRWORTHINESS_DIRECTIVE -> DIRECTIVE;
      case SUPPLEMENTAL_TYPE_CERTIFICATE -> SUPPLEMENTAL;
      case PRODUCTION_RECORD -> PRODUCTION_RECORD;
      case BOOK -> BOOK;
      case PERIODICAL -> ARTICLE;
      case BROCHURE -> BROCHURE;
      case WEB_PAGE -> PAGE;
      case PHOTOGRAPH -> PHOTOGRAPH;
      case LOGBOOK -> LOGBOOK;
      case OBSERVATION -> OBSERVATION;
      case RECOLLECTION -> LETTER;
    };
  }

  /** The type of the Citation Style Language. */
  public String csl() {
    return csl;
  }

  String bibtex() {
    return bibtex;
  }

  String ris() {
    return ris;
  }

  /** What it is called where no type of a format says it; may be empty. */
  String genre() {
    return genre;
  }
}
