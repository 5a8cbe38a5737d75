package club.yearline.accounts;

import club.yearline.testing.Database;

class AccountsOnH2Tests extends AccountsContract {

  @Override
  Database freshDatabase() {
    return Database.h2();
  }
}
