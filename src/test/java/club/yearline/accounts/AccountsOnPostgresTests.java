package club.yearline.accounts;

import club.yearline.testing.Database;

class AccountsOnPostgresTests extends AccountsContract {

  @Override
  Database freshDatabase() {
    return Database.postgres();
  }
}
