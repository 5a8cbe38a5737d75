package club.yearline.uploads;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.io.IOException;
import java.io.InputStream;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.InputStreamSource;
import org.springframework.stereotype.Component;

/** Where files are taken as evidence, and made small to be looked at in lists. */
@Component
public class EvidenceDesk {

  private static final int MAY_WAIT = 6;
  private static final int PATIENCE = 20;
  private static final int THUMBNAILS = 200;

  private final Turns turns;
  private final Cache<String, byte[]> thumbnails =
      Caffeine.newBuilder().maximumSize(THUMBNAILS).build();

  @Autowired
  EvidenceDesk() {
    this(Math.max(1, Runtime.getRuntime().availableProcessors() / 2));
  }

  EvidenceDesk(int atOnce) {
    turns = new Turns(atOnce, MAY_WAIT, PATIENCE);
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
    return turns.take(
        () -> {
          try (InputStream in = content.getInputStream()) {
            // One more than is taken, so that a longer file is seen to be longer.
            return EvidenceReader.read(name, in.readNBytes(EvidenceReader.MOST_BYTES + 1));
          }
        });
  }

  /**
   * Takes a photograph, and no document.
   *
   * @param name as the browser sent it
   * @param content read once there is time for it
   * @throws NotTaken as {@link #take} does
   */
  public Evidence photograph(String name, InputStreamSource content) throws NotTaken, IOException {
    Evidence taken = take(name, content);
    if (!taken.mediaType().startsWith("image/")) {
      throw new NotTaken("not-photograph");
    }
    return taken;
  }

  /**
   * A small JPEG of a picture that was taken before; the last few are kept.
   *
   * @param sha256 digest of its content, under which it is kept
   * @throws NotTaken if it is no picture, or if too many wait already
   */
  public byte[] thumbnail(String sha256, byte[] picture) throws NotTaken, IOException {
    byte[] known = thumbnails.getIfPresent(sha256);
    if (known == null) {
      known = turns.take(() -> Thumbnail.of(picture));
      thumbnails.put(sha256, known);
    }
    return known;
  }
}
