package org.hemwright.booklet.prose;

import org.hemwright.pattern.finding.Origin;

/**
 * A place in braces: {@code {table sizes}}.
 *
 * @param kind the first word
 * @param name the rest
 * @param origin where it stands
 */
record ProsePlace(String kind, String name, Origin origin) {
  static ProsePlace of(String inside, Origin origin) {
    String text = inside.strip();
    int blank = text.indexOf(' ');
    return blank < 0
        ? new ProsePlace(text, "", origin)
        : new ProsePlace(text.substring(0, blank), text.substring(blank + 1).strip(), origin);
  }

  /** Whether it is filled with a block rather than with words. */
  boolean isBlock() {
    return kind.equals("table") || kind.equals("figure") || kind.equals("picture");
  }
}
