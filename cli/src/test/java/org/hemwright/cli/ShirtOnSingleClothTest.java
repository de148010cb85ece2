package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The layings with the most pieces of any example: seventeen of a shirt on single cloth. The
 * figures are the shortest that many long runs found (docs/performance.md, "Yardage tables"); a
 * table's own work comes within a few hundredths of them.
 */
class ShirtOnSingleClothTest {
  private static final double SHORTEST_EITHER_WAY = 2046.4;
  private static final double SHORTEST_ONE_WAY = 2154.6;
  private static final double LONGER = 1.03;

  @TempDir Path folder;

  @Test
  void aTablesWorkComesNearTheShortestEverFound() throws IOException {
    for (String file : new String[] {"pattern.hem", "sizes.csv"}) {
      Files.copy(Path.of("..", "examples", "shingle-shirt", file), folder.resolve(file));
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int ended =
        Main.run(
            out,
            err,
            "cloth",
            folder.toString(),
            "--size",
            "122",
            "--width",
            "115cm",
            "--fold",
            "single",
            "--fabric",
            "main",
            "--json");
    assertThat(ended).as(err.toString(StandardCharsets.UTF_8)).isZero();
    JsonNode rows = new ObjectMapper().readTree(out.toByteArray()).get("rows");
    assertThat(rows).hasSize(2);
    for (JsonNode row : rows) {
      double shortest = row.get("nap").asBoolean() ? SHORTEST_ONE_WAY : SHORTEST_EITHER_WAY;
      assertThat(row.get("length_mm").asDouble()).isLessThan(shortest * LONGER);
    }
  }
}
