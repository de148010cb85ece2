package org.hemwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.split.SplitChoice;
import org.hemwright.pattern.split.SplitRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The parts of a piece that is cut apart are asked how they are made as any piece is. */
class PartsMakingTest {
  private static SizeRun skirt(String written, String instead) throws IOException {
    Path folder = Path.of("..", "examples", "eddy-skirt");
    SizeChart chart =
        ChartReader.read("sizes.csv", Files.readAllBytes(folder.resolve("sizes.csv")))
            .chart()
            .orElseThrow();
    String text = Files.readString(folder.resolve("pattern.hem"));
    assertThat(text).contains(written);
    Plan plan =
        Plan.of(DocumentReader.read("pattern.hem", text.replace(written, instead)), chart).plan();
    return plan.evaluate(chart.sizes().subList(8, 9), DialSettings.NONE).drawn().run();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "making-openings | '  close feed, note' | '  # close feed, note'",
        "making-openings | feed 6 cm open | feed 1 cm open",
        "making-pressing | sew band_ring, press open | sew band_ring",
        "making-pressing | side_seams_a, press toward back | side_seams_a",
        "making-edges | '  sew side_seams_b, press' | '  # sew side_seams_b, press'",
        "making-order | '  sew band_ring, press open' | '  # sew band_ring, press open'"
      })
  void whatIsMadeWrongIsToldOfThePartsToo(String check, String written, String instead)
      throws IOException {
    SizeRun sound = skirt(written, written);
    SizeRun wrong = skirt(written, instead);
    assertThat(SplitChoice.declared(wrong)).hasSize(3);
    for (SplitChoice choice : SplitChoice.declared(wrong)) {
      assertThat(Told.by(check, SplitRun.of(sound, List.of(choice)))).as(choice.text()).isEmpty();
      assertThat(Told.by(check, SplitRun.of(wrong, List.of(choice))))
          .as(choice.text())
          .hasSameSizeAs(Told.by(check, wrong))
          .isNotEmpty();
    }
  }

  @Test
  void everyQuestionAboutTheMakingIsAskedOfParts() {
    assertThat(StandardChecks.with(CheckSettings.HANDBOOK))
        .filteredOn(check -> check.id().startsWith("making-"))
        .hasSize(6)
        .allMatch(Check::asksOfParts);
  }
}
