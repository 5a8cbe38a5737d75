package club.yearline.corrections;

import club.yearline.testing.Database;

class CorrectionsOnH2Tests extends CorrectionsContract {

  @Override
  Database freshDatabase() {
    return Database.h2();
  }
}
