package club.yearline.groundschool;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import org.springframework.web.util.UriComponentsBuilder;
import org.springframework.web.util.UriUtils;

/**
 * What a hand-out is to show, as its address says it.
 *
 * @param features keys of the features, in the order shown
 * @param variants keys of the variants; none for all that have a feature
 * @param from the first year, as typed
 * @param to the last year, as typed
 * @param title its title
 * @param remarks the teacher's own remarks, plain text
 */
record Handout(
    List<String> features,
    List<String> variants,
    String from,
    String to,
    String title,
    String remarks) {

  Handout {
    features = features.stream().distinct().toList();
    variants = variants.stream().distinct().toList();
  }

  /** Reads the parameters of a form or an address. */
  static Handout of(MultiValueMap<String, String> given) {
    return new Handout(
        all(given, "f"),
        all(given, "v"),
        one(given, "from"),
        one(given, "to"),
        one(given, "title"),
        one(given, "remarks").replace("\r\n", "\n").replace('\r', '\n'));
  }

  /** Reads the query of an address. */
  static Handout read(String query) {
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
        .toList();
  }

  private static String one(MultiValueMap<String, String> given, String name) {
    String value = given.getFirst(name);
    return value == null ? "" : value.strip();
  }

  /** Whether nothing is chosen or typed yet. */
  boolean isFresh() {
    return features.isEmpty() && variants.isEmpty() && (from + to + title + remarks).isEmpty();
  }

  /** The same hand-out without the remarks, which are what makes an address long. */
  Handout withoutRemarks() {
    return new Handout(features, variants, from, to, title, "");
  }

  /** The same hand-out with one feature before the one that it follows now. */
  Handout earlier(int place) {
    List<String> moved = new ArrayList<>(features);
    Collections.swap(moved, place, place - 1);
    return new Handout(moved, variants, from, to, title, remarks);
  }

  /** The choice as the query of an address; without a question mark. */
  String query() {
    UriComponentsBuilder query = UriComponentsBuilder.newInstance();
    List<Object> values = new ArrayList<>();
    features.forEach(f -> add(query, values, "f", f));
    variants.forEach(v -> add(query, values, "v", v));
    add(query, values, "from", from);
    add(query, values, "to", to);
    add(query, values, "title", title);
    add(query, values, "remarks", remarks);
    String text = query.encode().buildAndExpand(values.toArray()).getQuery();
    return text == null ? "" : text;
  }

  private static void add(
      UriComponentsBuilder query, List<Object> values, String name, String value) {
    if (!value.isEmpty()) {
      query.queryParam(name, "{value" + values.size() + "}");
      values.add(value);
    }
  }
}
