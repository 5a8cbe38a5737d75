package club.yearline.corrections;

import java.util.List;

/**
 * What is attached to a correction: fragment {@code corrections/files :: list}.
 *
 * @param files what is there
 * @param writable whether the reader may remove files, and add some while there is room
 * @param most how many there may be
 */
record Attached(List<FileLine> files, boolean writable, int most) {

  /** Whether the reader may add one more. */
  public boolean isOpen() {
    return writable && files.size() < most;
  }
}
