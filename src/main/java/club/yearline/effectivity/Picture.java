package club.yearline.effectivity;

/**
 * A picture of the catalogue, by content.
 *
 * @param name file name under which entries name it
 * @param mediaType its type, judged by content
 * @param sha256 SHA-256 of its bytes, 64 lower-case hexadecimal digits
 */
public record Picture(String name, String mediaType, String sha256) {}
