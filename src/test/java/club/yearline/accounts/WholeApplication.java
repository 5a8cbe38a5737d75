package club.yearline.accounts;

import club.yearline.testing.Database;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.test.context.ContextConfiguration;
import org.springframework.test.context.support.TestPropertySourceUtils;

/**
 * The whole application on an empty embedded database, without the demo. Classes share one; whoever
 * publishes, counts rows or needs the only keeper gets an own one by any property of its own:
 * {@code @TestPropertySource(properties = "start.of=…")}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@SpringBootTest(properties = "yearline.demo=false")
@AutoConfigureMockMvc
@ContextConfiguration(initializers = WholeApplication.Fresh.class)
public @interface WholeApplication {

  /** Gives each application context a database of its own. */
  class Fresh implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    @Override
    public void initialize(ConfigurableApplicationContext context) {
      Database database = Database.h2();
      TestPropertySourceUtils.addInlinedPropertiesToEnvironment(
          context,
          "spring.datasource.url=" + database.url(),
          "spring.datasource.username=" + database.user(),
          "spring.datasource.password=" + database.password());
    }
  }
}
