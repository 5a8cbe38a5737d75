package club.yearline.exchange;

import club.yearline.catalog.PictureFile;
import club.yearline.effectivity.Findings;
import club.yearline.effectivity.Records;
import club.yearline.tables.Complaint;
import club.yearline.tables.Draft;
import club.yearline.tables.Format;
import club.yearline.tables.Row;
import club.yearline.tables.Schemas;
import club.yearline.tables.TableSchema;
import club.yearline.uploads.NotTaken;
import club.yearline.uploads.PictureType;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipException;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads a package and finds all that is wrong with it, in one go. */
final class PackageReader {

  /** The most rows that a package may have, all tables together. */
  static final int MOST_ROWS = 1_000_000;

  private final PackageFiles files;
  private final int mostRows;
  private final Budget budget;
  private final Problems problems = new Problems();
  private final Draft draft = new Draft();
  private final List<PictureFile> pictures = new ArrayList<>();
  private int rows;

  PackageReader(PackageFiles files) {
    this(files, MOST_ROWS, Budget.MOST);
  }

  PackageReader(PackageFiles files, int mostRows, long mostBytes) {
    this.files = files;
    this.mostRows = mostRows;
    this.budget = new Budget(files.packageName(), mostBytes);
  }

  /** Reads the folder or zip at a path; what keeps it from being read is a problem of it. */
  static PackageReading read(Path path) throws IOException {
    try (PackageFiles files = PackageFiles.at(path)) {
      return new PackageReader(files).read();
    } catch (RefusedPackage e) {
      return PackageReading.refused(e.problem());
    }
  }

  PackageReading read() throws IOException {
    Records records = Records.NONE;
    try {
      checkDescriptor();
      checkNames();
      for (String table : Draft.ORDER) {
        readTable(Schemas.standard().table(table));
      }
      readPictures();
      records = Records.of(draft.entries(), pictures.stream().map(PictureFile::picture).toList());
      List<Lookup> lookups = new ArrayList<>(draft.orphans().stream().map(Lookup::of).toList());
      Findings.in(records).forEach(f -> lookups.add(Lookup.of(f)));
      new Places(files).locate(lookups, problems);
    } catch (RefusedPackage e) {
      problems.add(e.problem());
    }
    return new PackageReading(records, pictures, rows, problems.all(files.packageName()));
  }

  private void checkDescriptor() throws IOException {
    if (!files.names().contains(Schemas.DESCRIPTOR)) {
      problems.add(PackageProblem.of(files.packageName(), "no-descriptor", Schemas.DESCRIPTOR));
      return;
    }
    try (InputStream in = budget.watch(files.open(Schemas.DESCRIPTOR))) {
      JsonNode format = JsonMapper.shared().readTree(in).path("yearline").path("format");
      if (!format.isInt() || format.intValue() != Schemas.FORMAT) {
        problems.add(
            PackageProblem.of(
                Schemas.DESCRIPTOR, "unknown-format", format.asString("none"), Schemas.FORMAT));
      }
    } catch (JacksonException e) {
      problems.add(PackageProblem.of(Schemas.DESCRIPTOR, "not-json", e.getOriginalMessage()));
    }
  }

  /** A table under a name that is not read would be lost without a word. */
  private void checkNames() {
    List<String> known = Schemas.standard().tables().stream().map(TableSchema::path).toList();
    for (String name : files.names()) {
      if (name.endsWith(".csv") && !known.contains(name)) {
        problems.add(PackageProblem.of(name, "unknown-table", String.join(", ", known)));
      }
    }
  }

  private void readTable(TableSchema table) throws IOException {
    if (!files.names().contains(table.path())) {
      return;
    }
    Map<String, Integer> lines = new HashMap<>();
    new CsvTable(table, problems)
        .read(
            files,
            budget,
            row -> {
              count(table);
              Integer first = lines.putIfAbsent(row.key(table), row.line());
              if (first == null) {
                draft.add(table.name(), row);
              } else {
                problems.add(repeated(table, row, first));
              }
            });
  }

  private void count(TableSchema table) {
    if (++rows > mostRows) {
      throw new RefusedPackage(PackageProblem.of(table.path(), "too-many-rows", mostRows));
    }
  }

  private static PackageProblem repeated(TableSchema table, Row row, int first) {
    List<String> key = table.keyColumns();
    return PackageProblem.at(
        table.path(),
        row.line(),
        key.get(key.size() - 1),
        row.joined(key),
        Complaint.of("duplicate-key", first));
  }

  private void readPictures() throws IOException {
    for (String path : files.names()) {
      if (path.startsWith(PackageFiles.PICTURES)) {
        readPicture(path);
      }
    }
  }

  private void readPicture(String path) throws IOException {
    String name = path.substring(PackageFiles.PICTURES.length());
    if (!Format.isFileName(name)) {
      problems.add(PackageProblem.of(path, "bad-picture"));
      return;
    }
    try (InputStream in = budget.watch(files.open(path))) {
      byte[] bytes = in.readAllBytes();
      pictures.add(new PictureFile(name, PictureType.of(bytes).mediaType(), bytes));
    } catch (NotTaken e) {
      problems.add(
          PackageProblem.at(path, null, null, null, new Complaint(e.code(), e.arguments())));
    } catch (ZipException e) {
      problems.add(PackageProblem.of(path, "unreadable-file", String.valueOf(e.getMessage())));
    }
  }
}
