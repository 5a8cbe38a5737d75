package club.yearline.exchange;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/** Says where to go once the application answers. */
@Component
class ReadyNotice {

  private static final Logger log = LoggerFactory.getLogger(ReadyNotice.class);

  @EventListener
  void on(ApplicationReadyEvent event) {
    Environment environment = event.getApplicationContext().getEnvironment();
    // Only a server that listens has set its port.
    String port = environment.getProperty("local.server.port");
    if (port != null) {
      log.info(Texts.of("start.ready", address(environment, port)));
    }
  }

  static String address(Environment environment, String port) {
    boolean secured =
        environment.containsProperty("server.ssl.bundle")
            || environment.containsProperty("server.ssl.key-store")
            || environment.containsProperty("server.ssl.certificate");
    String path = environment.getProperty("server.servlet.context-path", "");
    return (secured ? "https" : "http") + "://localhost:" + port + path + "/";
  }
}
