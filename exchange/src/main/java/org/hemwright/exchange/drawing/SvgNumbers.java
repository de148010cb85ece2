package org.hemwright.exchange.drawing;

import java.util.OptionalDouble;

/**
 * Reads numbers one after another, as path data and transforms write them: blanks or a comma
 * between them, or nothing where a sign or a second point starts the next.
 */
final class SvgNumbers {
  private final String text;
  private int at;

  SvgNumbers(String text) {
    this.text = text;
  }

  boolean atEnd() {
    skip();
    return at >= text.length();
  }

  int at() {
    return at;
  }

  private void skip() {
    while (at < text.length() && (text.charAt(at) <= ' ' || text.charAt(at) == ',')) {
      at++;
    }
  }

  /** The letter that stands here, taken; nothing where a number or the end does. */
  char letter() {
    skip();
    if (at < text.length() && Character.isLetter(text.charAt(at))) {
      return text.charAt(at++);
    }
    return 0;
  }

  /** Whether a number stands here. */
  boolean hasNumber() {
    skip();
    return at < text.length() && "+-.0123456789".indexOf(text.charAt(at)) >= 0;
  }

  /** A number, if one stands here. */
  OptionalDouble number() {
    skip();
    int start = at;
    sign();
    int digits = digits();
    if (at < text.length() && text.charAt(at) == '.') {
      at++;
      digits += digits();
    }
    if (digits == 0) {
      at = start;
      return OptionalDouble.empty();
    }
    int beforeExponent = at;
    if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
      at++;
      sign();
      if (digits() == 0) {
        at = beforeExponent;
      }
    }
    double value = Double.parseDouble(text.substring(start, at));
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }

  /** A flag of an arc: one digit, 0 or 1. */
  OptionalDouble flag() {
    skip();
    if (at < text.length() && (text.charAt(at) == '0' || text.charAt(at) == '1')) {
      return OptionalDouble.of(text.charAt(at++) - '0');
    }
    return OptionalDouble.empty();
  }

  private void sign() {
    if (at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-')) {
      at++;
    }
  }

  private int digits() {
    int start = at;
    while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
      at++;
    }
    return at - start;
  }
}
