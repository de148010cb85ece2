package org.hemwright.draft.syntax;

import org.hemwright.pattern.finding.Finding;

/** Starts the findings that reading makes: each points at the token that is wrong. */
final class Slips {
  private static final int LONGEST_SHOWN = 40;

  private final Source source;

  Slips(Source source) {
    this.source = source;
  }

  /** A finding at the start of a span; its subject is the line. */
  Finding.Builder fail(String code, Span span) {
    return Finding.fail(code, subject(span)).at(source.origin(span));
  }

  /** The same, worth a look only. */
  Finding.Builder warn(String code, Span span) {
    return Finding.warn(code, subject(span)).at(source.origin(span));
  }

  private String subject(Span span) {
    return "line " + source.line(span.start());
  }

  /** A stretch of the document as a message shows it: short, and printable. */
  static String shown(String text) {
    StringBuilder shown = new StringBuilder();
    int count = 0;
    for (int i = 0; i < text.length() && count < LONGEST_SHOWN; count++) {
      int c = text.codePointAt(i);
      i += Character.charCount(c);
      shown.append(shown(c));
    }
    return count < text.codePointCount(0, text.length()) ? shown + "\u2026" : shown.toString();
  }

  /** A word in the quotes that messages use. */
  static String quoted(String word) {
    return "\u201c" + word + "\u201d";
  }

  /** A character as a message shows it: itself, or its number where it has no shape. */
  static String shown(int c) {
    boolean shapeless =
        switch (Character.getType(c)) {
          case Character.CONTROL,
              Character.FORMAT,
              Character.SURROGATE,
              Character.UNASSIGNED,
              Character.PRIVATE_USE,
              Character.LINE_SEPARATOR,
              Character.PARAGRAPH_SEPARATOR ->
              true;
          default -> false;
        };
    return shapeless ? String.format("U+%04X", c) : Character.toString(c);
  }
}
