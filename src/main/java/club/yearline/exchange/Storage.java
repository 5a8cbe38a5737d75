package club.yearline.exchange;

import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.context.annotation.Bean;

/**
 * The database alone, as it is, for commands that carry all of it. Not a part of the application
 * (it carries no annotation by which it would be found), but started instead of it.
 */
@ImportAutoConfiguration({DataSourceAutoConfiguration.class, FlywayAutoConfiguration.class})
class Storage {

  /** A backup is made before an upgrade too, and a restored one is brought up to date later. */
  @Bean
  FlywayMigrationStrategy untouched() {
    return flyway -> {};
  }
}
