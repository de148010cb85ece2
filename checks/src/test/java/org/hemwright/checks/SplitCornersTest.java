package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.split.SplitChoice;
import org.hemwright.pattern.split.SplitRun;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A piece with a curved top and a turned hem, cut apart along a line that slants more or less. */
class SplitCornersTest {
  private static final String DOCUMENT =
      """
      language 1
      pattern "Gore"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 8
      fabric main woven "Cotton"
        widths 60 cm, 150 cm
      piece gore "Gore" number 1
        cut 4 of main, mirrored
        point a at 0 cm, 0 cm
        point b from a right waist / 4
        point c from b down 50 cm then right 20 cm
        point d from a down 52 cm
        curve low from d leaving right to c
        curve up_line from a leaving at 10 deg to b
        outline top is up_line, side is b to c, low is low, middle is d to a
        point t1 on up_line at 50% from start
        point l1 on low at SHARE from start
        allowance 1 cm, low 3 cm then 1 cm turned back
        grain along middle
        split in_two is t1 to l1, allowance 1.2 cm into inner, outer
      """;

  private static SizeRun gore(String share) {
    SizeChart chart =
        ChartReader.read(
                "sizes.csv", "size,waist (cm)\n8,66\n20,110\n".getBytes(StandardCharsets.UTF_8))
            .chart()
            .orElseThrow();
    String text = DOCUMENT.replace("SHARE", share);
    Plan plan = Plan.of(DocumentReader.read("pattern.hem", text), chart).plan();
    return plan.evaluate(chart.sizes(), DialSettings.NONE).drawn().run();
  }

  /** Handbook section 3: the ends of a seam are square to it, so that both partners line up. */
  @ParameterizedTest
  @ValueSource(strings = {"25%", "40%", "50%", "65%"})
  void bothPartsEndAlikeWhereverTheLineRuns(String share) {
    SizeRun apart = SplitRun.of(gore(share), List.of(new SplitChoice("gore", "in_two")));
    for (String check :
        List.of("allowance-ends", "allowance-equal", "seam-length", "seam-marks", "hem-flat")) {
      assertThat(Told.by(check, apart)).as(check).isEmpty();
    }
    for (int i = 0; i < apart.sizes().size(); i++) {
      SizedPattern whole = gore(share).sizes().get(i);
      SizedPattern parts = apart.sizes().get(i);
      for (String edge : List.of("top", "low")) {
        assertThat(length(parts, "inner", edge) + length(parts, "outer", edge))
            .isCloseTo(length(whole, "gore", edge), within(1e-6));
      }
      assertThat(length(parts, "inner", "in_two"))
          .isCloseTo(length(parts, "outer", "in_two"), within(1e-9));
    }
  }

  private static double length(SizedPattern sized, String piece, String edge) {
    return sized
        .piece(piece)
        .flatMap(each -> each.edge(edge))
        .map(Edge::path)
        .orElseThrow()
        .length();
  }
}
