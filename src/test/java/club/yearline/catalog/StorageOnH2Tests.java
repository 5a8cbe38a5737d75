package club.yearline.catalog;

import club.yearline.testing.Database;

class StorageOnH2Tests extends StorageContract {

  @Override
  Database freshDatabase() {
    return Database.h2();
  }
}
