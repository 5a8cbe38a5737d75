package club.yearline.catalog;

import club.yearline.testing.Database;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.autoconfigure.task.TaskSchedulingAutoConfiguration;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.boot.data.jpa.autoconfigure.DataJpaRepositoriesAutoConfiguration;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.hibernate.autoconfigure.HibernateJpaAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcClientAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcTemplateAutoConfiguration;
import org.springframework.boot.persistence.autoconfigure.EntityScan;
import org.springframework.boot.persistence.autoconfigure.PersistenceExceptionTranslationAutoConfiguration;
import org.springframework.boot.transaction.autoconfigure.TransactionAutoConfiguration;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.annotation.Import;
import org.springframework.data.jpa.repository.config.EnableJpaRepositories;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** One running instance of the catalogue's storage, as the application configures it. */
final class Instance implements AutoCloseable {

  private final ConfigurableApplicationContext context;

  private Instance(ConfigurableApplicationContext context) {
    this.context = context;
  }

  static Instance on(Database database) {
    return new Instance(
        new SpringApplicationBuilder(Storage.class)
            .web(WebApplicationType.NONE)
            .run(
                "--spring.datasource.url=" + database.url(),
                "--spring.datasource.username=" + database.user(),
                "--spring.datasource.password=" + database.password()));
  }

  Publication publication() {
    return context.getBean(Publication.class);
  }

  Snapshots snapshots() {
    return context.getBean(Snapshots.class);
  }

  StoredSnapshots stored() {
    return context.getBean(StoredSnapshots.class);
  }

  History history() {
    return context.getBean(History.class);
  }

  Pictures pictures() {
    return context.getBean(Pictures.class);
  }

  JdbcClient jdbc() {
    return context.getBean(JdbcClient.class);
  }

  TransactionTemplate transactions() {
    return context.getBean(TransactionTemplate.class);
  }

  @Override
  public void close() {
    context.close();
  }

  @ImportAutoConfiguration({
    DataSourceAutoConfiguration.class,
    JdbcTemplateAutoConfiguration.class,
    JdbcClientAutoConfiguration.class,
    HibernateJpaAutoConfiguration.class,
    DataJpaRepositoriesAutoConfiguration.class,
    PersistenceExceptionTranslationAutoConfiguration.class,
    FlywayAutoConfiguration.class,
    TransactionAutoConfiguration.class,
    TaskSchedulingAutoConfiguration.class
  })
  @EntityScan(basePackageClasses = Publication.class)
  @EnableJpaRepositories(basePackageClasses = Publication.class)
  @Import({
    Publication.class,
    Snapshots.class,
    StoredSnapshots.class,
    Versions.class,
    Identities.class,
    Pictures.class,
    History.class,
    HeadWatch.class
  })
  static class Storage {}
}
