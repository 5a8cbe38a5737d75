package club.yearline.exchange;

import club.yearline.tables.Complaint;

/** Bytes that are no picture of a kind that is taken. */
final class NotAPicture extends Exception {

  private final transient Complaint complaint;

  NotAPicture(String code, Object... arguments) {
    super(code);
    this.complaint = Complaint.of(code, arguments);
  }

  Complaint complaint() {
    return complaint;
  }
}
