package org.hemwright.exchange.chart;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.exchange.table.Table;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * A measurement's heading, {@code Hip depth (cm)}: the name that the document uses, {@code
 * hip_depth}, and the unit that its numbers are in.
 *
 * @param name lower case, blanks and hyphens as {@code _}, without the unit
 * @param unit as written in the round brackets
 */
record ChartHeading(String name, Unit unit) {
  private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*\\(([^()]*)\\)");
  private static final Pattern A_NAME = Pattern.compile("\\p{L}[\\p{L}\\p{N}_]*");

  /** The units that a chart may give. */
  enum Unit {
    MILLIMETRES("mm", "millimetres", QuantityKind.LENGTH, 1),
    CENTIMETRES("cm", "centimetres", QuantityKind.LENGTH, 10),
    INCHES("in", "inches", QuantityKind.LENGTH, 25.4),
    DEGREES("deg", "degrees", QuantityKind.ANGLE, Math.PI / 180),
    PERCENT("%", "percent", QuantityKind.RATIO, 0.01),
    NUMBER("number", "plain numbers", QuantityKind.NUMBER, 1);

    private final String word;
    private final String words;
    private final QuantityKind kind;
    private final double scale;

    Unit(String word, String words, QuantityKind kind, double scale) {
      this.word = word;
      this.words = words;
      this.kind = kind;
      this.scale = scale;
    }

    String word() {
      return word;
    }

    /** The unit spelled out, as in a sentence. */
    String words() {
      return words;
    }

    QuantityKind kind() {
      return kind;
    }

    /** A number in this unit as the program holds it: mm, radians, a share or itself. */
    double held(double number) {
      return this == PERCENT ? number / 100 : number * scale;
    }

    /** Whether a unit written after a number is this one. */
    boolean written(String after) {
      return after.equals(word) || (this == INCHES && (after.equals("\"") || after.equals("″")));
    }

    static Optional<Unit> of(String word) {
      return Arrays.stream(values()).filter(unit -> unit.word.equals(word)).findFirst();
    }
  }

  /** Whether a text ends in a unit that charts use. */
  static boolean hasUnit(String text) {
    Matcher parts = WITH_UNIT.matcher(text);
    return parts.matches() && unit(parts.group(2)).isPresent();
  }

  /**
   * Reads a heading, telling what is amiss with it.
   *
   * @param entry not blank
   */
  static Optional<ChartHeading> read(Table.Entry entry, ChartProblems problems) {
    Matcher parts = WITH_UNIT.matcher(entry.text());
    if (!parts.matches()) {
      problems.add(problems.at("chart-unit-missing", entry.text(), entry));
      return Optional.empty();
    }
    Optional<Unit> unit = unit(parts.group(2));
    if (unit.isEmpty()) {
      problems.add(
          problems
              .at("chart-unit-unknown", entry.text(), entry)
              .with("unit", ChartProblems.shortened(parts.group(2)))
              .with("better", parts.group(1) + " (" + nearest(parts.group(2)).word() + ")"));
      return Optional.empty();
    }
    String name =
        parts
            .group(1)
            .strip()
            .toLowerCase(Locale.ROOT)
            .replaceAll("[\\s\u00a0\u2010-\u2013-]+", "_");
    if (!A_NAME.matcher(name).matches()) {
      problems.add(
          problems
              .at("chart-heading-name", entry.text(), entry)
              .with("better", better(name) + " (" + unit.get().word() + ")"));
      return Optional.empty();
    }
    return Optional.of(new ChartHeading(name, unit.get()));
  }

  private static Optional<Unit> unit(String word) {
    return Unit.of(word.strip().toLowerCase(Locale.ROOT));
  }

  /** The unit that was most likely meant by a word that is none. */
  private static Unit nearest(String word) {
    String lower = word.strip().toLowerCase(Locale.ROOT);
    if (lower.startsWith("mil")) {
      return Unit.MILLIMETRES;
    }
    if (lower.startsWith("i") || lower.contains("\"") || lower.contains("″")) {
      return Unit.INCHES;
    }
    if (lower.startsWith("d") || lower.contains("°")) {
      return Unit.DEGREES;
    }
    if (lower.startsWith("p")) {
      return Unit.PERCENT;
    }
    return Unit.CENTIMETRES;
  }

  /** The nearest name to a text that is none: stray signs left out, leading digits put last. */
  private static String better(String name) {
    String kept = name.replaceAll("[^\\p{L}\\p{N}_]+", "").replaceAll("^_+", "");
    String turned =
        kept.replaceAll("^(\\p{N}[^_]*)_(.+)$", "$2_$1").replaceAll("^(\\p{N}+)(.+)$", "$2$1");
    return A_NAME.matcher(turned).matches() ? turned : "hip";
  }
}
