package club.yearline.expected;

import org.jspecify.annotations.Nullable;

/** Where what may be meant leads: an address of the page that asks. */
@FunctionalInterface
public interface Destination {

  /** The address for a variant, a year and a serial, each where it is known. */
  String to(@Nullable String variant, @Nullable Integer year, @Nullable String serial);
}
