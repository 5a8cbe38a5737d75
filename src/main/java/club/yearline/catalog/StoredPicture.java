package club.yearline.catalog;

/**
 * A picture as stored.
 *
 * @param mediaType its type, judged by content
 * @param bytes its content
 */
public record StoredPicture(String mediaType, byte[] bytes) {}
