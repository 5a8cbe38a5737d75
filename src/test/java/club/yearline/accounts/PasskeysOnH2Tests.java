package club.yearline.accounts;

import club.yearline.testing.Database;

class PasskeysOnH2Tests extends PasskeysContract {

  @Override
  Database freshDatabase() {
    return Database.h2();
  }
}
