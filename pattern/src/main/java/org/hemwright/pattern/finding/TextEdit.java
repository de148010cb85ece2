package org.hemwright.pattern.finding;

/**
 * A change to a text that would mend a finding: {@code length} UTF-16 units from {@code offset}
 * give way to {@code replacement}.
 */
public record TextEdit(String file, int offset, int length, String replacement) {
  public TextEdit {
    if (offset < 0 || length < 0) {
      throw new IllegalArgumentException("an edit starts at or after 0 and covers 0 or more");
    }
  }

  /**
   * The text after the change.
   *
   * @throws IllegalArgumentException where the text is too short for it
   */
  public String applyTo(String text) {
    if (offset + length > text.length()) {
      throw new IllegalArgumentException("the edit lies beyond the end of the text");
    }
    return text.substring(0, offset) + replacement + text.substring(offset + length);
  }
}
