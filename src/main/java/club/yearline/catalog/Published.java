package club.yearline.catalog;

/** A revision was published; told once the transaction that published it is committed. */
record Published(Snapshot snapshot) {}
