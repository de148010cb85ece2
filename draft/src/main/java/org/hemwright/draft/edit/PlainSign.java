package org.hemwright.draft.edit;

import java.util.Map;
import org.hemwright.draft.syntax.Expression.Literal;
import org.hemwright.draft.syntax.LiteralEdit;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.finding.TextEdit;

/**
 * Writes a number that has become less than 0 as a person would: {@code rise - 1/4 in} becomes
 * {@code rise + 1/2 in} rather than {@code rise - -1/2 in}, and {@code right 3 mm} becomes {@code
 * left 2 mm}.
 */
final class PlainSign {
  private static final Map<String, String> OTHER_WAY =
      Map.of("right", "left", "left", "right", "up", "down", "down", "up");

  private PlainSign() {}

  /** The edit that gives a literal a value (mm, rad or plain). */
  static TextEdit edit(Source source, Literal literal, double value) {
    TextEdit plain = LiteralEdit.of(source, literal, value);
    if (!(value < 0)) {
      return plain;
    }
    String text = source.text();
    int start = literal.span().start();
    int before = start - 1;
    while (before >= 0 && text.charAt(before) == ' ') {
      before--;
    }
    if (before < 0 || before < source.lineStart(source.line(start))) {
      return plain;
    }
    TextEdit size = LiteralEdit.of(source, literal, -value);
    char sign = text.charAt(before);
    String between = text.substring(before + 1, start);
    if (sign == '+') {
      return joined(source, before, size, "-" + between);
    }
    if (sign == '-') {
      return joined(source, before, size, isBetween(text, before) ? "+" + between : "");
    }
    int word = before;
    while (word > 0 && Character.isLetter(text.charAt(word - 1))) {
      word--;
    }
    String other = OTHER_WAY.get(text.substring(word, before + 1));
    return other == null ? plain : joined(source, word, size, other + between);
  }

  /** Whether a sign stands between two values rather than before one. */
  private static boolean isBetween(String text, int sign) {
    int at = sign - 1;
    while (at >= 0 && text.charAt(at) == ' ') {
      at--;
    }
    int word = at;
    while (word >= 0 && Character.isLetter(text.charAt(word))) {
      word--;
    }
    String last = at < 0 ? "" : text.substring(word + 1, at + 1);
    boolean value =
        at >= 0
            && (Character.isLetterOrDigit(text.charAt(at)) || ")%_".indexOf(text.charAt(at)) >= 0);
    return value && !last.equals("at") && !OTHER_WAY.containsKey(last) && !last.equals("turned");
  }

  private static TextEdit joined(Source source, int from, TextEdit number, String before) {
    return source.replace(
        new Span(from, number.offset() + number.length()), before + number.replacement());
  }
}
