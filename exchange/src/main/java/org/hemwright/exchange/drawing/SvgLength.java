package org.hemwright.exchange.drawing;

import java.util.Optional;
import java.util.OptionalDouble;

/** Lengths with units, as CSS has them: 96 pixels to the inch (CSS Values and Units, 5.2). */
final class SvgLength {
  static final double MM_PER_PIXEL = 25.4 / 96;

  private SvgLength() {}

  /**
   * In user units (pixels).
   *
   * @param whole what a percentage is of
   */
  static OptionalDouble pixels(String text, double whole) {
    SvgNumbers numbers = new SvgNumbers(text);
    OptionalDouble number = numbers.number();
    if (number.isEmpty()) {
      return number;
    }
    String unit = text.strip().substring(Math.min(text.strip().length(), numbers.at())).strip();
    double value = number.getAsDouble();
    return switch (unit) {
      case "", "px" -> OptionalDouble.of(value);
      case "mm" -> OptionalDouble.of(value / MM_PER_PIXEL);
      case "cm" -> OptionalDouble.of(value * 10 / MM_PER_PIXEL);
      case "Q", "q" -> OptionalDouble.of(value / 4 / MM_PER_PIXEL);
      case "in" -> OptionalDouble.of(value * 96);
      case "pt" -> OptionalDouble.of(value * 96 / 72);
      case "pc" -> OptionalDouble.of(value * 16);
      case "em" -> OptionalDouble.of(value * 16);
      case "%" -> OptionalDouble.of(value / 100 * whole);
      default -> OptionalDouble.empty();
    };
  }

  /** Whether a length says a unit of the real world. */
  static boolean isReal(String text) {
    return text.matches(".*(mm|cm|Q|in|pt|pc)\\s*");
  }

  /**
   * A length of an element (px).
   *
   * @param whole what percentages are of
   * @param otherwise where it is not said
   * @throws DrawingRefused where it cannot be read
   */
  static double of(String file, SvgElement element, String name, double whole, double otherwise) {
    Optional<String> text = element.attribute(name).filter(said -> !said.equals("auto"));
    if (text.isEmpty()) {
      return otherwise;
    }
    OptionalDouble value = pixels(text.get(), whole);
    if (value.isEmpty()) {
      throw refused(file, element, text.get());
    }
    return value.getAsDouble();
  }

  /** A length that cannot be read. */
  static DrawingRefused refused(String file, SvgElement element, String text) {
    return new DrawingRefused("drawing-length", file, element.origin())
        .with("read", SvgNames.shortened(text));
  }
}
