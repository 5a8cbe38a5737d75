package club.yearline.exchange;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;

/** Where the files of a package are written: a folder, or a zip. */
interface PackageTarget extends Closeable {

  /** Begins a file; to be closed before the next one is begun. */
  OutputStream file(String name) throws IOException;
}
