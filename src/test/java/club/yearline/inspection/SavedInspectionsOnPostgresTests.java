package club.yearline.inspection;

import club.yearline.testing.Database;

class SavedInspectionsOnPostgresTests extends SavedInspectionsContract {

  @Override
  Database freshDatabase() {
    return Database.postgres();
  }
}
