package org.hemwright.cloth.yardage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Handbook section 5, Rounding; section 10, check values 26 to 28. */
class BuyingLengthTest {
  private static final double YARD = 914.4;

  @Test
  void aLengthIsRoundedUpInEachUnitByItself() {
    // check value 26
    BuyingLength buy = BuyingLength.of(1520);
    assertThat(buy.metres()).isEqualTo(1.6);
    assertThat(buy.yards()).isEqualTo(1.75);
  }

  @Test
  void aLengthThatIsSoldAsItIsIsNotRoundedUp() {
    // check value 27
    assertThat(BuyingLength.of(1500)).isEqualTo(new BuyingLength(15, 14));
    assertThat(BuyingLength.of(45 * 25.4).yards()).isEqualTo(1.25);
  }

  @Test
  void shrinkingClothIsBoughtLonger() {
    // check value 28
    assertThat(3000 / (1 - 0.05)).isCloseTo(3158, org.assertj.core.data.Offset.offset(0.5));
    assertThat(BuyingLength.of(3000 / (1 - 0.05)).metres()).isEqualTo(3.2);
  }

  @Test
  void itIsEnoughAndNoMoreThanOneStepTooMuch() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 2000; i++) {
      double mm = random.nextDouble(1, 12_000);
      BuyingLength buy = BuyingLength.of(mm);
      assertThat(buy.metres() * 1000).isBetween(mm - 0.011, mm + 100);
      assertThat(buy.yards() * YARD).isBetween(mm - 0.011, mm + YARD / 8);
      assertThat(buy.tenths()).isLessThanOrEqualTo(BuyingLength.of(mm + 0.5).tenths());
    }
  }

  @Test
  void aShopCutsNoLessThanOneStep() {
    assertThat(BuyingLength.of(0.001)).isEqualTo(new BuyingLength(1, 1));
    assertThatThrownBy(() -> new BuyingLength(0, 1)).isInstanceOf(IllegalArgumentException.class);
  }
}
