package org.hemwright.pattern.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hemwright.pattern.quantity.LengthFormat.Edition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthTest {
  private static final LengthFormat BOTH = LengthFormat.of(Edition.METRIC_FIRST);

  private static double mm(String text) {
    return Length.read(text) instanceof Reading.Read<Length> read ? read.value().mm() : Double.NaN;
  }

  private static Reading.Reason reason(String text) {
    assertThat(Length.read(text)).isInstanceOf(Reading.Unread.class);
    return ((Reading.Unread<Length>) Length.read(text)).reason();
  }

  /** Inches are 25.4 mm by definition (international yard and pound agreement, 1959). */
  @ParameterizedTest
  @CsvSource({
    "12.5 cm, 125",
    "12.5cm, 125",
    "3/4 in, 19.05",
    "1 1/4 in, 31.75",
    "1 1⁄4 in, 31.75",
    "4 mm, 4",
    ".5 in, 12.7",
    "0, 0",
    "-2 cm, -20",
    "−2 cm, -20",
    "36 1/4 IN, 920.75"
  })
  void readsWhatAPersonTypes(String text, double expected) {
    assertThat(mm(text)).isCloseTo(expected, within(1e-9));
  }

  @Test
  void saysWhyItCannotRead() {
    assertThat(reason("")).isEqualTo(Reading.Reason.NOTHING);
    assertThat(reason("12,5 cm")).isEqualTo(Reading.Reason.DECIMAL_COMMA);
    assertThat(reason("12.5")).isEqualTo(Reading.Reason.UNIT_MISSING);
    assertThat(reason("12.5 ft")).isEqualTo(Reading.Reason.UNIT_UNKNOWN);
    assertThat(reason("3/0 in")).isEqualTo(Reading.Reason.ZERO_BELOW_BAR);
    assertThat(reason("1 3 / 4 in")).isEqualTo(Reading.Reason.NO_NUMBER);
    assertThat(reason("wide")).isEqualTo(Reading.Reason.NO_NUMBER);
    assertThat(reason("1" + "0".repeat(400) + " cm")).isIn((Object[]) Reading.Reason.values());
    assertThat(((Reading.Unread<Length>) Length.read("12.5 ft")).text()).isEqualTo("ft");
  }

  /** Inches by the definition above; 1/64 in is the least that thirty-seconds round up to. */
  @Test
  void aRangeTellsEachUnitOnce() {
    LengthFormat inches = LengthFormat.of(Edition.INCHES_FIRST);
    assertThat(inches.range(12.7, 25.4, LengthKind.DIFFERENCE))
        .isEqualTo("1/2 to 1 in \u00b7 12.7 to 25.4 mm");
    assertThat(inches.range(50.8, 254, LengthKind.DIFFERENCE))
        .isEqualTo("2 to 10 in \u00b7 50.8 mm to 25.4 cm");
    assertThat(inches.range(25.3, 25.4, LengthKind.DIFFERENCE))
        .isEqualTo("1 in \u00b7 25.3 to 25.4 mm");
    assertThat(inches.range(0.1, 12.7, LengthKind.DIFFERENCE)).isEqualTo("0.1 to 12.7 mm");
    assertThat(inches.range(25.4, 25.4, LengthKind.DIFFERENCE)).isEqualTo("1 in \u00b7 25.4 mm");
    assertThat(LengthFormat.of(Edition.METRIC_ONLY).range(10, 20, LengthKind.DIFFERENCE))
        .isEqualTo("10 mm to 20 mm");
  }

  @Test
  void takesTheUnitOfAHeading() {
    assertThat(Length.read("38 3/4", LengthUnit.INCHES))
        .isEqualTo(new Reading.Read<>(new Length(38.75 * 25.4)));
    assertThat(Length.read("38 cm", LengthUnit.INCHES))
        .isEqualTo(new Reading.Read<>(new Length(380)));
  }

  /** The pair that look.md and design.md set as the model. */
  @Test
  void showsBothUnits() {
    assertThat(BOTH.text(625, LengthKind.FINISHED)).isEqualTo("62.5 cm · 24 5/8 in");
    assertThat(LengthFormat.of(Edition.INCHES_FIRST).text(625, LengthKind.BODY))
        .isEqualTo("24 5/8 in · 62.5 cm");
    assertThat(LengthFormat.of(Edition.METRIC_ONLY).text(625, LengthKind.BODY))
        .isEqualTo("62.5 cm");
    assertThat(LengthFormat.of(Edition.INCHES_ONLY).text(625, LengthKind.BODY))
        .isEqualTo("24 5/8 in");
  }

  /** Handbook, introduction: pairs are nominal; design, "Numbers": 3 cm · 1 1/4 in elastic. */
  @ParameterizedTest
  @CsvSource({
    "6, 6 mm · 1/4 in",
    "10, 1 cm · 3/8 in",
    "13, 1.3 cm · 1/2 in",
    "15, 1.5 cm · 5/8 in",
    "30, 3 cm · 1 1/4 in",
    "6.35, 6 mm · 1/4 in",
    "9.525, 1 cm · 3/8 in",
    "12.7, 1.3 cm · 1/2 in",
    "15.875, 1.5 cm · 5/8 in",
    "31.75, 3 cm · 1 1/4 in"
  })
  void showsAllowancesByTheirNominalPartner(double mm, String expected) {
    assertThat(BOTH.text(mm, LengthKind.ALLOWANCE)).isEqualTo(expected);
    assertThat(BOTH.text(mm, LengthKind.NOTION)).isEqualTo(expected);
  }

  /** A nominal pair never lies further apart than a pin's breadth or two: 2 mm. */
  @Test
  void nominalPartnersAreNear() {
    for (LengthRounding.Partners pair : LengthRounding.HANDBOOK.partners()) {
      assertThat(pair.inchesInMm()).isCloseTo(pair.mm(), within(2.0));
    }
  }

  @Test
  void showsDifferencesFinely() {
    LengthFormat metric = LengthFormat.of(Edition.METRIC_ONLY);
    assertThat(metric.text(4, LengthKind.DIFFERENCE)).isEqualTo("4 mm");
    assertThat(metric.text(-2.54, LengthKind.DIFFERENCE)).isEqualTo("−2.5 mm");
    assertThat(metric.text(99.96, LengthKind.DIFFERENCE)).isEqualTo("10 cm");
    assertThat(metric.text(0.04, LengthKind.DIFFERENCE)).isEqualTo("0 mm");
    assertThat(BOTH.text(-3.175, LengthKind.DIFFERENCE)).isEqualTo("−3.2 mm · −1/8 in");
  }

  @Test
  void givesFractionsAsData() {
    LengthFormat inches = LengthFormat.of(Edition.INCHES_ONLY);
    assertThat(inches.parts(31.75, LengthKind.FINISHED))
        .containsExactly(
            new LengthPart.Words("1 "), new LengthPart.Fraction(1, 4), new LengthPart.Words(" in"));
    assertThat(inches.withTypographicFractions().text(31.75, LengthKind.FINISHED))
        .isEqualTo("1 1⁄4 in");
  }

  /** What is shown reads back to within half a step of its kind, and shows the same again. */
  @Test
  void readsBackWhatItShows() {
    Random random = new Random(20261125);
    for (int i = 0; i < 4000; i++) {
      double mm = (random.nextDouble() - 0.2) * 2000;
      for (LengthKind kind : new LengthKind[] {LengthKind.BODY, LengthKind.DIFFERENCE}) {
        LengthRounding.Step step = LengthRounding.HANDBOOK.step(kind);
        String metric = LengthFormat.of(Edition.METRIC_ONLY).text(mm, kind);
        assertThat(mm(metric)).isCloseTo(mm, within(step.mm() / 2 + 1e-9));
        assertThat(LengthFormat.of(Edition.METRIC_ONLY).text(mm(metric), kind)).isEqualTo(metric);
        for (boolean typographic : new boolean[] {false, true}) {
          LengthFormat inches =
              new LengthFormat(Edition.INCHES_ONLY, typographic, LengthRounding.HANDBOOK);
          String text = inches.text(mm, kind);
          assertThat(mm(text)).isCloseTo(mm, within(12.7 / step.inchParts() + 1e-9));
          assertThat(inches.text(mm(text), kind)).isEqualTo(text);
        }
      }
    }
  }

  @Test
  void showsAngles() {
    assertThat(new Angle(-7.25 * Math.PI / 180).text(1)).isEqualTo("−7.3°");
  }
}
