package club.yearline.accounts;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A key in a file beside the embedded database, open to its owner alone. It guards a copy of the
 * database that travels without it; whoever has both has everything.
 *
 * @param path where the file is, or will be
 */
record KeyFile(Path path) {

  private static final Pattern DATABASE = Pattern.compile("jdbc:h2:(?:file:)?((?:~|[^:;])[^;]*).*");
  private static final Pattern ELSEWHERE = Pattern.compile("(?:mem|tcp|ssl|zip|nio\\w*|split):.*");

  /** The file beside the database of an address; empty where that is not a file of ours. */
  static Optional<KeyFile> beside(String database) {
    Matcher file = DATABASE.matcher(database);
    if (!file.matches() || ELSEWHERE.matcher(file.group(1)).matches()) {
      return Optional.empty();
    }
    String path = file.group(1).replaceFirst("^~", Matcher.quoteReplacement(home()));
    return Optional.of(new KeyFile(Path.of(path + ".key")));
  }

  /** The key, if there is one already. */
  Optional<String> read() {
    try {
      return Files.exists(path)
          ? Optional.of(Files.readString(path, StandardCharsets.UTF_8).strip())
          : Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("The secret key cannot be read: " + path, e);
    }
  }

  /** The key; a new one the first time. */
  String readOrMake() {
    return read().orElseGet(this::make);
  }

  private String make() {
    try {
      Path folder = path.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
      Files.createFile(path, forOwner());
      Files.writeString(path, SealingKey.fresh() + "\n", StandardCharsets.UTF_8);
    } catch (FileAlreadyExistsException e) {
      // Made at this very moment by somebody else: theirs is read below.
    } catch (IOException e) {
      throw new UncheckedIOException("The secret key cannot be written: " + path, e);
    }
    return read().orElseThrow();
  }

  private static FileAttribute<?>[] forOwner() {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
        }
        : new FileAttribute<?>[0];
  }

  private static String home() {
    return System.getProperty("user.home", "");
  }
}
