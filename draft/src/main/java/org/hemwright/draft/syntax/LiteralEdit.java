package org.hemwright.draft.syntax;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.hemwright.draft.syntax.Expression.Literal;
import org.hemwright.pattern.finding.TextEdit;

/**
 * A change of one number of the document, written as she would: in the unit that stands there,
 * rounded to that unit's step, a fraction where she writes fractions. All other bytes stay.
 *
 * <p>Steps: 0.5 mm, 0.1 cm, 1/16 in, 0.5 deg, 0.5 %, 0.01 for a plain number; where the number as
 * written is finer (more decimals, or 32nds), its own last place.
 */
public final class LiteralEdit {
  private static final int USUAL_PARTS = 16;
  private static final int MOST_PARTS = 64;

  private LiteralEdit() {}

  /**
   * The edit that gives a literal a new value.
   *
   * @param source the text that the literal was read from
   * @param literal the number to change
   * @param value in millimetres, radians, or as a plain number or share; finite
   */
  public static TextEdit of(Source source, Literal literal, double value) {
    return of(source, literal, literal.unit(), value);
  }

  /**
   * The same, for a 0 that stands without a unit.
   *
   * @param unit the unit to write where the literal has none
   */
  public static TextEdit of(Source source, Literal literal, Unit unit, double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a number of the document is finite, not " + value);
    }
    String written = source.text(literal.span());
    int end = numberEnd(written);
    String number = written.substring(0, end);
    boolean adds = literal.unit() == Unit.NONE && unit != Unit.NONE;
    String unitAdded = !adds ? "" : unit == Unit.PERCENT ? "%" : " " + unit.word();
    Span span = new Span(literal.span().start(), literal.span().start() + end);
    return source.replace(span, spelled(number, unit, value / unit.factor()) + unitAdded);
  }

  /**
   * What a literal is worth once {@link #of} has written a value: the value, rounded to the step of
   * the unit that stands there.
   *
   * @param value in millimetres, radians, or as a plain number or share; finite
   */
  public static double rounded(Source source, Literal literal, double value) {
    String written = source.text(literal.span());
    String number =
        spelled(
            written.substring(0, numberEnd(written)),
            literal.unit(),
            value / literal.unit().factor());
    boolean negative = number.startsWith("-");
    String bare = negative ? number.substring(1) : number;
    double size = NumberText.read(bare, 0, bare.length(), false).value();
    return (negative ? -size : size) * literal.unit().factor();
  }

  /** Where the number ends and its unit, or the blank before it, starts. */
  private static int numberEnd(String written) {
    int end = 0;
    for (int i = 0; i < written.length(); i++) {
      char c = written.charAt(i);
      if ((c >= '0' && c <= '9')) {
        end = i + 1;
      }
    }
    return end;
  }

  private static String spelled(String number, Unit unit, double value) {
    boolean decimals = number.indexOf('.') >= 0;
    boolean fraction = number.indexOf('/') >= 0;
    if (fraction || (unit == Unit.IN && !decimals)) {
      return fraction(value, parts(number));
    }
    BigDecimal step = step(unit);
    if (decimals) {
      step = step.min(BigDecimal.ONE.movePointLeft(number.length() - number.indexOf('.') - 1));
    }
    BigDecimal steps = BigDecimal.valueOf(value).divide(step, 0, RoundingMode.HALF_EVEN);
    return NumberText.decimal(steps.multiply(step).doubleValue());
  }

  private static BigDecimal step(Unit unit) {
    return switch (unit) {
      case MM, DEG, PERCENT -> new BigDecimal("0.5");
      case CM -> new BigDecimal("0.1");
      case IN -> new BigDecimal("0.05");
      case NONE -> new BigDecimal("0.01");
    };
  }

  /** Into how many parts the whole is cut: 16, or as many as she wrote where that is finer. */
  private static int parts(String number) {
    int bar = number.indexOf('/');
    if (bar < 0) {
      return USUAL_PARTS;
    }
    double written = Double.parseDouble(number.substring(bar + 1));
    boolean finer = written > USUAL_PARTS && written <= MOST_PARTS;
    boolean other = USUAL_PARTS % written != 0;
    return (finer || other) && written <= MOST_PARTS ? (int) written : USUAL_PARTS;
  }

  private static String fraction(double value, int parts) {
    long all = Math.round(Math.abs(value) * parts);
    long whole = all / parts;
    long rest = all % parts;
    String sign = value < 0 && all > 0 ? "-" : "";
    if (rest == 0) {
      return sign + whole;
    }
    long common = greatestCommonDivisor(rest, parts);
    String fraction = rest / common + "/" + parts / common;
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }

  private static long greatestCommonDivisor(long a, long b) {
    return b == 0 ? a : greatestCommonDivisor(b, a % b);
  }
}
