package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Replies to makers. The arithmetic is the handbook's: ease is finished less body, wear stretch
 * body over finished less 1 (section 1; check value 4); by hip for bottoms, by bust for tops
 * (section 8).
 */
class AdviseCommandTest {
  @TempDir Path folder;

  private final Console console = new Console();

  /** Check value 4: body 96 cm, finished 88 cm, ease −8 cm, wear stretch 9.09 %. */
  @Test
  void aKnitThatIsSmallerThanTheBodyTellsTheStretchThatItTakes() throws IOException {
    tube("main knit", "\n  stretch across at least 40%", "88");
    assertThat(console.run("advise", folder.toString(), "--hip", "96cm", "--json")).isEqualTo(0);
    JsonNode answer = new ObjectMapper().readTree(console.out());
    assertThat(answer.get("size").asText()).isEqualTo("10");
    JsonNode fit = answer.get("fit").get(0);
    assertThat(fit.get("finished_mm").asDouble()).isEqualTo(880, within(0.001));
    assertThat(fit.get("ease_mm").asDouble()).isEqualTo(-80, within(0.001));
    assertThat(fit.get("stretch_needed").asDouble()).isEqualTo(0.0909, within(0.0001));
    assertThat(fit.get("comfortable").asBoolean()).isTrue();
    assertThat(answer.get("reply").asText())
        .contains("For Tube, version 1.0, I would cut size 10.")
        .contains("the fabric stretches by 9% when you wear it")
        .endsWith("Tern Cove Patterns\n");
  }

  @Test
  void betweenTwoSizesStretchTakesTheSmallerAndFirmClothTheLarger() throws IOException {
    tube("main knit", "\n  stretch across at least 40%", "88");
    console.run("advise", folder.toString(), "--hip", "98cm", "--json");
    JsonNode knit = new ObjectMapper().readTree(console.out());
    assertThat(knit.get("size").asText()).isEqualTo("10");
    assertThat(knit.get("between")).extracting(JsonNode::asText).containsExactly("10", "12");

    console.clear();
    tube("main woven", "", "104");
    console.run("advise", folder.toString(), "--hip=98cm", "--json");
    assertThat(new ObjectMapper().readTree(console.out()).get("size").asText()).isEqualTo("12");
  }

  @Test
  void aMeasurementFarOffTheChartIsAskedAbout() throws IOException {
    tube("main woven", "", "104");
    assertThat(console.run("advise", folder.toString(), "--hip", "38cm")).isEqualTo(2);
    assertThat(console.err())
        .contains("--hip 38cm: the chart's hip runs from ")
        .contains("; did you mean 38in?");

    console.clear();
    assertThat(console.run("advise", folder.toString(), "--hip", "12cm")).isEqualTo(2);
    assertThat(console.err()).contains("--hip 12cm").contains("120cm?");

    console.clear();
    assertThat(console.run("advise", folder.toString(), "--hip", "980cm")).isEqualTo(2);
  }

  @Test
  void aBodyBeyondTheChartIsToldSo() throws IOException {
    tube("main woven", "", "104");
    assertThat(console.run("advise", folder.toString(), "--hip", "45in")).isEqualTo(0);
    assertThat(console.out()).contains("lies beyond the largest size that the pattern has, 12");
  }

  @Test
  void clothThatDoesNotReachIsNotRecommended() throws IOException {
    tube("main knit", "\n  stretch across at least 5%", "88");
    console.run("advise", folder.toString(), "--hip", "96cm");
    assertThat(console.out()).contains("It does not fit there without a change.");
  }

  @Test
  void theDemoAnswersWithItsElasticAndWhatToLengthen() {
    assertThat(console.run("advise", "--waist", "84cm", "--hip-depth", "23cm", "--hip", "108cm"))
        .isEqualTo(0);
    assertThat(console.out())
        .contains("you are between sizes 14 (82 cm · 32 1/4 in) and 16 (86 cm · 33 7/8 in)")
        .contains("Cut the elastic 78.1 cm")
        .contains("Your hip depth is 3 cm · 1 1/8 in more than that of size 14.")
        .doesNotContain("smooth line");
  }

  @Test
  void whatIsNoMeasurementOfTheChartIsToldWithWhatItHas() {
    assertThat(console.run("advise", "--hop", "102cm", "--waist", "soon"))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err().lines())
        .containsExactly(
            "--hop: the chart has no length of that name; did you mean --hip? it has waist, hip,"
                + " hip_depth",
            "--waist soon: that is no length of a body; write it as 102cm, 1020mm or \"40 1/4in\"");
    assertThat(console.run("advise")).isEqualTo(ExitCode.INPUT_WRONG);
  }

  private void tube(String fabric, String stretch, String finished) throws IOException {
    Files.writeString(folder.resolve("sizes.csv"), "size,hip (cm)\n8,92\n10,96\n12,100\n");
    Files.writeString(
        folder.resolve("pattern.hem"),
        """
        language 1
        pattern "Tube"
        version 1.0
        dated 2026-11-25
        by "Tern Cove Patterns"
        spelling American
        sizes from "sizes.csv" base 10
        fabric %s
          widths 150 cm%s
        piece tube "Tube" number 1
          cut 1 of main
          rectangle hip + %s cm - 96 cm by 40 cm, edges lower, right, upper, left
          allowance 1 cm
          grain along left
          stretch across
          point corner at 0 cm, 0 cm
          point middle at 0 cm, 20 cm
          level hip at middle
          stack at corner
        seam sides tube.left with tube.right
        """
            .formatted(fabric, stretch, finished));
  }

  private static org.assertj.core.data.Offset<Double> within(double offset) {
    return org.assertj.core.api.Assertions.within(offset);
  }
}
