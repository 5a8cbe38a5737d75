package club.yearline.catalog;

import java.util.Optional;
import org.springframework.stereotype.Component;

/** Pictures by content. */
@Component
public class Pictures {

  /** The picture whose content has this SHA-256, in lower-case hexadecimal digits. */
  public Optional<StoredPicture> find(String sha256) {
    throw new UnsupportedOperationException("storage follows");
  }
}
