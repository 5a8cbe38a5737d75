package club.yearline.uploads;

import java.io.IOException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Lets few people at a time do what costs much time and memory, and few wait for it: whoever reads
 * the catalogue comes first.
 */
public final class Turns {

  private final Semaphore room;
  private final Semaphore turn;
  private final int patience;

  /**
   * Turns at one kind of work.
   *
   * @param atOnce how many may work at a time
   * @param waiting how many may wait
   * @param patience how many seconds anybody waits
   */
  public Turns(int atOnce, int waiting, int patience) {
    this.turn = new Semaphore(atOnce, true);
    this.room = new Semaphore(atOnce + waiting);
    this.patience = patience;
  }

  /** What is done in turn. */
  public interface Work<T> {
    /** Does it. */
    T done() throws NotTaken, IOException;
  }

  /**
   * Does something as soon as it is its turn.
   *
   * @throws NotTaken as the work does, and with the code {@code busy} if too many wait already
   */
  public <T> T take(Work<T> work) throws NotTaken, IOException {
    if (!room.tryAcquire()) {
      throw new NotTaken("busy");
    }
    try {
      return afterWaiting(work);
    } finally {
      room.release();
    }
  }

  private <T> T afterWaiting(Work<T> work) throws NotTaken, IOException {
    if (!isMyTurn()) {
      throw new NotTaken("busy");
    }
    try {
      return work.done();
    } finally {
      turn.release();
    }
  }

  private boolean isMyTurn() {
    try {
      return turn.tryAcquire(patience, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
