package org.hemwright.workroom.keep;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.exchange.text.FileText;

/**
 * How a text lies in its file: in the workroom every line ends with a line feed and nothing stands
 * before the first letter; in the file it stays as she had it, line by line.
 *
 * @param charset of the file
 * @param mark whether the file starts with a byte order mark
 * @param lines the file's lines as they were read, without their ends
 * @param ends how each line ends; what follows the last end is a line too, and ends with nothing
 */
record FileForm(Charset charset, boolean mark, List<String> lines, List<String> ends) {
  private static final String MARK = "\ufeff";
  private static final Pattern LINE = Pattern.compile("([^\r\n]*)(\r\n|\n|\r|$)");

  /** The plain form of a file that is new. */
  static final FileForm PLAIN = new FileForm(StandardCharsets.UTF_8, false, List.of(), List.of());

  FileForm {
    lines = List.copyOf(lines);
    ends = List.copyOf(ends);
  }

  /** How some bytes are formed; absent where they are no text in UTF-8 or marked UTF-16. */
  static Optional<FileForm> of(String name, byte[] bytes) {
    FileText decoded = FileText.of(name, bytes);
    if (decoded.unreadable().isPresent()) {
      return Optional.empty();
    }
    Charset charset = charset(bytes);
    String whole = charset.decode(ByteBuffer.wrap(bytes)).toString();
    if (!Arrays.equals(whole.getBytes(charset), bytes)) {
      return Optional.empty();
    }
    return Optional.of(read(charset, whole.startsWith(MARK), decoded.text()));
  }

  private static Charset charset(byte[] bytes) {
    boolean two = bytes.length > 1;
    if (two && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE) {
      return StandardCharsets.UTF_16LE;
    }
    return two && bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF
        ? StandardCharsets.UTF_16BE
        : StandardCharsets.UTF_8;
  }

  private static FileForm read(Charset charset, boolean mark, String text) {
    List<String> lines = new ArrayList<>();
    List<String> ends = new ArrayList<>();
    Matcher line = LINE.matcher(text);
    boolean more = true;
    while (more && line.find()) {
      lines.add(line.group(1));
      ends.add(line.group(2));
      more = !line.group(2).isEmpty();
    }
    return new FileForm(charset, mark, lines, ends);
  }

  /** The text that was read, each line ended by a line feed. */
  String text() {
    return String.join("\n", lines);
  }

  /**
   * The bytes of another text. Lines that were there keep their ends, and so do lines that stand in
   * the place of others; what is added ends as most lines do.
   */
  byte[] bytes(String text) {
    List<String> now = List.of(text.split("\n", -1));
    int most = Math.min(now.size(), lines.size());
    int head = 0;
    while (head < most && now.get(head).equals(lines.get(head))) {
      head++;
    }
    int tail = 0;
    while (tail < most - head
        && now.get(now.size() - 1 - tail).equals(lines.get(lines.size() - 1 - tail))) {
      tail++;
    }
    String usual = usual();
    StringBuilder whole = new StringBuilder(mark ? MARK : "");
    for (int i = 0; i < now.size(); i++) {
      whole.append(now.get(i));
      if (i < now.size() - 1) {
        boolean after = i >= now.size() - tail;
        int old = after ? i - now.size() + lines.size() : i;
        boolean known = after || i < lines.size() - tail;
        whole.append(known && !ends.get(old).isEmpty() ? ends.get(old) : usual);
      }
    }
    return whole.toString().getBytes(charset);
  }

  private String usual() {
    return List.of("\n", "\r\n", "\r").stream()
        .max((a, b) -> Integer.compare(often(a), often(b)))
        .filter(end -> often(end) > often("\n"))
        .orElse("\n");
  }

  private int often(String end) {
    return (int) ends.stream().filter(end::equals).count();
  }
}
