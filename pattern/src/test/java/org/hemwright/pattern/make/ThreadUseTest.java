package org.hemwright.pattern.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hemwright.pattern.make.ThreadUse.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Handbook section 10, values 35 to 38, and how methods that disagree become a range. */
class ThreadUseTest {
  private static final double INCH = 25.4;

  /** Value 35: 301 over 220 cm at 2.5 is 550 cm. */
  @Test
  void lockstitchByItsRatio() {
    double ratio = Stitch.Kind.STRAIGHT.thread().ratios().get(0).most();
    assertThat(220 * ratio).isCloseTo(550, within(1e-9));
  }

  /** Value 36: 401 over 100 cm, factors 1.3 and 4.1: 540 cm, 621 cm with 15 % waste. */
  @Test
  void chainStitchAsMeasured() {
    Range one = new Range(5.4, 5.4).times(100);
    assertThat(Stitch.Kind.CHAIN.thread().ratios().get(0).most())
        .isCloseTo(1.3 + 4.1, within(1e-9));
    assertThat(one.most()).isCloseTo(540, within(1e-9));
    assertThat(one.times(1.15).most()).isCloseTo(621, within(1e-9));
  }

  /** Value 37: 301 at T 0.01 in and 10 stitches to the inch takes 2.2 in for an inch. */
  @Test
  void lockstitchByItsFormula() {
    ThreadUse.Formula formula = Stitch.Kind.STRAIGHT.thread().formulas().get(0);
    assertThat(formula.ratio(INCH / 10, 0, 0.01 * INCH)).isCloseTo(2.2, within(1e-9));
  }

  /** Handbook section 7: for 504 two published formulas disagree; neither is shown as exact. */
  @Test
  void overlockIsARangeOverBothFormulasAndTheRatio() {
    Stitch stitch = Stitch.of(Stitch.Kind.OVERLOCK_THREE);
    ThreadUse use = stitch.kind().thread();
    assertThat(use.formulas()).hasSize(2);
    Range range = use.ratio(stitch, 1);
    double s = INCH / 2.5;
    double first = 3 + 4 * (5 / INCH) * s + 4 * (1 / INCH) * s;
    double second = 5 + 4 * s * (5 / INCH + 1 / INCH);
    assertThat(range.least()).isCloseTo(Math.min(first, 14), within(1e-9));
    assertThat(range.most()).isCloseTo(Math.max(second, 14), within(1e-9));
    assertThat(range.most() - range.least()).isGreaterThan(1);
  }

  @ParameterizedTest
  @EnumSource
  void everyStitchTakesMoreThreadThanItsSeamIsLong(Stitch.Kind kind) {
    Range thin = kind.thread().ratio(Stitch.of(kind), 0.2);
    Range thick = kind.thread().ratio(Stitch.of(kind), 3);
    assertThat(thin.least()).isGreaterThan(1);
    assertThat(thick.most()).isGreaterThanOrEqualTo(thin.most());
  }

  /** ISO 4915 numbers as handbook section 7 confirms them; the others stay blank. */
  @Test
  void classesAreGivenWhereConfirmedOnly() {
    assertThat(Stitch.Kind.STRAIGHT.iso4915()).contains("301");
    assertThat(Stitch.Kind.ZIGZAG.iso4915()).contains("304");
    assertThat(Stitch.Kind.CHAIN.iso4915()).contains("401");
    assertThat(Stitch.Kind.OVERLOCK_THREE.iso4915()).contains("504");
    assertThat(Stitch.Kind.OVERLOCK_FOUR.iso4915()).contains("514");
    assertThat(Stitch.Kind.COVER.iso4915()).contains("406");
    assertThat(Stitch.Kind.STRETCH.iso4915()).isEmpty();
    assertThat(Stitch.Kind.TWIN_NEEDLE.iso4915()).isEmpty();
    assertThat(Stitch.Kind.BLIND_HEM.iso4915()).isEmpty();
  }

  /** Needle sizes of handbook section 7: 70/10 and 90/14. */
  @Test
  void needlesAreLabelledInBothNumbers() {
    assertThat(Needle.label(70)).isEqualTo("70/10");
    assertThat(Needle.label(90)).isEqualTo("90/14");
    assertThat(Needle.label(85)).isEqualTo("85");
  }
}
