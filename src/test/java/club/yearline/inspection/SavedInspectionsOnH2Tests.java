package club.yearline.inspection;

import club.yearline.testing.Database;

class SavedInspectionsOnH2Tests extends SavedInspectionsContract {

  @Override
  Database freshDatabase() {
    return Database.h2();
  }
}
