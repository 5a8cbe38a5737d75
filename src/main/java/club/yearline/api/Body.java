package club.yearline.api;

import club.yearline.web.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.springframework.context.support.DefaultMessageSourceResolvable;
import org.springframework.http.HttpStatus;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * An object in the body of a question, read member by member. What is at fault is gathered, so that
 * a program is told of all of it at once; a member that is not known is at fault too, because a
 * misspelt one would change the question.
 */
final class Body {

  /** What a body may hold, in bytes: far more than any question has. */
  private static final int MOST_BYTES = 1_000_000;

  /** Digits that a number may have, written out; a value of the catalogue has far fewer. */
  private static final int MOST_DIGITS = 40;

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_READING_DUP_TREE_KEY)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .build();

  private final JsonNode object;
  private final String path;
  private final Faults faults;

  private Body(JsonNode object, String path, Faults faults) {
    this.object = object;
    this.path = path;
    this.faults = faults;
  }

  /** Reads a body that must be one JSON object. */
  static Body read(InputStream body) throws IOException {
    byte[] bytes = body.readNBytes(MOST_BYTES + 1);
    if (bytes.length > MOST_BYTES) {
      throw Refusal.of(HttpStatus.CONTENT_TOO_LARGE, "too-large");
    }
    try {
      JsonNode read = JSON.readTree(bytes);
      if (read.isObject()) {
        return new Body(read, "", new Faults());
      }
    } catch (JacksonException e) {
      throw Refusal.notUnderstood("body-unreadable");
    }
    throw Refusal.notUnderstood("body-unreadable");
  }

  /** Says which members there are; any other is at fault. */
  Body of(String... members) {
    Set<String> known = Set.of(members);
    for (String member : object.propertyNames()) {
      if (!known.contains(member)) {
        faults.add(path + member, "field.unknown", String.join(", ", members));
      }
    }
    return this;
  }

  /** A text; null where it is not given. */
  @Nullable String text(String member) {
    JsonNode value = object.get(member);
    if (value == null || value.isNull() || value.isString()) {
      return value == null || value.isNull() ? null : value.asString();
    }
    wrong(member, "expected.a-text");
    return null;
  }

  /** A text that is needed; empty where it is at fault. */
  String needed(String member) {
    String text = text(member);
    return text == null ? missing(member) : text;
  }

  /** A text or a number, as text, that is needed; empty where it is at fault. */
  String neededValue(String member) {
    JsonNode value = object.get(member);
    return value != null && value.isNumber() ? plain(value) : needed(member);
  }

  /** Short exponents can stand for endless digits, which are never written out. */
  private static String plain(JsonNode number) {
    BigDecimal decimal = number.decimalValue();
    return Math.abs(decimal.scale()) + decimal.precision() > MOST_DIGITS
        ? number.asString()
        : decimal.toPlainString();
  }

  /** A whole number; null where it is not given. */
  @Nullable Integer whole(String member) {
    JsonNode value = object.get(member);
    if (value == null || value.isNull() || value.canConvertToInt() && value.isIntegralNumber()) {
      return value == null || value.isNull() ? null : value.asInt();
    }
    wrong(member, "expected.integer");
    return null;
  }

  /** A list of objects; empty where it is not given. */
  <T> List<T> objects(String member, BiFunction<Body, Integer, T> each) {
    List<T> all = new ArrayList<>();
    JsonNode list = list(member);
    for (int i = 0; i < list.size(); i++) {
      if (list.get(i).isObject()) {
        all.add(each.apply(new Body(list.get(i), path + member + "[" + i + "].", faults), i));
      } else {
        wrong(member + "[" + i + "]", "expected.an-object");
      }
    }
    return all;
  }

  /** A list of texts; empty where it is not given. */
  List<String> texts(String member) {
    List<String> all = new ArrayList<>();
    JsonNode list = list(member);
    for (int i = 0; i < list.size(); i++) {
      if (list.get(i).isString()) {
        all.add(list.get(i).asString());
      } else {
        wrong(member + "[" + i + "]", "expected.a-text");
      }
    }
    return all;
  }

  private JsonNode list(String member) {
    JsonNode value = object.get(member);
    if (value != null && !value.isNull() && !value.isArray()) {
      wrong(member, "expected.a-list");
    }
    return value != null && value.isArray() ? value : JSON.createArrayNode();
  }

  private String missing(String member) {
    JsonNode value = object.get(member);
    if (value == null || value.isNull()) {
      faults.add(path + member, "field.missing");
    }
    return "";
  }

  private void wrong(String member, String expected) {
    faults.add(
        path + member,
        "field.expected",
        new DefaultMessageSourceResolvable(new String[] {expected}, new Object[0]));
  }

  /** Refuses the question if anything that was read is at fault: it cannot be understood. */
  void refuseFaults() {
    faults.refuse(HttpStatus.BAD_REQUEST);
  }

  /** What is at fault, gathered. */
  static final class Faults {

    private static final int MOST = 20;

    private final List<Refusal.Fault> all = new ArrayList<>();

    /** Adds a fault; beyond a score, nobody reads on. */
    void add(String field, String key, Object... arguments) {
      if (all.size() < MOST) {
        all.add(new Refusal.Fault(field, key, List.of(arguments)));
      }
    }

    void refuse(HttpStatus status) {
      if (!all.isEmpty()) {
        Refusal refusal = Refusal.of(status, "fields-at-fault");
        for (Refusal.Fault fault : all) {
          refusal = refusal.at(fault.field(), fault.key(), fault.arguments().toArray());
        }
        throw refusal;
      }
    }
  }
}
