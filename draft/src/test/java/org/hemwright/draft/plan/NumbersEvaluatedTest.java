package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every way to write a number, against arithmetic. */
class NumbersEvaluatedTest {
  /** Size 14: waist 78 cm, hip 104 cm, hip depth 20.2 cm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          12.5 cm                                  | 125
          4 mm                                     | 4
          1 1/4 in                                 | 31.75
          3/8 in                                   | 9.525
          90 deg                                   | 1.5707963267948966
          35%                                      | 0.35
          pi                                       | 3.141592653589793
          -waist                                   | -780
          (hip + 4 cm) / 4                         | 270
          hip - waist                              | 260
          90% of waist                             | 702
          2 * hip_depth + 1 cm                     | 414
          hip / waist                              | 1.3333333333333333
          1 / 84% - 1                              | 0.19047619047619047
          1 + 10%                                  | 1.1
          smaller of waist and hip                 | 780
          larger of waist and 2 * hip_depth        | 780
          sine of 30 deg                           | 0.5
          cosine of 60 deg                         | 0.5
          tangent of 45 deg                        | 1
          hypotenuse of 3 cm and 4 cm              | 50
          other side of 5 cm and 3 cm              | 40
          round waist to 5 cm                      | 800
          round up waist to 5 cm                   | 800
          round down waist to 5 cm                 | 750
          round up 6 cm to 2 cm                    | 60
          round 1/3 in to 1/8 in                   | 9.525
          distance from a to b                     | 500
          across from a to b                       | 300
          rise from b to a                         | -400
          angle from a to c                        | 1.5707963267948966
          length of low                            | 1000
          length of a to b                         | 500
          girth of sheet at b                      | 1000
          1 cm when hip > 110 cm, otherwise 2 cm   | 20
          1 cm when hip at least 104 cm, otherwise 2 cm | 10
          1 cm when hip < 104 cm, 3 cm when waist at most 78 cm, otherwise 2 cm | 30
          1 cm when size from 12 to 16 and hip > 1 cm, otherwise 2 cm | 10
          1 cm when size up to 12, otherwise 2 cm  | 20
          1 cm, then 2 cm from size 14, then 3 cm from size 16 | 20
          """)
  void inSizeFourteen(String rule, double expected) {
    Sketch sketch =
        Sketch.inPiece(
            """
            point a at 0 cm, 0 cm
            point b at 30 cm, 40 cm
            point c at 0 cm, 5 cm
            let it = %s
            """
                .formatted(rule));
    assertThat(sketch.codes()).isEmpty();
    assertThat(sketch.number("it")).isCloseTo(expected, within(1e-9));
  }

  @Test
  void stepsBeginAtTheirSizes() {
    Sketch sketch =
        Sketch.of("let rise = 1 cm, then 1.3 cm from size 18, then 2 cm from size 24\n");
    Map<String, Double> expected =
        Map.of("8", 10.0, "16", 10.0, "18", 13.0, "22", 13.0, "24", 20.0, "26", 20.0);
    expected.forEach((size, rise) -> assertThat(sketch.number(size, "rise")).isEqualTo(rise));
  }

  @Test
  void whatAChoiceDoesNotTakeNeedHaveNoValue() {
    Sketch sketch =
        Sketch.of(
            """
            let sleeve = arm when size up to 12, arm when size from 16 to 24, otherwise 29 cm
            let safe = 1 cm when waist > 0 cm, otherwise waist / 0
            """);
    assertThat(sketch.codes()).isEmpty();
    assertThat(sketch.number("14", "sleeve")).isEqualTo(290);
    assertThat(sketch.number("16", "sleeve")).isEqualTo(300);
  }

  @Test
  void girthsCountAllCutCopiesAndBothHalves() {
    Sketch sketch =
        Sketch.of(
            """
            piece panel "Panel" number 1
              cut 2 of main, on the fold
              point waist_centre at 0 cm, 0 cm
              point waist_side   at 20 cm, 1 cm
              point hip_side     at 25 cm, -20 cm
              point hem_side     at 31 cm, -60 cm
              point hem_centre   at 0 cm, -60 cm
              outline waist is waist_centre to waist_side, upper is waist_side to hip_side,
                lower is hip_side to hem_side, hem is hem_side to hem_centre, centre is straight
              fold centre
              level hip at hip_side
            piece ring "Ring" number 2
              cut 1 of main
              point middle at 0 cm, 0 cm
              point east at 10 cm, 0 cm
              point west at -10 cm, 0 cm
              arc upper about middle from east turning 180 deg
              arc lower about middle from west turning 180 deg
              outline top is upper, base is lower
            let hips = girth of panel at hip
            let hem = girth of panel at hem_centre
            let wide = girth of ring at middle
            """);
    assertThat(sketch.codes()).isEmpty();
    assertThat(sketch.number("14", "hips")).isCloseTo(4 * 250, within(1e-9));
    assertThat(sketch.number("14", "hem")).isCloseTo(4 * 310, within(1e-9));
    assertThat(sketch.number("14", "wide")).isCloseTo(200, within(1e-9));
  }
}
