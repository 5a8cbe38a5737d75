package club.yearline.citing;

import club.yearline.citation.BibTex;
import club.yearline.citation.Reference;
import club.yearline.citation.Ris;
import club.yearline.web.Refusal;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import tools.jackson.databind.json.JsonMapper;

/** A file format of bibliographies. */
enum Format {
  CSL_JSON("csl-json", "application/vnd.citationstyles.csl+json", "json", Format::json),
  BIBTEX("bibtex", "application/x-bibtex;charset=UTF-8", "bib", BibTex::write),
  RIS("ris", "application/x-research-info-systems;charset=UTF-8", "ris", Ris::write);

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private final String code;
  private final String type;
  private final String ending;
  private final Function<Reference, String> writer;

  Format(String code, String type, String ending, Function<Reference, String> writer) {
    this.code = code;
    this.type = type;
    this.ending = ending;
    this.writer = writer;
  }

  static Format of(String code) {
    return Arrays.stream(values())
        .filter(f -> f.code.equals(code))
        .findFirst()
        .orElseThrow(() -> Refusal.notUnderstood("citation-format", code, codes()).at("format"));
  }

  private static String codes() {
    return Arrays.stream(values()).map(Format::code).collect(Collectors.joining(", "));
  }

  private static String json(Reference reference) {
    return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(List.of(reference.csl()))
        + "\n";
  }

  String code() {
    return code;
  }

  String type() {
    return type;
  }

  String write(Reference reference) {
    return writer.apply(reference);
  }

  /** What a download is called. */
  String fileName(String id) {
    return id.replaceAll("[^A-Za-z0-9-]+", "-") + "." + ending;
  }
}
