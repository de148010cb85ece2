package org.hemwright.exchange.chart;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/** A text table's bytes as text: UTF-8, or UTF-16 where the file says so at its start. */
final class ChartText {
  private ChartText() {}

  /**
   * The text without its byte order mark. Bytes that are no UTF-8 are told; the rest is still read.
   */
  static String decode(byte[] content, String file, ChartProblems problems) {
    if (startsWith(content, 0xEF, 0xBB, 0xBF)) {
      return decode(content, 3, StandardCharsets.UTF_8, file, problems);
    }
    if (startsWith(content, 0xFF, 0xFE)) {
      return decode(content, 2, StandardCharsets.UTF_16LE, file, problems);
    }
    if (startsWith(content, 0xFE, 0xFF)) {
      return decode(content, 2, StandardCharsets.UTF_16BE, file, problems);
    }
    return decode(content, 0, StandardCharsets.UTF_8, file, problems);
  }

  private static String decode(
      byte[] content, int from, Charset charset, String file, ChartProblems problems) {
    ByteBuffer bytes = ByteBuffer.wrap(content, from, content.length - from);
    CharBuffer text = CharBuffer.allocate(content.length - from + 1);
    CharsetDecoder decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    CoderResult result = decoder.decode(bytes, text, true);
    if (!result.isError()) {
      return text.flip().toString();
    }
    problems.add(Finding.fail("chart-encoding", file).at(end(text.flip().toString(), file)));
    return readable(content, from);
  }

  /** Every byte a letter, so that numbers and sizes can still be read and told of. */
  private static String readable(byte[] content, int from) {
    try {
      return StandardCharsets.ISO_8859_1
          .newDecoder()
          .decode(ByteBuffer.wrap(content, from, content.length - from))
          .toString();
    } catch (CharacterCodingException impossible) {
      throw new AssertionError("every byte is a letter of ISO 8859-1", impossible);
    }
  }

  private static Origin end(String text, String file) {
    int lastLine = text.lastIndexOf('\n');
    int line = (int) text.chars().filter(c -> c == '\n').count() + 1;
    return new Origin(file, line, text.length() - lastLine);
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
