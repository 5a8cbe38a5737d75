package club.yearline.exchange;

import club.yearline.effectivity.Feature;
import club.yearline.effectivity.Records;
import club.yearline.tables.Schemas;
import club.yearline.tables.TableSchema;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.springframework.util.FileSystemUtils;

/**
 * Writes large invented catalogues, a family at a time, so that their size is bounded by the disk
 * alone. Everything follows from the seed. Keys begin with the family's number, so that families
 * written one after the other leave every table in the order of its primary key.
 */
final class Generator {

  static final int MOST_FAMILIES = 1000;

  private static final int FAMILIES_PER_NOTICE = 100;

  private final long seed;
  private final int families;
  private final Console console;
  private int rows;

  Generator(long seed, int families, Console console) {
    this.seed = seed;
    this.families = families;
    this.console = console;
  }

  /** Writes the catalogue to a folder or zip, and tells the number of rows. */
  int writeTo(Path path) throws IOException {
    Outputs.write(
        path,
        target -> {
          if (target instanceof FolderTarget folder) {
            writeTables(folder);
          } else {
            writeByWayOfFolder(target);
          }
        });
    return rows;
  }

  /** A zip is written file after file, the tables of a catalogue side by side. */
  private void writeByWayOfFolder(PackageTarget target) throws IOException {
    Path folder = Files.createTempDirectory("yearline-generated");
    try {
      writeTables(new FolderTarget(folder));
      Outputs.copy(FolderFiles.in(folder), target);
    } finally {
      FileSystemUtils.deleteRecursively(folder);
    }
  }

  private void writeTables(FolderTarget folder) throws IOException {
    try (OutputStream out = folder.file(Schemas.DESCRIPTOR)) {
      out.write(Schemas.standard().descriptor().getBytes(StandardCharsets.UTF_8));
    }
    Map<TableSchema, CsvWriter> tables = new TreeMap<>((a, b) -> a.path().compareTo(b.path()));
    try {
      for (TableSchema table : Schemas.standard().tables()) {
        CsvWriter writer = new CsvWriter(folder.file(table.path()));
        tables.put(table, writer);
        writer.row(table.header());
      }
      GeneratedLibrary library = new GeneratedLibrary(new GeneratedFeatures(seed).make());
      List<Feature> features = library.features();
      write(library.make(), tables);
      for (int i = 0; i < families; i++) {
        write(new GeneratedFamily(seed, i, features).make(), tables);
        notice(i + 1);
      }
    } finally {
      for (CsvWriter writer : tables.values()) {
        writer.close();
      }
    }
  }

  private void write(Records records, Map<TableSchema, CsvWriter> tables) throws IOException {
    for (Map.Entry<TableSchema, CsvWriter> table : tables.entrySet()) {
      for (String[] row : PackageWriter.sorted(table.getKey(), records)) {
        table.getValue().row(row);
        rows++;
      }
    }
  }

  private void notice(int done) {
    if (done % FAMILIES_PER_NOTICE == 0) {
      console.progress("progress.generated", done, families);
    }
  }
}
