package club.yearline;

import club.yearline.exchange.Commands;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Serves the catalogue. */
@SpringBootApplication
public class Yearline {

  public static void main(String[] args) {
    if (Commands.areAskedForBy(args)) {
      System.exit(Commands.run(Yearline.class, args));
    }
    SpringApplication.run(Yearline.class, args);
  }
}
