package club.yearline.accounts;

import club.yearline.testing.Database;

class PasskeysOnPostgresTests extends PasskeysContract {

  @Override
  Database freshDatabase() {
    return Database.postgres();
  }
}
