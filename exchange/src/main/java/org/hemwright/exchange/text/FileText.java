package org.hemwright.exchange.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.hemwright.pattern.finding.Origin;

/**
 * A file's bytes as text: UTF-8, or UTF-16 where the file says so at its start.
 *
 * @param text without its byte order mark; where the bytes are in neither, each of them as a letter
 *     of ISO 8859-1, so that what else there is to tell can still be told
 * @param unreadable where the first bytes stand that are in neither; the text must not be trusted
 *     then
 */
public record FileText(String text, Optional<Origin> unreadable) {

  /** Decodes a file of that name. */
  public static FileText of(String file, byte[] content) {
    if (startsWith(content, 0xEF, 0xBB, 0xBF)) {
      return decoded(file, content, 3, StandardCharsets.UTF_8);
    }
    if (startsWith(content, 0xFF, 0xFE)) {
      return decoded(file, content, 2, StandardCharsets.UTF_16LE);
    }
    if (startsWith(content, 0xFE, 0xFF)) {
      return decoded(file, content, 2, StandardCharsets.UTF_16BE);
    }
    return decoded(file, content, 0, StandardCharsets.UTF_8);
  }

  private static FileText decoded(String file, byte[] content, int from, Charset charset) {
    ByteBuffer bytes = ByteBuffer.wrap(content, from, content.length - from);
    CharBuffer letters = CharBuffer.allocate(content.length - from + 1);
    CharsetDecoder decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CoderResult result = decoder.decode(bytes, letters, true);
    String text = letters.flip().toString();
    return result.isError()
        ? new FileText(
            new String(content, from, content.length - from, StandardCharsets.ISO_8859_1),
            Optional.of(end(file, text)))
        : new FileText(text, Optional.empty());
  }

  private static Origin end(String file, String text) {
    int line = (int) text.chars().filter(c -> c == '\n').count() + 1;
    return new Origin(file, line, text.length() - text.lastIndexOf('\n'));
  }

  private static boolean startsWith(byte[] content, int... signs) {
    if (content.length < signs.length) {
      return false;
    }
    for (int i = 0; i < signs.length; i++) {
      if ((content[i] & 0xFF) != signs[i]) {
        return false;
      }
    }
    return true;
  }
}
