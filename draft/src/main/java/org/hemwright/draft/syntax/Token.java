package org.hemwright.draft.syntax;

/**
 * The smallest thing a line is read in.
 *
 * @param text what it says: a word, a symbol, a number as written, or the words between the quotes
 * @param value a number's value before its unit, else 0
 * @param glued whether no blank stands between it and the token before it
 */
record Token(Kind kind, String text, double value, boolean glued, Span span) {
  /** What a token can be. */
  enum Kind {
    WORD,
    NUMBER,
    TEXT,
    SYMBOL
  }

  /** Whether it is this fixed word or symbol. */
  boolean says(String fixed) {
    return (kind == Kind.WORD || kind == Kind.SYMBOL) && text.equals(fixed);
  }

  /** The same where something before it is taken away. */
  Token afterGap(boolean stillGlued) {
    return new Token(kind, text, value, glued && stillGlued, span);
  }

  boolean isWord() {
    return kind == Kind.WORD;
  }

  boolean isNumber() {
    return kind == Kind.NUMBER;
  }

  /** Whether it is a number without point or fraction. */
  boolean isWhole() {
    return isNumber() && text.chars().allMatch(c -> c >= '0' && c <= '9');
  }
}
