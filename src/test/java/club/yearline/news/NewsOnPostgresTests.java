package club.yearline.news;

import club.yearline.testing.Database;

class NewsOnPostgresTests extends NewsContract {

  @Override
  Database freshDatabase() {
    return Database.postgres();
  }
}
