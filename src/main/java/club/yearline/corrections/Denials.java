package club.yearline.corrections;

import club.yearline.web.Refusal;
import org.springframework.http.HttpStatus;

/** What cannot be done to a correction: by this person, or as it stands. */
final class Denials {

  private Denials() {}

  /** Nobody learns of drafts of others, not even that they exist. */
  static Refusal unknown(Object id) {
    return Refusal.notFound("unknown-correction", id);
  }

  /** Nobody learns of files of corrections that they may not see. */
  static Refusal unknownFile(long file, long correction) {
    return Refusal.notFound("unknown-file", file, correction);
  }

  /** The person may not do this. */
  static Refusal person(String code) {
    return Refusal.of(HttpStatus.FORBIDDEN, code);
  }

  /** The correction has moved on, so that this cannot be done any more. */
  static Refusal moved(String code, Object... arguments) {
    return Refusal.of(HttpStatus.CONFLICT, code, arguments);
  }

  /** Something is missing before this can be done. */
  static Refusal unready(String code, Object... arguments) {
    return Refusal.unprocessable(code, arguments);
  }
}
