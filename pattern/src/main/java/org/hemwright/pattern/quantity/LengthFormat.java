package org.hemwright.pattern.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lengths as the maker and the designer read them: {@code 62.5 cm · 24 5/8 in}.
 *
 * @param edition which units, and which first
 * @param typographic whether fractions are written with the fraction slash (U+2044), which fonts
 *     set as a fraction, in place of the plain bar
 * @param rounding how finely each kind is shown
 */
public record LengthFormat(Edition edition, boolean typographic, LengthRounding rounding) {
  /** Between the two units. */
  private static final String BETWEEN = " \u00b7 ";

  /** Which units are shown, and which first. */
  public enum Edition {
    METRIC_FIRST,
    INCHES_FIRST,
    METRIC_ONLY,
    INCHES_ONLY
  }

  /** An edition with plain bars and the handbook's rounding. */
  public static LengthFormat of(Edition edition) {
    return new LengthFormat(edition, false, LengthRounding.HANDBOOK);
  }

  /** The same with fractions written to be set as fractions. */
  public LengthFormat withTypographicFractions() {
    return new LengthFormat(edition, true, rounding);
  }

  /**
   * The text of a length (mm). What is too small for the parts of an inch that are shown, stands in
   * millimetres alone.
   */
  public String text(double mm, LengthKind kind) {
    StringBuilder text = new StringBuilder();
    for (LengthPart part : parts(mm, kind)) {
      if (part instanceof LengthPart.Words words) {
        text.append(words.text());
      } else if (part instanceof LengthPart.Fraction fraction) {
        text.append(fraction.numerator())
            .append(typographic ? '\u2044' : '/')
            .append(fraction.denominator());
      }
    }
    return text.toString();
  }

  /**
   * The text of all lengths between two (mm), each unit told once: {@code 1/2 to 1 in · 12.7 to
   * 25.4 mm}. Where the shorter is too small for the parts of an inch, metric alone.
   */
  public String range(double least, double most, LengthKind kind) {
    String from = text(least, kind);
    String to = text(most, kind);
    if (from.equals(to)) {
      return from;
    }
    if (edition == Edition.METRIC_ONLY || edition == Edition.INCHES_ONLY) {
      return from + " to " + to;
    }
    if (!from.contains(BETWEEN) || !to.contains(BETWEEN)) {
      LengthFormat metric = new LengthFormat(Edition.METRIC_ONLY, typographic, rounding);
      return joined(metric.text(least, kind), metric.text(most, kind));
    }
    int ends = from.indexOf(BETWEEN);
    int ended = to.indexOf(BETWEEN);
    return joined(from.substring(0, ends), to.substring(0, ended))
        + BETWEEN
        + joined(from.substring(ends + BETWEEN.length()), to.substring(ended + BETWEEN.length()));
  }

  private static String joined(String least, String most) {
    if (least.equals(most)) {
      return least;
    }
    int unit = least.lastIndexOf(' ');
    boolean same = most.endsWith(least.substring(unit));
    return (same ? least.substring(0, unit) : least) + " to " + most;
  }

  /** The parts of a length's text (mm), in order. */
  public List<LengthPart> parts(double mm, LengthKind kind) {
    Optional<LengthRounding.Partners> pair = rounding.partners(Math.abs(mm), kind);
    double sign = mm < 0 ? -1 : 1;
    double metric = pair.map(LengthRounding.Partners::mm).map(size -> sign * size).orElse(mm);
    double inches = pair.map(LengthRounding.Partners::inchesInMm).map(s -> sign * s).orElse(mm);
    List<LengthPart> parts = new ArrayList<>();
    boolean tooSmall = mm != 0 && inchCount(inches, kind) == 0;
    Edition shown = tooSmall && edition != Edition.INCHES_ONLY ? Edition.METRIC_ONLY : edition;
    switch (shown) {
      case METRIC_ONLY -> addMetric(parts, metric, kind);
      case INCHES_ONLY -> addInches(parts, inches, kind);
      case METRIC_FIRST -> {
        addMetric(parts, metric, kind);
        parts.add(new LengthPart.Words(BETWEEN));
        addInches(parts, inches, kind);
      }
      case INCHES_FIRST -> {
        addInches(parts, inches, kind);
        parts.add(new LengthPart.Words(BETWEEN));
        addMetric(parts, metric, kind);
      }
    }
    return List.copyOf(parts);
  }

  private void addMetric(List<LengthPart> parts, double mm, LengthKind kind) {
    LengthRounding.Step step = rounding.step(kind);
    double rounded = Math.round(Math.abs(mm) / step.mm()) * step.mm() * (mm < 0 ? -1 : 1);
    boolean small = Math.abs(rounded) < step.millimetresBelow();
    parts.add(
        new LengthPart.Words(
            small ? DecimalText.of(rounded, 3) + " mm" : DecimalText.of(rounded / 10, 4) + " cm"));
  }

  private long inchCount(double mm, LengthKind kind) {
    return Math.round(Math.abs(mm) / LengthUnit.INCHES.mm() * rounding.step(kind).inchParts());
  }

  private void addInches(List<LengthPart> parts, double mm, LengthKind kind) {
    int divisions = rounding.step(kind).inchParts();
    long count = inchCount(mm, kind);
    long whole = count / divisions;
    int rest = (int) (count % divisions);
    String sign = mm < 0 && count > 0 ? "\u2212" : "";
    if (rest == 0) {
      parts.add(new LengthPart.Words(sign + whole + " in"));
      return;
    }
    String before = sign + (whole == 0 ? "" : whole + " ");
    if (!before.isEmpty()) {
      parts.add(new LengthPart.Words(before));
    }
    int common = Integer.lowestOneBit(rest);
    parts.add(new LengthPart.Fraction(rest / common, divisions / common));
    parts.add(new LengthPart.Words(" in"));
  }
}
