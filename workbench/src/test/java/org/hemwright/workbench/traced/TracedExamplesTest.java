package org.hemwright.workbench.traced;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A traced and rule-graded copy of each example is the drafted one: within 0.1 mm at corners and
 * 0.3 mm along curves, in every size, as issue 7 asks.
 */
class TracedExamplesTest {
  private static final double AT_CORNERS = 0.1;
  private static final double ALONG_CURVES = 0.3;

  @ParameterizedTest
  @CsvSource({
    "eddy-skirt, -1, PLAIN, 25",
    "marram-trousers, -1, LAYERS, 25",
    "inlet-tee, 12, LOOSE, 25",
    // The back facing of the last size is drawn of other curves, and so traced on its own.
    "brackish-skirt, 20, CLASSES, 25",
    // Its armholes bend more from size to size, and take control points closer together.
    "shingle-shirt, -1, SYMBOLS, 15"
  })
  void aRuleGradedCopyIsTheDraftedOne(
      String example, int breakAt, SvgDialect dialect, double apart) {
    SizeRun drafted = Examples.run(example);
    List<Integer> breaks = breakAt < 0 ? List.of() : List.of(breakAt);
    TracedCopy copy = new TracedCopy(drafted, dialect, apart).make(breaks);
    Drafted traced =
        Drafting.draft("pattern.hem", copy.document(), drafted.pattern().chart(), copy.inputs());
    assertThat(traced.findings()).isEmpty();
    int compared = 0;
    for (String name : copy.ranges().keySet()) {
      for (Size size : copy.ranges().get(name)) {
        Piece own =
            traced.run().orElseThrow().size(size.name()).orElseThrow().piece(name).orElseThrow();
        String plain = name.substring(0, name.lastIndexOf('_'));
        Piece truth = drafted.size(size.name()).orElseThrow().piece(plain).orElseThrow();
        for (Edge edge : truth.edges()) {
          Path want = edge.path();
          Path got =
              own.edges().stream()
                  .filter(each -> each.name().equals(edge.name()))
                  .findFirst()
                  .orElseThrow()
                  .path();
          double corner =
              Math.max(got.start().distanceTo(want.start()), got.end().distanceTo(want.end()));
          assertThat(corner)
              .as("%s.%s in %s: a corner", name, edge.name(), size.name())
              .isLessThan(AT_CORNERS);
          double along = apart(want, got);
          assertThat(along)
              .as("%s.%s in %s: along it", name, edge.name(), size.name())
              .isLessThan(ALONG_CURVES);
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(200);
  }

  private static double apart(Path want, Path got) {
    double worst = 0;
    for (int i = 0; i <= 40; i++) {
      var here = want.at(want.length() * i / 40).point();
      var there = got.at(got.length() * i / 40).point();
      worst = Math.max(worst, got.nearest(here).point().distanceTo(here));
      worst = Math.max(worst, want.nearest(there).point().distanceTo(there));
    }
    return worst;
  }
}
