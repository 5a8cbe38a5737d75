package club.yearline.quiz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import org.springframework.web.util.UriComponentsBuilder;
import org.springframework.web.util.UriUtils;

/**
 * What a form or an address says of a quiz, as typed.
 *
 * @param family key of the family
 * @param variants keys of variants
 * @param features keys of features
 * @param chapters chapters
 * @param kinds codes of kinds
 * @param count how many questions
 * @param number the number that makes the same quiz again
 */
public record Given(
    String family,
    List<String> variants,
    List<String> features,
    List<String> chapters,
    List<String> kinds,
    String count,
    String number) {

  static Given of(MultiValueMap<String, String> given) {
    return new Given(
        one(given, "family"),
        all(given, "v"),
        all(given, "f"),
        all(given, "ch"),
        all(given, "kind"),
        one(given, "count"),
        one(given, "number"));
  }

  /** Reads what {@link #query} has written. */
  static Given read(String query) {
    MultiValueMap<String, String> given = new LinkedMultiValueMap<>();
    UriComponentsBuilder.newInstance()
        .query(query)
        .build()
        .getQueryParams()
        .forEach((name, values) -> values.forEach(v -> given.add(name, decoded(v))));
    return of(given);
  }

  private static String decoded(@Nullable String value) {
    return value == null ? "" : UriUtils.decode(value, StandardCharsets.UTF_8);
  }

  private static List<String> all(MultiValueMap<String, String> given, String name) {
    return given.getOrDefault(name, List.of()).stream()
        .map(String::strip)
        .filter(v -> !v.isEmpty())
        .distinct()
        .toList();
  }

  private static String one(MultiValueMap<String, String> given, String name) {
    String value = given.getFirst(name);
    return value == null ? "" : value.strip();
  }

  /** The answers given, by number of the question, from 1. */
  static Map<Integer, String> answers(MultiValueMap<String, String> given) {
    Map<Integer, String> answers = new TreeMap<>();
    for (int i = 1; i <= Selection.MOST_QUESTIONS; i++) {
      answers.put(i, one(given, "a" + i));
    }
    return answers;
  }

  Given withNumber(long drawn) {
    return new Given(family, variants, features, chapters, kinds, count, Long.toString(drawn));
  }

  /** A name and a value of a form. */
  public record Field(String name, String value) {}

  /** All that is given, for hidden fields. */
  List<Field> fields() {
    List<Field> fields = new ArrayList<>();
    fields.add(new Field("family", family));
    variants.forEach(v -> fields.add(new Field("v", v)));
    features.forEach(f -> fields.add(new Field("f", f)));
    chapters.forEach(c -> fields.add(new Field("ch", c)));
    kinds.forEach(k -> fields.add(new Field("kind", k)));
    fields.add(new Field("count", count));
    fields.add(new Field("number", number));
    return fields;
  }

  /** All that is given, as the query of an address; without a question mark. */
  String query() {
    StringBuilder query = new StringBuilder();
    for (Field field : fields()) {
      query.append(query.isEmpty() ? "" : "&").append(field.name()).append('=');
      query.append(UriUtils.encode(field.value(), StandardCharsets.UTF_8));
    }
    return query.toString();
  }
}
