package club.yearline.corrections;

/**
 * A file of a correction, without its content.
 *
 * @param id its number
 * @param name its name
 * @param mediaType its type, judged by content
 * @param size bytes
 * @param sha256 digest of its content
 */
record FileLine(long id, String name, String mediaType, int size, String sha256) {

  /** Whether a small one can be made of it. */
  public boolean isPhotograph() {
    return isPicture() && !mediaType.startsWith("image/svg");
  }

  /** Whether it can be shown. */
  public boolean isPicture() {
    return mediaType.startsWith("image/");
  }
}
