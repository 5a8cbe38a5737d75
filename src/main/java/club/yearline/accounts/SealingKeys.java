package club.yearline.accounts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * The keys under which secrets are sealed: that of the settings, else one in a file beside the
 * embedded database. Former ones still open what they closed.
 */
@Component
class SealingKeys {

  private final @Nullable SealingKey set;
  private final List<SealingKey> former;
  private final @Nullable KeyFile file;
  private final boolean atRest;

  SealingKeys(
      @Value("${yearline.secret-key:}") String key,
      @Value("${yearline.former-secret-keys:}") List<String> former,
      @Value("${spring.datasource.url:}") String database) {
    this.set = key.isBlank() ? null : SealingKey.of(key);
    this.former = former.stream().map(SealingKey::of).toList();
    this.file = KeyFile.beside(database).orElse(null);
    this.atRest = !database.startsWith("jdbc:h2:mem:");
  }

  /** Whether secrets come to lie on a disk unsealed, because there is no key. */
  boolean areMissing() {
    return atRest && set == null && file == null;
  }

  /** The key to seal with; empty where there is none, and secrets stay as they are. */
  Optional<SealingKey> present() {
    return set != null
        ? Optional.of(set)
        : Optional.ofNullable(file).map(KeyFile::readOrMake).map(SealingKey::of);
  }

  /** A key by its name. */
  Optional<SealingKey> named(String name) {
    return Stream.of(
            Stream.ofNullable(set),
            former.stream(),
            Optional.ofNullable(file).flatMap(KeyFile::read).map(SealingKey::of).stream())
        .flatMap(keys -> keys)
        .filter(key -> key.name().equals(name))
        .findFirst();
  }
}
