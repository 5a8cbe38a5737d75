package club.yearline.exchange;

import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Records;
import club.yearline.testing.Catalogues;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Small packages for tests, as files. */
final class Packages {

  /** A clean package: one family, one variant, a feature that changes in 1966. */
  private static final Map<String, String> CLEAN = cleanFiles();

  private final Map<String, byte[]> files = new LinkedHashMap<>();

  private Packages() {
    CLEAN.forEach(this::with);
  }

  static Packages clean() {
    return new Packages();
  }

  private static Map<String, String> cleanFiles() {
    Map<String, String> files = new LinkedHashMap<>();
    files.put("datapackage.json", "{\"yearline\":{\"format\":1}}");
    files.put(
        "families.csv",
        "key,maker,name,year_means\nturnstone,Lindmark Aero,Turnstone,model-year\n");
    files.put("variants.csv", "key,family,designation\nla-2b,turnstone,LA-2B\n");
    files.put("production_runs.csv", "variant,first_year,last_year\nla-2b,1964,1968\n");
    files.put("series.csv", "key,family,prefix,digits\nlt,turnstone,LT-,4\n");
    files.put(
        "serial_blocks.csv",
        "key,series,first_serial,last_serial,variant,year\n"
            + "lt-1965,lt,LT-0001,LT-0100,la-2b,1965\nlt-1966,lt,LT-0101,LT-0200,la-2b,1966\n");
    files.put(
        "features.csv",
        "key,name,chapter,kind,visibility,exchange\n"
            + "door-latch,Door latch,52,choice,close,bolt-on\n");
    files.put(
        "feature_values.csv",
        "feature,key,label\ndoor-latch,lever,lever\ndoor-latch,rotary,rotary\n");
    files.put(
        "changes.csv",
        "key,feature,title\ndoor-latch-at-start,door-latch,Lever latch\n"
            + "door-latch-rotary,door-latch,Rotary latch\n");
    files.put(
        "change_offerings.csv",
        "change,value,fit\ndoor-latch-at-start,lever,standard\ndoor-latch-rotary,rotary,standard\n");
    files.put(
        "cut_ins.csv",
        "change,variant,at_start,first_year,settled_year\n"
            + "door-latch-at-start,la-2b,true,,\ndoor-latch-rotary,la-2b,,1966,1966\n");
    files.put("sources.csv", "key,kind,title\nparts-book,parts-catalogue,Parts book\n");
    files.put(
        "citations.csv",
        "key,record_kind,record,source,stance\n"
            + "c-1,change,door-latch-at-start,parts-book,supports\n"
            + "c-2,change,door-latch-rotary,parts-book,supports\n");
    return files;
  }

  Packages with(String name, String text) {
    return with(name, text.getBytes(StandardCharsets.UTF_8));
  }

  Packages with(String name, byte[] bytes) {
    files.put(name, bytes);
    return this;
  }

  /** The package with one more line at the end of a table. */
  Packages adding(String name, String line) {
    return with(name, new String(files.get(name), StandardCharsets.UTF_8) + line + "\n");
  }

  Packages without(String name) {
    files.remove(name);
    return this;
  }

  Path folder(Path at) throws IOException {
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path path = at.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
    }
    return at;
  }

  Path zip(Path at) throws IOException {
    try (OutputStream out = Files.newOutputStream(at);
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(file.getKey()));
        zip.write(file.getValue());
      }
    }
    return at;
  }

  /** Writes records as a folder or zip, with the pictures of random catalogues. */
  static Path write(Records records, Path at) throws IOException {
    Outputs.write(at, target -> PackageWriter.write(records, Packages::bytes, target));
    return at;
  }

  private static byte[] bytes(Picture picture) {
    return Catalogues.pictureBytes(picture.name());
  }

  /** The bytes of every file under a folder, by name. */
  static Map<String, String> contents(Path folder) throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path file : (Iterable<Path>) walk.filter(Files::isRegularFile)::iterator) {
        contents.put(folder.relativize(file).toString(), Files.readString(file));
      }
    }
    return contents;
  }
}
