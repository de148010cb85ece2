package org.hemwright.pattern.make;

import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How much thread a stitch takes for each length sewn, all threads together, by every method that
 * is known (handbook section 7, "Thread per seam length"). Methods disagree, so the answer is a
 * range.
 *
 * @param ratios thread over seam, as measured or published
 * @param formulas by stitch and cloth
 */
public record ThreadUse(List<Ratio> ratios, List<Formula> formulas) {
  private static final double INCH = 25.4;

  public ThreadUse {
    ratios = List.copyOf(ratios);
    formulas = List.copyOf(formulas);
    if (ratios.isEmpty() && formulas.isEmpty()) {
      throw new IllegalArgumentException("there is a method at least");
    }
  }

  /**
   * Thread over seam.
   *
   * @param least 1 or more
   * @param most at or above least
   */
  public record Ratio(double least, double most, Source source) {}

  /**
   * Thread over seam, worked out: {@code constant + width * W * S + thickness * T * S}, where W is
   * the stitch's width, T the cloth's thickness and S the stitches to the inch, all in inches.
   */
  public record Formula(double constant, double width, double thickness, Source source) {
    /**
     * Thread over seam.
     *
     * @param stitchLength (mm)
     * @param stitchWidth (mm)
     * @param clothThickness of all layers (mm)
     */
    public double ratio(double stitchLength, double stitchWidth, double clothThickness) {
      double perInch = INCH / stitchLength;
      return constant
          + width * (stitchWidth / INCH) * perInch
          + thickness * (clothThickness / INCH) * perInch;
    }
  }

  /** Where a method comes from. */
  public enum Source {
    /** Handbook section 7, from the sources that it names. */
    HANDBOOK,
    /** Handbook section 7, where it is marked as from memory. */
    MEMORY,
    /** Worked out from the stitch's shape. */
    GEOMETRY
  }

  /** From least to most thread over seam: metres of thread for each metre sewn, 0 or more. */
  public record Range(double least, double most) {
    public Range {
      if (!(least >= 0 && most >= least)) {
        throw new IllegalArgumentException("a range runs upward from 0");
      }
    }

    /** So much of it. */
    public Range times(double factor) {
      return new Range(least * factor, most * factor);
    }

    /** Both together. */
    public Range plus(Range other) {
      return new Range(least + other.least, most + other.most);
    }

    /** At least this, at most that, where other may take the place of one. */
    public Range or(Range other) {
      return new Range(Math.min(least, other.least), Math.max(most, other.most));
    }
  }

  /**
   * From the least that a method gives to the most.
   *
   * @param stitch with its settings
   * @param clothThickness of all layers (mm)
   */
  public Range ratio(Stitch stitch, double clothThickness) {
    List<Double> worked =
        formulas.stream()
            .map(f -> f.ratio(stitch.lengthOrUsual(), stitch.widthOrUsual(), clothThickness))
            .toList();
    double least =
        DoubleStream.concat(
                ratios.stream().mapToDouble(Ratio::least),
                worked.stream().mapToDouble(Double::doubleValue))
            .min()
            .orElseThrow();
    double most =
        DoubleStream.concat(
                ratios.stream().mapToDouble(Ratio::most),
                worked.stream().mapToDouble(Double::doubleValue))
            .max()
            .orElseThrow();
    return new Range(least, most);
  }

  private static Ratio from(double least, double most, Source source) {
    return new Ratio(least, most, source);
  }

  private static Formula formula(double constant, double width, double thickness) {
    return new Formula(constant, width, thickness, Source.HANDBOOK);
  }

  static ThreadUse of(Stitch.Kind kind) {
    Ratio lock = from(2.5, 2.5, Source.HANDBOOK);
    Ratio zigzag = from(5.5, 5.5, Source.HANDBOOK);
    Formula straight = formula(2, 0, 2);
    return switch (kind) {
      case STRAIGHT, BASTING, BOX -> new ThreadUse(List.of(lock), List.of(straight));
      // The needle goes over each stitch three times.
      case STRETCH ->
          new ThreadUse(
              List.of(from(7.5, 7.5, Source.GEOMETRY)),
              List.of(new Formula(6, 0, 6, Source.GEOMETRY)));
      case ZIGZAG -> new ThreadUse(List.of(zigzag), List.of());
      // Two needle threads as in a lockstitch, and a looper that runs to and fro between them.
      case TWIN_NEEDLE -> new ThreadUse(List.of(from(3.75, 5.5, Source.GEOMETRY)), List.of());
      case OVERLOCK_THREE ->
          new ThreadUse(
              List.of(from(14, 14, Source.MEMORY)), List.of(formula(3, 4, 4), formula(5, 4, 4)));
      case OVERLOCK_FOUR -> new ThreadUse(List.of(from(18, 20, Source.MEMORY)), List.of());
      case COVER -> new ThreadUse(List.of(from(18, 20, Source.MEMORY)), List.of());
      case CHAIN ->
          new ThreadUse(List.of(from(5.4, 5.4, Source.HANDBOOK)), List.of(formula(4, 0, 2)));
      case BLIND_HEM -> new ThreadUse(List.of(from(2.5, 5.5, Source.GEOMETRY)), List.of());
      // The width to and fro at every stitch, above and below.
      case BUTTONHOLE -> new ThreadUse(List.of(from(25, 25, Source.GEOMETRY)), List.of());
      case BACKSTITCH -> new ThreadUse(List.of(from(3, 3, Source.GEOMETRY)), List.of());
      case SLIP_STITCH -> new ThreadUse(List.of(from(1.5, 2, Source.GEOMETRY)), List.of());
      case CATCH_STITCH -> new ThreadUse(List.of(from(2, 3, Source.GEOMETRY)), List.of());
    };
  }
}
