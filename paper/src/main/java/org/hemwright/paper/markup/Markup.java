package org.hemwright.paper.markup;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Set;

/** Writes well-formed markup, element by element. */
public final class Markup {
  private static final Set<String> VOID = Set.of("meta", "link", "br", "hr", "img");
  private static final Set<String> WITHIN = Set.of("a", "code", "span", "strong", "em");
  private final StringBuilder out = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element; one that can hold nothing is closed at once.
   *
   * @param attributes names and values in turn; an empty value leaves the attribute out
   */
  public Markup open(String element, String... attributes) {
    out.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      if (!attributes[i + 1].isEmpty()) {
        out.append(' ').append(attributes[i]).append("=\"").append(escaped(attributes[i + 1]));
        out.append('"');
      }
    }
    if (VOID.contains(element)) {
      out.append("/>");
    } else {
      out.append('>');
      open.push(element);
    }
    return this;
  }

  /** Closes the innermost element, which must be this. */
  public Markup close(String element) {
    if (!element.equals(open.poll())) {
      throw new IllegalStateException(element + " is not the innermost element");
    }
    out.append("</").append(element).append('>');
    if (!WITHIN.contains(element)) {
      out.append('\n');
    }
    return this;
  }

  /** Text in which what stands between two back ticks is written as code. */
  public Markup prose(String text) {
    String[] parts = text.split("`", -1);
    for (int i = 0; i < parts.length; i++) {
      boolean code = i % 2 == 1 && i + 1 < parts.length;
      if (code) {
        element("code", parts[i]);
      } else {
        text(i % 2 == 1 ? "`" + parts[i] : parts[i]);
      }
    }
    return this;
  }

  /** Text, escaped. */
  public Markup text(String text) {
    out.append(escaped(text));
    return this;
  }

  /** An element that holds text alone. */
  public Markup element(String element, String text, String... attributes) {
    return open(element, attributes).text(text).close(element);
  }

  /** Markup that was written by a writer that escapes, such as a picture or a style sheet. */
  public Markup written(String markup) {
    out.append(markup);
    return this;
  }

  /** What was written. */
  public String whole() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("still open: " + open);
    }
    return out.toString();
  }

  /** Text that may stand anywhere in markup, in a quoted attribute too. */
  public static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 16);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        case '\'' -> safe.append("&#39;");
        default -> safe.append(c < ' ' && c != '\n' && c != '\t' ? ' ' : c);
      }
    }
    return safe.toString();
  }
}
