package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.tailor.Tailored;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A body takes the place of a size; what comes of it is held against the chart's own sizes. */
class TailorCommandTest {
  private static final PackedFolder SKIRT = new PackedFolder("eddy-skirt");

  @TempDir Path folder;

  private final Console console = new Console();

  /** A body with a size's own measurements is that size, to the last bit. */
  @Test
  void aBodyWithTheMeasurementsOfASizeIsDrawnAsThatSize() {
    SizeRun whole = Workbench.evaluate(SKIRT).run().orElseThrow();
    Map<String, Double> measures = new LinkedHashMap<>();
    whole
        .pattern()
        .chart()
        .columns()
        .forEach(c -> measures.put(c.name(), c.cells().get(5).value().orElseThrow()));
    assertThat(Tailored.nearest(whole.pattern().chart(), measures)).isEqualTo("14");

    Evaluated ada = Workbench.tailor(SKIRT, new Tailored("Ada", "14", measures));

    SizeRun run = ada.run().orElseThrow();
    assertThat(run.sizes()).hasSize(1);
    assertThat(run.sizes().get(0).size().name()).isEqualTo("Ada");
    assertThat(run.sizes().get(0).pieces()).hasSameSizeAs(whole.size("14").orElseThrow().pieces());
    whole
        .size("14")
        .orElseThrow()
        .pieces()
        .forEach(
            piece ->
                assertThat(run.sizes().get(0).piece(piece.name()).orElseThrow().stitchLine())
                    .isEqualTo(piece.stitchLine()));
  }

  /** The waist edge of a half panel is a quarter of the waist: 84 cm comes to 21 cm. */
  @Test
  void aBodyBetweenTwoSizesIsDrawnForItsOwnMeasurements() throws IOException {
    Files.writeString(
        folder.resolve("ada.csv"), "size,waist (cm),hip (in),hip depth (cm)\nAda,84,40,21\n");
    assertThat(
            console.run(
                "tailor",
                "--body",
                folder.resolve("ada.csv").toString(),
                "--on",
                "a4",
                "--json",
                "--out",
                folder.resolve("out").toString()))
        .as(console.err())
        .isEqualTo(0);
    JsonNode answer = new ObjectMapper().readTree(console.out());
    assertThat(answer.get("name").asText()).isEqualTo("Ada");
    assertThat(answer.get("in_place_of").asText()).isEqualTo("14");
    assertThat(folder.resolve("out").resolve(answer.at("/files/0/name").asText())).exists();

    Map<String, Double> measures = Map.of("waist", 840.0, "hip", 1016.0, "hip_depth", 210.0);
    SizeRun ada = Workbench.tailor(SKIRT, new Tailored("Ada", "14", measures)).run().orElseThrow();
    double waist =
        Measurements.of(ada).pieces().get(0).edges().stream()
            .filter(edge -> edge.name().equals("waist"))
            .findFirst()
            .orElseThrow()
            .length()
            .getOrDefault("Ada", 0.0);
    assertThat(waist).isEqualTo(210, org.assertj.core.api.Assertions.within(0.01));
  }

  @Test
  void whatABodyLacksIsToldAndTakenFromASizeOnlyWhenAsked() throws IOException {
    Files.writeString(folder.resolve("ada.csv"), "size,waist (cm),hip (cm)\nAda,84,102\n");
    String file = folder.resolve("ada.csv").toString();
    String to = folder.resolve("out").toString();
    assertThat(console.run("tailor", "--body", file, "--on", "a0", "--out", to))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err())
        .contains(
            "Ada stands in the place of size 14 and lacks hip depth (cm); measure it, or take it"
                + " from a size with --rest 14");
    assertThat(folder.resolve("out")).doesNotExist();
    assertThat(console.run("tailor", "--body", file, "--rest", "14", "--on", "a0", "--out", to))
        .isEqualTo(0);
    assertThat(console.out()).contains("Drawn for Ada, in the place of size 14");
  }

  @Test
  void aBlendAndMeasurementsOfDifferentSizesAreDrawn() {
    String to = folder.toString();
    assertThat(
            console.run("tailor", "--blend", "14,18", "--share", "40%", "--on", "a0", "--out", to))
        .as(console.err())
        .isEqualTo(0);
    assertThat(console.out()).contains("Drawn for between 14 and 18, in the place of size 16");
    console.clear();
    assertThat(
            console.run(
                "tailor",
                "--take",
                "waist=14,hip=18",
                "--rest",
                "16",
                "--called",
                "Bea",
                "--on",
                "a0",
                "--out",
                to))
        .as(console.err())
        .isEqualTo(0);
    assertThat(console.out()).contains("Drawn for Bea, in the place of size");
  }

  @Test
  void whatCannotBeDrawnForIsToldPlainly() {
    assertThat(console.run("tailor")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.run("tailor", "--blend", "14")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.run("tailor", "--blend", "14,19")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.run("tailor", "--blend", "14,18", "--share", "3"))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.run("tailor", "--blend", "14,18", "--called", "20"))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.run("tailor", "--take", "hop=14")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.run("tailor", "--body", folder.resolve("no.csv").toString()))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err().lines().map(line -> line.replaceAll(":.*", "")))
        .startsWith("tailor", "--blend 14", "--blend 19", "--share 3", "--called 20")
        .contains("--take hop=14");
    assertThat(console.err()).contains("did you mean 18 or 20?");
  }
}
