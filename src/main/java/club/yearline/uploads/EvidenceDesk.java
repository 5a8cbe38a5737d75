package club.yearline.uploads;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.springframework.core.io.InputStreamSource;
import org.springframework.stereotype.Component;

/**
 * Where files are taken as evidence. Decoding costs much time and memory, so that few files are
 * worked on at a time and few may wait: whoever reads the catalogue comes first.
 */
@Component
public class EvidenceDesk {

  /** How long somebody waits before being asked to come again. */
  private static final int PATIENCE = 20;

  private static final int MAY_WAIT = 6;

  private final Semaphore room;
  private final Semaphore work;

  EvidenceDesk() {
    this(Math.max(1, Runtime.getRuntime().availableProcessors() / 2));
  }

  EvidenceDesk(int atOnce) {
    work = new Semaphore(atOnce, true);
    room = new Semaphore(atOnce + MAY_WAIT);
  }

  /**
   * Takes a file.
   *
   * @param name as the browser sent it
   * @param content read once there is time for it
   * @throws NotTaken if it is of no kind that is taken, broken, locked or too large, or if too many
   *     wait already
   */
  public Evidence take(String name, InputStreamSource content) throws NotTaken, IOException {
    if (!room.tryAcquire()) {
      throw new NotTaken("busy");
    }
    try {
      return takeInTurn(name, content);
    } finally {
      room.release();
    }
  }

  private Evidence takeInTurn(String name, InputStreamSource content) throws NotTaken, IOException {
    if (!isMyTurn()) {
      throw new NotTaken("busy");
    }
    try (InputStream in = content.getInputStream()) {
      // One more than is taken, so that a longer file is seen to be longer.
      return EvidenceReader.read(name, in.readNBytes(EvidenceReader.MOST_BYTES + 1));
    } finally {
      work.release();
    }
  }

  private boolean isMyTurn() {
    try {
      return work.tryAcquire(PATIENCE, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
