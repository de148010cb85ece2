package org.hemwright.workbench.starter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.exchange.chart.ReadChart;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The size runs of our own are what {@code docs/charts.md} says of them. */
class ChartRunTest {
  private static SizeChart chart(ChartRun run) {
    ReadChart read =
        ChartReader.read(run.name() + ".csv", run.csv().getBytes(StandardCharsets.UTF_8));
    assertThat(read.findings()).isEmpty();
    return read.chart().orElseThrow();
  }

  private static double cm(ChartRun run, String size, String column) {
    SizeChart chart = chart(run);
    int position = chart.size(size).orElseThrow().position();
    return chart.column(column).orElseThrow().cells().get(position).value().orElseThrow() / 10;
  }

  /** By hand from the rules of docs/charts.md, to half a millimetre. */
  @ParameterizedTest
  @CsvSource({
    "women, 12, waist, 76",
    "women, 22, waist, 101.2",
    "women, 22, hip, 122.8",
    "women, 12, front_length, 45.15",
    "plus, 28, waist, 121.45",
    "plus, 36, bust_height, 35.95",
    "men, 120, waist, 107.8",
    "men, 104, scye_depth, 23.6",
    "children, 128, chest, 65",
    "children, 152, chest, 77",
    "children, 152, hip, 81.15",
    "children, 122, inside_leg, 54"
  })
  void theRulesHold(String run, String size, String column, double cm) {
    assertThat(cm(ChartRun.named(run).orElseThrow(), size, column)).isCloseTo(cm, within(0.026));
  }

  /** The lines of regression, worked out here from the people of ../shared/data/body. */
  @ParameterizedTest
  @CsvSource({
    "buttockcircumference, hip",
    "neckcircumferencebase, neck_base",
    "shoulderlength, shoulder",
    "sleeveoutseam, arm_length",
    "headcircumference, head",
    "crotchheight, inside_leg",
    "stature, height"
  })
  void menAreAsTheSurveyLetsOneExpect(String surveyed, String column) throws IOException {
    Path people = Path.of("").toAbsolutePath();
    while (people.getParent() != null && !Files.isDirectory(people.resolve("shared/data/body"))) {
      people = people.getParent();
    }
    people = people.resolve("shared/data/body/ansur2_male.csv");
    assumeTrue(Files.exists(people), "../shared/data/body is not here");
    List<String> lines = Files.readAllLines(people);
    List<String> heading = List.of(lines.get(0).split(",", -1));
    int chest = heading.indexOf("chestcircumference");
    int other = heading.indexOf(surveyed);
    double sumX = 0;
    double sumY = 0;
    double sumXx = 0;
    double sumXy = 0;
    int count = lines.size() - 1;
    for (String line : lines.subList(1, lines.size())) {
      String[] cells = line.split(",", -1);
      double x = Double.parseDouble(cells[chest]) / 10;
      double y = Double.parseDouble(cells[other]) / 10;
      sumX += x;
      sumY += y;
      sumXx += x * x;
      sumXy += x * y;
    }
    double slope = (sumXy - sumX * sumY / count) / (sumXx - sumX * sumX / count);
    for (int size : List.of(88, 104, 124)) {
      double expected = sumY / count + slope * (size - sumX / count);
      // The packed figures have correlations of logarithms; 3 mm is what that makes at most here.
      assertThat(cm(ChartRun.named("men").orElseThrow(), String.valueOf(size), column))
          .as("%s at %d", column, size)
          .isCloseTo(expected, within(0.3));
    }
  }

  @Test
  void thePackedChartsAreWhatTheScriptMakes(@TempDir Path folder)
      throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/python3")), "python3 is not installed");
    Process process =
        new ProcessBuilder("/usr/bin/python3", "docs/charts/runs.py", folder.toString())
            .directory(Path.of("..").toFile())
            .redirectErrorStream(true)
            .start();
    assertThat(process.waitFor()).isZero();
    for (ChartRun run : ChartRun.all()) {
      assertThat(Files.readString(folder.resolve(run.name() + ".csv"))).isEqualTo(run.csv());
    }
  }

  /** The charts in the starters' folders are cut from the run for women. */
  @Test
  void theStartersHaveTheRunForWomen() {
    for (Starter starter : Starter.all()) {
      List<String> own =
          new String(starter.bytes("sizes.csv"), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#"))
              .toList();
      List<String> headings = List.of(own.get(0).split(",", -1));
      List<String> cut =
          ChartRun.WOMEN
              .csv("Women", headings.subList(1, headings.size()))
              .lines()
              .filter(line -> !line.startsWith("#"))
              .toList();
      assertThat(own).as(starter.name()).isEqualTo(cut);
    }
  }

  @Test
  void aFolderForMenSpeaksOfTheChest(@TempDir Path in) throws IOException {
    NewFolder folder = NewFolder.called("Kelp tee", in);
    folder.fill(Starter.named("knit-tee").orElseThrow(), ChartRun.named("men").orElseThrow());
    String text = Files.readString(folder.path().resolve("pattern.hem"));
    assertThat(text).contains("for men", "\"Ease at the chest\"").doesNotContain("bust");
    assertThat(Files.readString(folder.path().resolve("sizes.csv")))
        .startsWith("# Men, for knit tops.")
        .contains("chest (cm)");
    Evaluated evaluated = Workbench.evaluate(new DiskFolder(folder.path()));
    assertThat(evaluated.problems()).isEmpty();
    assertThat(evaluated.run().orElseThrow().pattern().base().name()).isEqualTo("104");
  }

  @Test
  void aStarterIsNotDraftedForWhomItDoesNotFit() {
    Starter skirt = Starter.named("skirt-block").orElseThrow();
    ChartRun children = ChartRun.named("children").orElseThrow();
    assertThat(skirt.charts()).doesNotContain(children);
    assertThatThrownBy(() -> skirt.document("A", children))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
