package org.hemwright.pattern.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hemwright.pattern.quantity.Quantity;
import org.junit.jupiter.api.Test;

class FindingOrderTest {
  private static final FindingOrder ORDER = new FindingOrder(List.of("8", "10", "12", "14"));

  private static Finding inseam(Status status, String size, double gap) {
    return Finding.fail("seam-length", "seam inseam")
        .at(new Origin("pattern.hem", 40, 1))
        .sizes(List.of(size))
        .with("by", Argument.mm(gap))
        .values(700 + gap, 700, "mm")
        .build()
        .as(status);
  }

  @Test
  void tellsOneCauseOnceWithItsSizesInTheChartsOrder() {
    List<Finding> told =
        ORDER.of(
            List.of(
                inseam(Status.FAIL, "14", 4),
                inseam(Status.WARN, "8", 1.5),
                inseam(Status.WARN, "12", 2)));
    assertThat(told).hasSize(1);
    Finding finding = told.get(0);
    assertThat(finding.status()).isEqualTo(Status.FAIL);
    assertThat(finding.sizes()).containsExactly("8", "12", "14");
    assertThat(finding.found()).isEqualTo(OptionalDouble.of(704));
    assertThat(finding.arguments().get("by"))
        .isEqualTo(new Argument.Range(Quantity.length(1.5), Quantity.length(4)));
    Wording wording =
        Wording.of(new Messages(Map.of("seam-length.message", "{subject} is {by} out in {sizes}.")))
            .overSizes(ORDER.chart());
    assertThat(wording.message(finding))
        .isEqualTo("seam inseam is 1.5 mm to 4 mm out in sizes 8, 12 and 14.");
  }

  @Test
  void keepsCausesApartByPlaceSubjectAndWords() {
    Finding elsewhere =
        Finding.fail("seam-length", "seam inseam").at(new Origin("pattern.hem", 7, 1)).build();
    Finding other = Finding.warn("grain", "front").at(new Origin("pattern.hem", 40, 1)).build();
    Finding placeless = Finding.fail("chart", "hip").build();
    Finding named = Finding.warn("grain", "back").with("edge", "a").build();
    Finding renamed = Finding.warn("grain", "back").with("edge", "b").build();
    List<Finding> told =
        ORDER.of(List.of(placeless, named, renamed, other, inseam(Status.FAIL, "8", 4), elsewhere));
    assertThat(told)
        .containsExactly(elsewhere, inseam(Status.FAIL, "8", 4), other, placeless, named, renamed);
  }

  @Test
  void whatHoldsWhateverTheSizeSwallowsTheSizes() {
    Finding always = inseam(Status.FAIL, "8", 4).in(List.of());
    assertThat(ORDER.of(List.of(inseam(Status.FAIL, "10", 4), always)).get(0).sizes()).isEmpty();
  }

  @Test
  void aNameThatIsNearIsFound() {
    List<String> known = List.of("side", "waist", "hem", "side_hip");
    assertThat(NearName.to("sdie", known)).contains("side");
    assertThat(NearName.to("Waist", known)).contains("waist");
    assertThat(NearName.to("side_hips", known)).contains("side_hip");
    assertThat(NearName.to("collar", known)).isEmpty();
    assertThat(NearName.to("x", known)).isEmpty();
  }
}
