package club.yearline.benchmarks;

import club.yearline.catalog.Edition;
import club.yearline.catalog.Publication;
import club.yearline.exchange.GeneratedRecords;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.autoconfigure.condition.ConditionalOnWebApplication;
import org.springframework.stereotype.Component;

/** Fills the server under measurement with a generated catalogue. */
@Component
@ConditionalOnWebApplication
class GeneratedAtStart implements ApplicationRunner {

  private static final int FAMILIES = 10;

  private final Publication publication;

  GeneratedAtStart(Publication publication) {
    this.publication = publication;
  }

  @Override
  public void run(ApplicationArguments arguments) {
    publication.publish(Edition.of("Generated", null, GeneratedRecords.of(FAMILIES).entries()));
  }
}
