package club.yearline.fleet;

import club.yearline.testing.Database;

class RegisterOnPostgresTests extends RegisterContract {

  @Override
  Database freshDatabase() {
    return Database.postgres();
  }
}
