package club.yearline.uploads;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.springframework.core.io.ByteArrayResource;
import org.springframework.core.io.InputStreamSource;

/** A flood of files does not fill the machine. */
class EvidenceDeskTest {

  private static final byte[] PHOTOGRAPH = Shots.withPlace(1);

  private final EvidenceDesk desk = new EvidenceDesk(1);

  private final CountDownLatch begun = new CountDownLatch(1);
  private final CountDownLatch gate = new CountDownLatch(1);
  private final AtomicInteger open = new AtomicInteger();
  private final AtomicInteger mostOpen = new AtomicInteger();

  /** A file that cannot be read before the gate opens. */
  private InputStream slow() throws IOException {
    mostOpen.accumulateAndGet(open.incrementAndGet(), Math::max);
    begun.countDown();
    try {
      if (!gate.await(60, TimeUnit.SECONDS)) {
        throw new IOException("The gate stayed closed");
      }
    } catch (InterruptedException e) {
      throw new IOException(e);
    }
    return new ByteArrayInputStream(PHOTOGRAPH) {
      @Override
      public void close() {
        open.decrementAndGet();
      }
    };
  }

  @Test
  void fewAreWorkedOnFewWaitAndTheRestIsTurnedAway() throws Exception {
    ExecutorService people = Executors.newFixedThreadPool(30);
    try {
      List<Future<Boolean>> answers = new ArrayList<>();
      answers.add(people.submit(this::isTaken));
      assertThat(begun.await(60, TimeUnit.SECONDS)).isTrue();
      for (int i = 0; i < 29; i++) {
        answers.add(people.submit(this::isTaken));
      }
      waitForRefusals(answers, 23);
      gate.countDown();
      int taken = 0;
      for (Future<Boolean> answer : answers) {
        taken += answer.get(60, TimeUnit.SECONDS) ? 1 : 0;
      }
      assertThat(taken).isEqualTo(7);
      assertThat(mostOpen).hasValue(1);
    } finally {
      people.shutdownNow();
    }
  }

  private static void waitForRefusals(List<Future<Boolean>> answers, int wanted)
      throws InterruptedException {
    for (int i = 0; i < 1000; i++) {
      if (answers.stream().filter(Future::isDone).count() >= wanted) {
        return;
      }
      Thread.sleep(10);
    }
  }

  private boolean isTaken() throws IOException {
    try {
      desk.take("x.jpg", this::slow);
      return true;
    } catch (NotTaken e) {
      assertThat(e.code()).isEqualTo("busy");
      return false;
    }
  }

  @Test
  void aRefusedFileLeavesRoomForTheNext() throws Exception {
    InputStreamSource text = new ByteArrayResource("just text".getBytes());
    for (int i = 0; i < 20; i++) {
      NotTaken refused = catchThrowableOfType(NotTaken.class, () -> desk.take("x.txt", text));
      assertThat(refused.code()).isEqualTo("not-evidence");
    }
    assertThat(desk.take("x.jpg", new ByteArrayResource(PHOTOGRAPH)).name()).isEqualTo("x.jpg");
  }
}
