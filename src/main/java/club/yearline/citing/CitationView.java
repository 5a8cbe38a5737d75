package club.yearline.citing;

import club.yearline.citation.Reference;
import java.util.Arrays;
import java.util.List;

/**
 * One work as the page shows it.
 *
 * @param what the work as the address names it
 * @param texts what each style writes
 * @param files where it is downloaded in each format
 */
record CitationView(String what, List<Text> texts, List<File> files) {

  /** What a style writes. */
  record Text(String style, Cited cited) {}

  /** A file to download. */
  record File(String format, String href) {}

  static CitationView of(String what, Reference reference, Styles styles, String address) {
    return new CitationView(
        what,
        Arrays.stream(Style.values())
            .map(style -> new Text(style.code(), styles.cite(reference, style)))
            .toList(),
        Arrays.stream(Format.values())
            .map(f -> new File(f.code(), address + "&of=" + what + "&format=" + f.code()))
            .toList());
  }
}
