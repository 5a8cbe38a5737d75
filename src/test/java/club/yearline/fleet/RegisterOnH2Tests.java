package club.yearline.fleet;

import club.yearline.testing.Database;

class RegisterOnH2Tests extends RegisterContract {

  @Override
  Database freshDatabase() {
    return Database.h2();
  }
}
