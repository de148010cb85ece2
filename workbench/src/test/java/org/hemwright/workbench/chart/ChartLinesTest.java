package org.hemwright.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.workbench.starter.Starter;
import org.junit.jupiter.api.Test;

class ChartLinesTest {
  private static String with(List<String> sizes, String base) {
    String text = Starter.named("trousers").orElseThrow().document("Tide trousers");
    Document document = DocumentReader.read("pattern.hem", text);
    String after = ChartLines.with(document, "sizes.csv", sizes, base).orElseThrow();
    assertThat(DocumentReader.read("pattern.hem", after).findings()).isEmpty();
    return after;
  }

  @Test
  void sizesPrintedTogetherFollowTheChartWhereTheyAreNotInIt() {
    assertThat(with(List.of("XS", "S", "M", "L", "XL", "2X", "3X"), "M"))
        .contains("sizes from \"sizes.csv\" base M\n", "groups XS to L, M to \"3X\"\n");
    assertThat(with(List.of("S/M", "L/XL"), "L/XL"))
        .contains("base \"L/XL\"\n", "groups \"S/M\" to \"L/XL\"\n");
  }

  @Test
  void whereTheyAreTheyStay() {
    List<String> sizes = List.of("6", "8", "10", "12", "14", "16", "18", "20", "22", "24");
    assertThat(with(sizes, "12")).contains("groups 6 to 14, 12 to 22\n");
  }

  /** Each group holds six sizes at most, and neighbours share two (common practice, no source). */
  @Test
  void everySizeIsPrintedAndNeighboursShareTwo() {
    for (int count = 1; count <= 40; count++) {
      List<String> sizes =
          java.util.stream.IntStream.range(0, count).mapToObj(i -> "" + (100 + i)).toList();
      String after = with(sizes, "100");
      String line =
          after.substring(
              after.indexOf("groups ") + 7, after.indexOf("\n", after.indexOf("groups ")));
      int reached = -1;
      for (String group : line.split(", ", -1)) {
        String[] ends = group.split(" to ", -1);
        int from = sizes.indexOf(ends[0]);
        int to = sizes.indexOf(ends[1]);
        assertThat(to - from).as(line).isLessThan(6);
        assertThat(from).as(line).isEqualTo(reached < 0 ? 0 : reached - 1);
        reached = to;
      }
      assertThat(reached).as(line).isEqualTo(count - 1);
    }
  }
}
