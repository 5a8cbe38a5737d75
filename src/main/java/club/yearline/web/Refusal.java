package club.yearline.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.springframework.context.MessageSourceResolvable;
import org.springframework.http.HttpStatus;

/**
 * A request that is not answered, and why: rendered as an error page, or under {@code /api} as an
 * RFC 9457 problem.
 *
 * <p>The code names its texts in the message bundles: {@code refusal.CODE} is the title, {@code
 * refusal.CODE.detail} says what is wrong with {@code {0}}, {@code {1}} … for the arguments, {@code
 * refusal.CODE.advice} says what to do. Arguments are shown as they print, so a year stays 1966;
 * one that is itself a message is resolved.
 *
 * <pre>{@code
 * throw Refusal.notFound("unknown-variant", key);
 * throw Refusal.unprocessable("outside-production", variant, year).with("runs", runs);
 * throw Refusal.notUnderstood("serial-too-long").at("serial", "serial.too-long", 40);
 * }</pre>
 */
public final class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** How much of an argument is shown. */
  private static final int ECHO = 200;

  private final transient HttpStatus status;
  private final String code;
  private final transient List<Object> arguments;
  private final transient Map<String, Object> members;
  private final transient List<Fault> faults;

  private Refusal(
      HttpStatus status,
      String code,
      List<Object> arguments,
      Map<String, Object> members,
      List<Fault> faults) {
    super(status.value() + " " + code + " " + arguments, null, false, false);
    this.status = status;
    this.code = code;
    this.arguments = arguments;
    this.members = members;
    this.faults = faults;
  }

  /**
   * A field at fault.
   *
   * @param field its name in the form or the query
   * @param key key of the message that says what is wrong
   * @param arguments what the message names
   */
  public record Fault(String field, String key, List<Object> arguments) {

    public Fault {
      arguments = List.copyOf(arguments);
    }
  }

  /** The request cannot be read: 400. */
  public static Refusal notUnderstood(String code, Object... arguments) {
    return of(HttpStatus.BAD_REQUEST, code, arguments);
  }

  /** A parameter that is needed was not given: 400. */
  public static Refusal missing(String parameter) {
    return notUnderstood("parameter-missing", parameter).at(parameter, "field.missing");
  }

  /** What is asked for does not exist: 404. */
  public static Refusal notFound(String code, Object... arguments) {
    return of(HttpStatus.NOT_FOUND, code, arguments);
  }

  /** Understood, but outside production, ambiguous or in conflict: 422. */
  public static Refusal unprocessable(String code, Object... arguments) {
    return of(HttpStatus.UNPROCESSABLE_CONTENT, code, arguments);
  }

  /** A refusal with another status. */
  public static Refusal of(HttpStatus status, String code, Object... arguments) {
    return new Refusal(status, code, texts(arguments), Map.of(), List.of());
  }

  /** The same refusal with one more member in the API's answer, such as {@code candidates}. */
  public Refusal with(String member, Object value) {
    Map<String, Object> more = new LinkedHashMap<>(members);
    more.put(member, value);
    return new Refusal(status, code, arguments, Collections.unmodifiableMap(more), faults);
  }

  /** The same refusal with one more field at fault, for just what the refusal's title says. */
  public Refusal at(String field) {
    return at(field, "refusal." + code);
  }

  /** The same refusal with one more field at fault. */
  public Refusal at(String field, String key, Object... keyArguments) {
    List<Fault> more = new ArrayList<>(faults);
    more.add(new Fault(field, key, texts(keyArguments)));
    return new Refusal(status, code, arguments, members, List.copyOf(more));
  }

  /** The HTTP status of the answer. */
  public HttpStatus status() {
    return status;
  }

  /** The word by which programs tell refusals apart. */
  public String code() {
    return code;
  }

  /** What the message names. */
  public List<Object> arguments() {
    return arguments;
  }

  /** Members of the API's answer beyond the standard ones, in order. */
  public Map<String, Object> members() {
    return members;
  }

  /** The fields at fault, in order. */
  public List<Fault> faults() {
    return faults;
  }

  private static List<Object> texts(Object... arguments) {
    List<Object> texts = new ArrayList<>(arguments.length);
    for (Object argument : arguments) {
      texts.add(
          argument instanceof MessageSourceResolvable
              ? argument
              : shortened(Objects.toString(argument)));
    }
    return List.copyOf(texts);
  }

  /** Whatever was typed, nobody is served by having all of it repeated. */
  private static String shortened(String text) {
    return text.length() <= ECHO ? text : text.substring(0, ECHO) + "…";
  }
}
