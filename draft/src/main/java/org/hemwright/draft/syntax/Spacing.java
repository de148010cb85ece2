package org.hemwright.draft.syntax;

import java.util.List;

/**
 * How the tokens of a line stand beside each other: one blank between words, none before a comma or
 * a percent sign, none inside brackets, and a sign close to its number.
 */
final class Spacing {
  private final Source source;

  Spacing(Source source) {
    this.source = source;
  }

  /** A run of tokens as it is written. */
  String of(List<Token> tokens) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < tokens.size(); i++) {
      if (i > 0 && apart(tokens, i)) {
        text.append(' ');
      }
      text.append(written(tokens.get(i)));
    }
    return text.toString();
  }

  /** A run of tokens whose gaps are hers: a version, a date. */
  String asGlued(List<Token> tokens) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < tokens.size(); i++) {
      text.append(i > 0 && !tokens.get(i).glued() ? " " : "").append(written(tokens.get(i)));
    }
    return text.toString();
  }

  private String written(Token token) {
    String text = source.text(token.span());
    return token.isNumber() ? text.replaceAll(" +", " ") : text;
  }

  private static boolean apart(List<Token> tokens, int i) {
    Token token = tokens.get(i);
    Token before = tokens.get(i - 1);
    if (token.says(",") || token.says(")") || token.says("%") || before.says("(")) {
      return false;
    }
    if (token.says(".") || before.says(".")) {
      return !token.glued();
    }
    return !(before.says("-") && isSign(tokens, i - 1));
  }

  /** Whether a minus belongs to what follows alone: nothing to take from stands before it. */
  private static boolean isSign(List<Token> tokens, int i) {
    Token minus = tokens.get(i);
    if (i == 0 || !endsNumber(tokens.get(i - 1))) {
      return true;
    }
    return !minus.glued() && i + 1 < tokens.size() && tokens.get(i + 1).glued();
  }

  private static boolean endsNumber(Token token) {
    return token.kind() != Token.Kind.SYMBOL || token.says(")") || token.says("%");
  }
}
