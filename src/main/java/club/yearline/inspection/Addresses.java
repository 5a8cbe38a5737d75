package club.yearline.inspection;

import club.yearline.catalog.Links;
import club.yearline.effectivity.Position;
import club.yearline.spotting.Seen;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/** Addresses of inspections at the reading's revision: the claim, and what was seen. */
record Addresses(Links links, List<Seen> seen) {

  /** The page of an inspection of a claim. */
  String page(Position claim) {
    return to(claim.variant().key(), claim.year(), claim.serialText());
  }

  /** The page of an inspection of what may be meant. */
  String to(@Nullable String variant, @Nullable Integer year, @Nullable String serial) {
    return links.at("/inspect?" + query(variant, year, serial));
  }

  /** The same inspection at another address below {@code /inspect}. */
  String of(String place, Position claim) {
    return links.at(
        "/inspect/" + place + "?" + query(claim.variant().key(), claim.year(), claim.serialText()));
  }

  private String query(@Nullable String variant, @Nullable Integer year, @Nullable String serial) {
    StringBuilder query = new StringBuilder();
    add(query, "serial", serial);
    add(query, "variant", variant);
    add(query, "year", year == null ? null : year.toString());
    seen.forEach(s -> add(query, "o", s.code()));
    return query.toString();
  }

  private static void add(StringBuilder query, String name, @Nullable String value) {
    if (value != null) {
      query.append(query.isEmpty() ? "" : "&").append(name).append('=').append(encoded(value));
    }
  }

  /** Colons may stand in a query as they are, which keeps addresses readable. */
  private static String encoded(String text) {
    return UriUtils.encode(text, StandardCharsets.UTF_8).replace("%3A", ":");
  }
}
