package club.yearline.tables;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The tables of the data package, as its descriptor states them. */
public final class Schemas {

  /** The file that makes a folder or zip a data package. */
  public static final String DESCRIPTOR = "datapackage.json";

  /** The version of the format that is read and written. */
  public static final int FORMAT = 1;

  private static final Schemas STANDARD = load();

  private final String descriptor;
  private final List<TableSchema> tables;

  private Schemas(String descriptor, List<TableSchema> tables) {
    this.descriptor = descriptor;
    this.tables = List.copyOf(tables);
  }

  /** The tables of format 1. */
  public static Schemas standard() {
    return STANDARD;
  }

  /** All tables, in the order of the descriptor. */
  public List<TableSchema> tables() {
    return tables;
  }

  /** The table with the given resource name. */
  public TableSchema table(String name) {
    return tables.stream()
        .filter(t -> t.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("No table is named " + name));
  }

  /** The table kept in the given file; empty where the format has no such file. */
  public Optional<TableSchema> inFile(String path) {
    return tables.stream().filter(t -> t.path().equals(path)).findFirst();
  }

  /**
   * The descriptor as written into packages. An empty list of licences is left out: the Data
   * Package profile asks for at least one licence where the member is there at all.
   */
  public String descriptor() {
    return descriptor.replace(" \"licenses\": [],\n", "").stripTrailing() + "\n";
  }

  private static Schemas load() {
    try (InputStream in = Schemas.class.getResourceAsStream("/format/" + DESCRIPTOR)) {
      if (in == null) {
        throw new IllegalStateException("The format's descriptor is missing from the application");
      }
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<TableSchema> tables = new ArrayList<>();
      for (JsonNode resource : JsonMapper.shared().readTree(text).path("resources")) {
        tables.add(table(resource));
      }
      return new Schemas(text, tables);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TableSchema table(JsonNode resource) {
    List<Field> fields = new ArrayList<>();
    for (JsonNode field : resource.path("schema").path("fields")) {
      fields.add(field(field, field.path("constraints")));
    }
    List<Field> key = new ArrayList<>();
    for (JsonNode name : resource.path("schema").path("primaryKey")) {
      key.add(
          fields.stream().filter(f -> f.name().equals(name.asString())).findFirst().orElseThrow());
    }
    return new TableSchema(
        resource.path("name").asString(), resource.path("path").asString(), fields, key);
  }

  private static Field field(JsonNode field, JsonNode constraints) {
    List<String> words = new ArrayList<>();
    constraints.path("enum").forEach(word -> words.add(word.asString()));
    JsonNode pattern = constraints.path("pattern");
    JsonNode length = constraints.path("maxLength");
    return new Field(
        field.path("name").asString(),
        field.path("description").asString(),
        FieldType.valueOf(field.path("type").asString().toUpperCase(Locale.ROOT)),
        constraints.path("required").asBoolean(false),
        pattern.isMissingNode() ? null : Pattern.compile(pattern.asString()),
        length.isMissingNode() ? null : length.asInt(),
        words,
        number(constraints.path("minimum")),
        number(constraints.path("maximum")));
  }

  private static @Nullable BigDecimal number(JsonNode node) {
    return node.isMissingNode() ? null : node.decimalValue();
  }
}
