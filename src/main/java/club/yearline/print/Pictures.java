package club.yearline.print;

import java.util.Optional;

/** The pictures that a page of ours shows: {@code <img src="picture:NAME">}. */
@FunctionalInterface
public interface Pictures {

  /** A page without pictures. */
  Pictures NONE = name -> Optional.empty();

  /** The content of a PNG, JPEG or SVG; empty where there is none of the name. */
  Optional<byte[]> named(String name);
}
