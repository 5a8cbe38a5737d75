package club.yearline.web;

import java.util.List;
import java.util.Map;

/**
 * A refusal in words.
 *
 * @param status the HTTP status
 * @param code the word by which programs tell refusals apart
 * @param title what kind of problem it is
 * @param detail what is wrong in this case
 * @param advice what to do
 * @param faults the fields at fault
 * @param members further members of the API's answer
 */
record Problem(
    int status,
    String code,
    String title,
    String detail,
    String advice,
    List<FieldFault> faults,
    Map<String, Object> members) {

  /** Where problems of a kind are explained. */
  static final String PATH = "/problems/";

  /**
   * A field at fault, in words.
   *
   * @param field its name in the form or the query
   * @param message what is wrong
   */
  record FieldFault(String field, String message) {}

  /** The address of the explanation of this kind of problem. */
  String type() {
    return PATH + code;
  }
}
