package club.yearline.fleet;

/**
 * A photograph without its content.
 *
 * @param id its number
 * @param observation number of what it shows
 * @param name its file name
 */
record PhotographLine(long id, long observation, String name) {}
