package club.yearline.catalog;

import club.yearline.testing.Database;

class StorageOnPostgresTests extends StorageContract {

  @Override
  Database freshDatabase() {
    return Database.postgres();
  }
}
