package org.hemwright.workroom.history;

/**
 * A change at one place of a text: what stood there gives way to something else.
 *
 * @param file which text: {@code pattern.hem}
 * @param at the offset in the text before the change (UTF-16 units)
 * @param removed what stood there
 * @param inserted what stands there now
 */
public record Splice(String file, int at, String removed, String inserted) {
  public Splice {
    if (at < 0) {
      throw new IllegalArgumentException("a change starts at 0 or later, not at " + at);
    }
  }

  /** The smallest change that makes one text of another. */
  public static Splice between(String file, String before, String after) {
    int most = Math.min(before.length(), after.length());
    int start = 0;
    while (start < most && before.charAt(start) == after.charAt(start)) {
      start++;
    }
    int end = 0;
    while (end < most - start
        && before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
      end++;
    }
    return new Splice(
        file,
        start,
        before.substring(start, before.length() - end),
        after.substring(start, after.length() - end));
  }

  /** The change that takes this one back. */
  public Splice inverse() {
    return new Splice(file, at, inserted, removed);
  }

  /** Whether the text is as this change expects it. */
  public boolean fits(String text) {
    return at + removed.length() <= text.length() && text.startsWith(removed, at);
  }

  /**
   * The text after the change.
   *
   * @throws IllegalArgumentException where the text is not as this change expects it
   */
  public String applyTo(String text) {
    if (!fits(text)) {
      throw new IllegalArgumentException(
          "the text at " + at + " is not what the change takes away");
    }
    return text.substring(0, at) + inserted + text.substring(at + removed.length());
  }

  /** Where an offset of the text before the change lies after it. */
  public int carried(int offset) {
    if (offset < at) {
      return offset;
    }
    return offset >= at + removed.length()
        ? offset - removed.length() + inserted.length()
        : at + inserted.length();
  }
}
