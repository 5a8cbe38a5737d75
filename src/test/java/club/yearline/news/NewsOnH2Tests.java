package club.yearline.news;

import club.yearline.testing.Database;

class NewsOnH2Tests extends NewsContract {

  @Override
  Database freshDatabase() {
    return Database.h2();
  }
}
