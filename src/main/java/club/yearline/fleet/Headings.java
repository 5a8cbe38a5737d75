package club.yearline.fleet;

import club.yearline.effectivity.Catalogue;
import club.yearline.effectivity.Variant;
import club.yearline.web.Phrases;
import java.util.ArrayList;
import java.util.List;

/** What airframes are called, in one line. */
record Headings(Catalogue catalogue, Phrases phrases) {

  /** Mark and serial, or what else is known of it. */
  String of(Registered airframe) {
    List<String> names = new ArrayList<>();
    if (airframe.registration() != null) {
      names.add(airframe.registration());
    }
    if (airframe.serial() != null) {
      names.add(airframe.serial());
    }
    return names.isEmpty() ? variantYear(airframe) : String.join(" · ", names);
  }

  /** Its variant and year. */
  String variantYear(Registered airframe) {
    String designation = designation(airframe.variant());
    return airframe.year() == null
        ? designation
        : phrases.of("fleet.variant-year", designation, airframe.year());
  }

  /** The designation of a variant; its key where it was withdrawn. */
  String designation(String variant) {
    return catalogue.variant(variant).map(Variant::designation).orElse(variant);
  }
}
