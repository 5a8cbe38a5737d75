package club.yearline.fleet;

/**
 * A photograph's content and what it is of.
 *
 * @param feature key of the feature
 * @param sha256 its digest
 * @param bytes its content
 */
record PhotographOf(String feature, String sha256, byte[] bytes) {}
