package club.yearline.exchange;

import java.io.PrintStream;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/** The application without its server, for commands that need the catalogue. */
final class Application {

  private final Class<?> main;
  private final String[] settings;

  Application(Class<?> main, String... settings) {
    this.main = main;
    this.settings = settings;
  }

  /** Starts it. Its log goes to standard error: standard output is for results. */
  ConfigurableApplicationContext open() {
    PrintStream results = System.out;
    System.setOut(System.err);
    try {
      return new SpringApplicationBuilder(main)
          .web(WebApplicationType.NONE)
          .bannerMode(Banner.Mode.OFF)
          .logStartupInfo(false)
          .properties("logging.level.root=warn", "yearline.demo=false")
          .properties(settings)
          .run();
    } catch (RuntimeException e) {
      System.setOut(results);
      throw e;
    }
  }
}
