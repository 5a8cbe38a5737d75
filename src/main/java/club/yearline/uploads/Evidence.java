package club.yearline.uploads;

/**
 * A file that somebody shows as evidence, ready to be kept.
 *
 * @param name a plain file name that fits the content
 * @param mediaType its type, judged by content
 * @param bytes its content, a picture made anew; not copied, so not to be changed
 */
public record Evidence(String name, String mediaType, byte[] bytes) {}
