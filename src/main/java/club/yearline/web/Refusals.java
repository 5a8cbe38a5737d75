package club.yearline.web;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.springframework.context.MessageSourceResolvable;
import org.springframework.context.support.DefaultMessageSourceResolvable;
import org.springframework.http.HttpStatus;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.HttpMediaTypeNotAcceptableException;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;

/** Turns what Spring throws and what the container reports into refusals. */
final class Refusals {

  private static final Set<Class<?>> WHOLE =
      Set.of(int.class, Integer.class, long.class, Long.class);

  private Refusals() {}

  /** The refusal that says what an exception means to the person who asks. */
  static Refusal of(Exception e) {
    if (e instanceof Refusal refusal) {
      return refusal;
    }
    if (e instanceof MethodArgumentTypeMismatchException mismatch) {
      return mismatch(mismatch);
    }
    if (e instanceof MissingServletRequestParameterException missing) {
      return Refusal.missing(missing.getParameterName());
    }
    if (e instanceof InvalidParameterException) {
      return Refusal.notUnderstood("address-unreadable");
    }
    if (e instanceof HttpRequestMethodNotSupportedException method) {
      return methodNotAllowed(method);
    }
    if (e instanceof HttpMediaTypeNotSupportedException type) {
      return Refusal.of(
          HttpStatus.UNSUPPORTED_MEDIA_TYPE,
          "media-type-unsupported",
          String.valueOf(type.getContentType()));
    }
    if (e instanceof HttpMediaTypeNotAcceptableException) {
      return Refusal.of(HttpStatus.NOT_ACCEPTABLE, "not-acceptable");
    }
    if (e instanceof HttpMessageNotReadableException) {
      return Refusal.notUnderstood("body-unreadable");
    }
    return e instanceof ErrorResponse response
        ? of(response.getStatusCode().value())
        : of(HttpStatus.INTERNAL_SERVER_ERROR.value());
  }

  /** The refusal for a status of which nothing more is known. */
  static Refusal of(int code) {
    HttpStatus status = HttpStatus.resolve(code);
    if (status == null || !status.isError()) {
      status = HttpStatus.INTERNAL_SERVER_ERROR;
    }
    return switch (status) {
      case UNAUTHORIZED, FORBIDDEN -> Refusal.of(status, "denied");
      case NOT_FOUND -> Refusal.of(status, "not-found");
      case CONTENT_TOO_LARGE -> Refusal.of(status, "too-large");
      case SERVICE_UNAVAILABLE -> Refusal.of(status, "busy");
      case UNPROCESSABLE_CONTENT -> Refusal.of(status, "unprocessable");
      default -> Refusal.of(status, status.is4xxClientError() ? "not-understood" : "internal");
    };
  }

  private static Refusal mismatch(MethodArgumentTypeMismatchException e) {
    MessageSourceResolvable expected = expected(e);
    return Refusal.notUnderstood(
            "parameter-unreadable", e.getName(), String.valueOf(e.getValue()), expected)
        .at(e.getName(), "field.expected", expected);
  }

  private static Refusal methodNotAllowed(HttpRequestMethodNotSupportedException e) {
    String[] supported = e.getSupportedMethods();
    return Refusal.of(
        HttpStatus.METHOD_NOT_ALLOWED,
        "method-not-allowed",
        e.getMethod(),
        supported == null ? "" : String.join(", ", supported));
  }

  private static MessageSourceResolvable expected(MethodArgumentTypeMismatchException e) {
    Class<?> type = e.getRequiredType();
    if (type == null) {
      return message("expected.other");
    }
    if (type.isEnum()) {
      return message("expected.choice", words(type));
    }
    if (type == boolean.class || type == Boolean.class) {
      return message("expected.choice", "true, false");
    }
    return message(WHOLE.contains(type) ? "expected.integer" : "expected.other");
  }

  private static MessageSourceResolvable message(String key, Object... arguments) {
    return new DefaultMessageSourceResolvable(new String[] {key}, arguments);
  }

  private static String words(Class<?> type) {
    return Arrays.stream(type.getEnumConstants())
        .map(c -> c.toString().toLowerCase(Locale.ROOT).replace('_', '-'))
        .collect(Collectors.joining(", "));
  }
}
