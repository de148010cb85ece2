package org.hemwright.workbench.traced;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.hemwright.draft.syntax.Quoted;

/** Steps between sizes as a document says them. */
final class StepWords {
  /** Steps that differ by less are one (mm): half of what is written. */
  private static final double ALIKE = 0.005;

  private StepWords() {}

  /**
   * Steps in millimetres, each told where it differs from the one before: {@code 5 mm, then 7 mm
   * from size 22}.
   *
   * @param steps from each size to the next, rounded to hundredths of a millimetre here
   * @param sizes the names of all sizes, one more than there are steps
   * @return empty where nothing moves; a minus in front means that all of it goes the other way
   */
  static String of(List<Double> steps, List<String> sizes) {
    StringBuilder text = new StringBuilder();
    double last = 0;
    boolean back =
        steps.stream().filter(step -> rounded(step).signum() != 0).findFirst().orElse(0.0) < 0;
    boolean moves = false;
    for (int i = 0; i < steps.size(); i++) {
      BigDecimal step = rounded(back ? -steps.get(i) : steps.get(i));
      moves |= step.signum() != 0;
      if (i == 0) {
        text.append(step.toPlainString()).append(" mm");
      } else if (StrictMath.abs(steps.get(i) - last) >= ALIKE) {
        text.append(", then ").append(step.toPlainString()).append(" mm from size ");
        text.append(Quoted.size(sizes.get(i + 1)));
      }
      last = i == 0 || StrictMath.abs(steps.get(i) - last) >= ALIKE ? steps.get(i) : last;
    }
    return moves ? (back ? "-" : "") + text : "";
  }

  private static BigDecimal rounded(double step) {
    BigDecimal rounded = BigDecimal.valueOf(step).setScale(2, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
  }
}
