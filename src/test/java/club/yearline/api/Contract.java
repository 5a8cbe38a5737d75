package club.yearline.api;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.dialect.Dialects;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The published description, read strictly: an object may have the members that are described and
 * no others. Remembers which described members it has seen in answers.
 */
final class Contract {

  private static final String ROOT = "https://yearline.invalid/description";

  private final JsonNode document;
  private final SchemaRegistry schemas;
  private final Map<String, Schema> compiled = new ConcurrentHashMap<>();
  private final Set<String> seen = new TreeSet<>();

  Contract(String published) {
    JsonMapper json = new JsonMapper();
    document = json.readTree(published);
    close(document.get("components"));
    String strict = json.writeValueAsString(document);
    schemas =
        SchemaRegistry.withDialect(
            Dialects.getOpenApi31(), registry -> registry.schemas(Map.of(ROOT, strict)));
  }

  private static void close(JsonNode node) {
    if (node instanceof ObjectNode object && object.get("properties") instanceof ObjectNode) {
      object.put("additionalProperties", false);
    }
    node.forEach(Contract::close);
  }

  JsonNode document() {
    return document;
  }

  /** The paths described, as templates. */
  List<String> paths() {
    return List.copyOf(document.get("paths").propertyNames());
  }

  /** The template that an address is asked by. */
  String template(String address) {
    String path = address.split("[? ]", 2)[0];
    return paths().stream()
        .filter(template -> path.matches(template.replaceAll("\\{[^}]*}", "[^/]+")))
        .findFirst()
        .orElseThrow(() -> new AssertionError("No path is described for " + address));
  }

  JsonNode operation(String template) {
    JsonNode path = document.get("paths").get(template);
    return path.has("get") ? path.get("get") : path.get("post");
  }

  /** Whether a path is asked by its address alone. */
  boolean isRead(String template) {
    return document.get("paths").get(template).has("get");
  }

  /** The example of a path's body. */
  JsonNode exampleBody(String template) {
    return requestBody(template).get("example");
  }

  private JsonNode requestBody(String template) {
    return operation(template).at("/requestBody/content").get("application/json");
  }

  /** What is wrong with the body of a question by the description; empty if nothing is. */
  List<String> faultsOfQuestion(String template, JsonNode body) {
    return faults(requestBody(template).get("schema"), body);
  }

  /** The statuses that a path is described to answer. */
  Set<String> statuses(String template) {
    return new TreeSet<>(operation(template).get("responses").propertyNames());
  }

  /** What is wrong with an answer; empty if it is as described. */
  List<String> faults(String address, ApiCalls.Answer answer) {
    String template = template(address);
    String status = String.valueOf(answer.status());
    if (!statuses(template).contains(status)) {
      return List.of("undescribed status " + status + ": " + answer.text());
    }
    JsonNode response = resolved(operation(template).get("responses").get(status));
    List<String> faults = new ArrayList<>();
    for (String header : response.path("headers").propertyNames()) {
      if (answer.header(header) == null) {
        faults.add("missing header " + header);
      }
    }
    JsonNode content = response.path("content");
    if (content.isEmpty()) {
      return answer.text().isEmpty() ? faults : List.of("undescribed body " + answer.text());
    }
    if (!content.has(answer.type())) {
      return List.of("undescribed content type " + answer.type());
    }
    if (answer.type().endsWith("json")) {
      faults.addAll(faults(content.get(answer.type()).get("schema"), answer.json()));
    }
    return faults;
  }

  /** What is wrong with a body by the schema of an answer. */
  List<String> faults(JsonNode schema, JsonNode body) {
    String reference = schema.get("$ref").asString();
    List<String> faults =
        compiled
            .computeIfAbsent(reference, r -> schemas.getSchema(SchemaLocation.of(ROOT + reference)))
            .validate(body)
            .stream()
            .map(Object::toString)
            .toList();
    if (faults.isEmpty()) {
      note(schema, body);
    }
    return faults;
  }

  /** The schema of a path's answer with a status. */
  JsonNode schema(String template, String status, String type) {
    JsonNode response = resolved(operation(template).get("responses").get(status));
    return response.get("content").get(type).get("schema");
  }

  /** What a node refers to, or the node itself. */
  JsonNode resolved(JsonNode node) {
    JsonNode reference = node.get("$ref");
    return reference == null ? node : document.at(reference.asString().substring(1));
  }

  private void note(JsonNode schema, JsonNode value) {
    if (value.isArray()) {
      value.forEach(item -> note(schema.get("items"), item));
    } else if (value.isObject()) {
      schema
          .path("anyOf")
          .valueStream()
          .filter(s -> s.has("$ref") && fits(s, value))
          .forEach(s -> note(s, value));
      noteMembers(schema, value);
    }
  }

  private void noteMembers(JsonNode schema, JsonNode value) {
    JsonNode members = resolved(schema).path("properties");
    for (String member : members.propertyNames()) {
      if (value.has(member)) {
        seen.add(name(schema) + "." + member);
        note(members.get(member), value.get(member));
      }
    }
  }

  /** Whether an object has no other members than those of a schema, and all that it demands. */
  private boolean fits(JsonNode schema, JsonNode value) {
    JsonNode model = resolved(schema);
    Set<String> demanded =
        model.path("required").valueStream().map(JsonNode::asString).collect(Collectors.toSet());
    return value.propertyNames().containsAll(demanded)
        && model.get("properties").propertyNames().containsAll(value.propertyNames());
  }

  private static String name(JsonNode schema) {
    String reference = schema.path("$ref").asString();
    return reference.substring(reference.lastIndexOf('/') + 1);
  }

  /** Described members that were seen in no answer so far. */
  Set<String> unseen() {
    Set<String> all = new TreeSet<>(members().keySet());
    all.removeAll(seen);
    return all;
  }

  /** All described members, each with its type. */
  Map<String, String> members() {
    Map<String, String> members = new java.util.TreeMap<>();
    JsonNode models = document.get("components").get("schemas");
    for (String model : models.propertyNames()) {
      models
          .get(model)
          .path("properties")
          .properties()
          .forEach(p -> members.put(model + "." + p.getKey(), type(p.getValue())));
    }
    return members;
  }

  private static String type(JsonNode schema) {
    if (schema.has("$ref")) {
      return name(schema);
    }
    if (schema.has("anyOf")) {
      return schema.get("anyOf").valueStream().map(Contract::type).collect(Collectors.joining("|"));
    }
    JsonNode type = schema.path("type");
    String text =
        type.isArray()
            ? type.valueStream().map(JsonNode::asString).collect(Collectors.joining("|"))
            : type.asString();
    return schema.has("items") ? "array of " + type(schema.get("items")) : text;
  }
}
