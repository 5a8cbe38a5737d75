package club.yearline.corrections;

import club.yearline.testing.Database;

class CorrectionsOnPostgresTests extends CorrectionsContract {

  @Override
  Database freshDatabase() {
    return Database.postgres();
  }
}
