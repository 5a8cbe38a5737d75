package club.yearline.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import club.yearline.effectivity.Entry;
import club.yearline.effectivity.Picture;
import club.yearline.effectivity.Records;
import club.yearline.testing.Catalogues;
import club.yearline.testing.Database;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the catalogue's storage does, on whichever database. The tests share one instance, since
 * starting one takes seconds; each withdraws in the end whatever it has published.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class StorageContract {

  private Database database;
  private Instance instance;

  abstract Database freshDatabase();

  @BeforeAll
  void start() {
    database = freshDatabase();
    instance = Instance.on(database);
  }

  @AfterAll
  void stop() {
    instance.close();
  }

  @AfterEach
  void withdrawAll() {
    Records left = instance.snapshots().head().catalogue().records();
    instance
        .publication()
        .publish(
            Edition.of("Start over", null, List.of())
                .withdrawing(left.entries().stream().map(EntryRef::of).toList())
                .withdrawingPictures(left.pictures().stream().map(Picture::name).toList()));
  }

  @Test
  void everyFieldOfEveryKindReadsBackAsPublished() {
    List<Entry> entries = new ArrayList<>(EveryField.filled());
    entries.addAll(EveryField.bare());
    instance
        .publication()
        .publish(Edition.of("All fields", "Åsa", entries).withPictures(EveryField.pictures()));
    assertThat(readBack().entries()).containsExactlyInAnyOrderElementsOf(entries);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void randomCataloguesReadBackAsPublished(long seed) {
    Records records = Catalogues.random(seed);
    List<PictureFile> files =
        records.pictures().stream()
            .map(p -> new PictureFile(p.name(), p.mediaType(), Catalogues.pictureBytes(p.name())))
            .toList();
    instance
        .publication()
        .publish(Edition.of("Random", "Åsa", records.entries()).withPictures(files));
    assertThat(readBack()).isEqualTo(instance.snapshots().head().catalogue().records());
    assertThat(readBack().entries()).containsExactlyInAnyOrderElementsOf(records.entries());
    assertThat(readBack().pictures()).containsExactlyInAnyOrderElementsOf(records.pictures());
  }

  /** What another instance would read. */
  private Records readBack() {
    return instance.stored().newest(Snapshot.NONE).catalogue().records();
  }
}
