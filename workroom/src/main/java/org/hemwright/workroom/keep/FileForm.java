package org.hemwright.workroom.keep;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import org.hemwright.exchange.text.FileText;

/**
 * How a text lies in its file: in the workroom every line ends with a line feed and nothing stands
 * before the first letter; in the file it stays as she had it.
 *
 * @param mark whether the file starts with a byte order mark
 * @param returns whether its lines end with a carriage return and a line feed
 */
record FileForm(boolean mark, boolean returns) {
  private static final String MARK = "\ufeff";

  /** The plain form of a file that is new. */
  static final FileForm PLAIN = new FileForm(false, false);

  /** How some bytes are formed; absent where they are no text in UTF-8. */
  static Optional<FileForm> of(String name, byte[] bytes) {
    if (FileText.of(name, bytes).unreadable().isPresent()) {
      return Optional.empty();
    }
    String whole = new String(bytes, StandardCharsets.UTF_8);
    boolean plain = Arrays.equals(whole.getBytes(StandardCharsets.UTF_8), bytes);
    return plain
        ? Optional.of(new FileForm(whole.startsWith(MARK), whole.contains("\r\n")))
        : Optional.empty();
  }

  /** The text of the bytes. */
  String text(byte[] bytes) {
    String whole = new String(bytes, StandardCharsets.UTF_8);
    String bare = mark ? whole.substring(MARK.length()) : whole;
    return bare.replace("\r\n", "\n").replace('\r', '\n');
  }

  /** The bytes of the text. */
  byte[] bytes(String text) {
    String lines = returns ? text.replace("\n", "\r\n") : text;
    return (mark ? MARK + lines : lines).getBytes(StandardCharsets.UTF_8);
  }
}
