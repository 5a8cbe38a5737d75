package club.yearline;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Serves the catalogue. */
@SpringBootApplication
public class Yearline {

  public static void main(String[] args) {
    SpringApplication.run(Yearline.class, args);
  }
}
