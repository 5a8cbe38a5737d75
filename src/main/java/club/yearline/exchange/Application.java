package club.yearline.exchange;

import java.io.IOException;
import java.io.PrintStream;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.boot.Banner;
import org.springframework.boot.WebApplicationType;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;

/** The application without its server, for commands that need the catalogue. */
final class Application {

  /** What a command does with the application. */
  interface Work<T> {
    T with(ApplicationContext context) throws IOException;
  }

  private final Class<?> main;
  private final String[] settings;

  /** An application with settings beyond those of its environment, each {@code --name=value}. */
  Application(Class<?> main, String... settings) {
    this.main = main;
    this.settings = settings;
  }

  /** Its database alone, as it is; with settings in place of its own. */
  Application storage(String... instead) {
    Map<String, String> all = new LinkedHashMap<>();
    Stream.concat(Arrays.stream(settings), Arrays.stream(instead))
        .forEach(setting -> all.put(setting.substring(0, setting.indexOf('=')), setting));
    return new Application(Storage.class, all.values().toArray(String[]::new));
  }

  /**
   * Starts it, works, and stops it. Its log goes to standard error: results have standard output.
   */
  <T> T run(Work<T> work) throws IOException {
    PrintStream results = System.out;
    System.setOut(System.err);
    try (ConfigurableApplicationContext context =
        new SpringApplicationBuilder(main)
            .web(WebApplicationType.NONE)
            .bannerMode(Banner.Mode.OFF)
            .logStartupInfo(false)
            .properties(
                "logging.level.root=warn", "spring.jmx.enabled=false", "yearline.watch=false")
            .run(settings)) {
      return work.with(context);
    } finally {
      System.setOut(results);
    }
  }
}
