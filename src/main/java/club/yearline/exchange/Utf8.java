package club.yearline.exchange;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Finds where a file stops being UTF-8, line by line, because decoders read far ahead. */
final class Utf8 {

  private Utf8() {}

  /** The line, from 1, with the first malformed bytes; the last line if there are none. */
  static int firstBadLine(InputStream in) throws IOException {
    InputStream bytes = new BufferedInputStream(in);
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    int number = 1;
    for (int b = bytes.read(); b >= 0; b = bytes.read()) {
      if (b != '\n') {
        line.write(b);
        continue;
      }
      if (!isUtf8(line.toByteArray())) {
        return number;
      }
      line.reset();
      number++;
    }
    return number;
  }

  private static boolean isUtf8(byte[] line) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(line));
      return true;
    } catch (CharacterCodingException malformed) {
      return false;
    }
  }
}
