package org.hemwright.workroom.bodies;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hemwright.workroom.history.Splice;
import org.junit.jupiter.api.Test;

/** A changed cell is a changed cell of the file; every other byte stays. */
class ChartCellsTest {
  private static final String CHART =
      """
      # ours
      size, hip (cm) ,"waist (cm)"

      8,92,66
      "2,T", 96.5,70
      """;

  private static String with(int row, int column, List<List<String>> block) {
    String text = CHART;
    for (Splice splice : ChartCells.of(CHART).with("sizes.csv", CHART, row, column, block)) {
      text = splice.applyTo(text);
    }
    return text;
  }

  @Test
  void cellsAreReadWithoutQuotesAndBlanks() {
    assertThat(ChartCells.of(CHART).rows())
        .extracting(row -> row.stream().map(ChartCells.Cell::said).toList())
        .containsExactly(
            List.of("size", "hip (cm)", "waist (cm)"),
            List.of("8", "92", "66"),
            List.of("2,T", "96.5", "70"));
    assertThat(ChartCells.of("size;hip (cm)\n8;92,5\n").rows().get(1).get(1).said())
        .isEqualTo("92,5");
    assertThat(ChartCells.of("").rows()).isEmpty();
  }

  @Test
  void oneCellChangesAndNothingElse() {
    assertThat(with(1, 1, List.of(List.of("93")))).isEqualTo(CHART.replace("8,92,66", "8,93,66"));
    assertThat(with(2, 0, List.of(List.of("2,T")))).isEqualTo(CHART);
    assertThat(with(0, 1, List.of(List.of("hip \"x\" (cm)"))))
        .isEqualTo(CHART.replace(" hip (cm) ", "\"hip \"\"x\"\" (cm)\""));
  }

  @Test
  void aPastedBlockReplacesAndAddsRowsAndColumns() {
    assertThat(
            with(
                2,
                1,
                List.of(
                    List.of("97", "71", "20"), List.of("100", "74", "21"), List.of("104", "7,8"))))
        .isEqualTo(
            CHART.replace("\"2,T\", 96.5,70\n", "\"2,T\",97,71,20\n,100,74,21\n,104,\"7,8\"\n"));
  }
}
