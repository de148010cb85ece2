package org.hemwright.pattern.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Handbook section 10, check values 1 to 3. */
class StretchTestTest {
  private static double share(double rest, double stretched) {
    return new StretchTest(rest, stretched, OptionalDouble.empty()).stretch();
  }

  /** Check value 1: a knit of 4 in stretches to 5.4 in: 35.0 %. */
  @Test
  void fourInchesToFiveAndFourTenths() {
    assertThat(share(4 * 25.4, 5.4 * 25.4)).isCloseTo(0.35, within(1e-9));
  }

  /** Check value 2: 10 cm to 15 across, to 13 along; 10 in to 14 in: 50 %, 30 %, 40 %. */
  @Test
  void acrossAndAlong() {
    assertThat(share(100, 150)).isCloseTo(0.50, within(1e-9));
    assertThat(share(100, 130)).isCloseTo(0.30, within(1e-9));
    assertThat(share(254, 14 * 25.4)).isCloseTo(0.40, within(1e-9));
  }

  /** Check value 3: 10 cm, stretched 15, rests at 10.5: recovery 90 %, growth 5 %. */
  @Test
  void whatItGivesBack() {
    StretchTest test = new StretchTest(100, 150, OptionalDouble.of(105));
    assertThat(test.recovery().getAsDouble()).isCloseTo(0.90, within(1e-9));
    assertThat(test.growth().getAsDouble()).isCloseTo(0.05, within(1e-9));
  }

  @Test
  void clothIsPulledLongerThanItWas() {
    assertThatThrownBy(() -> share(100, 90)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new StretchTest(100, 150, OptionalDouble.of(160)))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
