package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.hemwright.workbench.again.Answers;
import org.hemwright.workbench.out.KeptLayings;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Questions about cloth from the command line, by what is answered on all four ways. */
class ClothCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** One panel, a tab that fits in what it leaves, and a band that takes cloth that stretches. */
  private static final String DOCUMENT =
      """
      language 1
      pattern "Banner"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base S
      units centimetres
      fabric main knit "Jersey"
        widths 100 cm, 140 cm
        stretch across at least 30%
      fabric rib knit
        widths 100 cm
      piece panel "Panel" number 1
        cut 1 of main
        rectangle 94 cm by long, edges lower, right, upper, left
        allowance 0 cm
        grain along left
      piece tab "Tab" number 2
        cut 1 of rib
        rectangle 20 cm by 6 cm, edges lower, right, upper, left
        allowance 0 cm
        grain along left
      """;

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void aBanner() throws IOException {
    write(DOCUMENT);
  }

  private void write(String document) throws IOException {
    Files.writeString(folder.resolve("pattern.hem"), document);
    Files.writeString(folder.resolve("sizes.csv"), "size,long (cm)\nS,152\nM,150\nL,300\n");
  }

  private int cloth(String... arguments) {
    out.reset();
    err.reset();
    List<String> all = new ArrayList<>(List.of("cloth", folder.toString(), "--work", "200"));
    Stream.of(arguments).forEach(all::add);
    all.addAll(List.of("--out", folder.resolve("made").toString()));
    return Main.run(out, err, all.toArray(String[]::new));
  }

  private String text(String... arguments) {
    assertThat(cloth(arguments)).as(err.toString(StandardCharsets.UTF_8)).isZero();
    return out.toString(StandardCharsets.UTF_8);
  }

  private List<JsonNode> rows(String... arguments) throws IOException {
    List<String> all = new ArrayList<>(List.of(arguments));
    all.add("--json");
    List<JsonNode> rows = new ArrayList<>();
    JSON.readTree(text(all.toArray(String[]::new))).get("rows").forEach(rows::add);
    return rows;
  }

  private JsonNode best(String fabric, String size, int width, String... arguments)
      throws IOException {
    return rows(arguments).stream()
        .filter(row -> row.get("fabric").asText().equals(fabric))
        .filter(row -> row.get("size").asText().equals(size))
        .filter(row -> row.get("width_mm").asInt() == width && row.get("best").asBoolean())
        .findFirst()
        .orElseThrow();
  }

  private String made(String file) throws IOException {
    return Files.readString(folder.resolve("made").resolve(file));
  }

  private String problems(String... arguments) {
    assertThat(cloth(arguments)).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(out.toString(StandardCharsets.UTF_8)).isEmpty();
    String told = err.toString(StandardCharsets.UTF_8);
    assertThat(told).doesNotContain("Exception").doesNotContain("!");
    return told;
  }

  /** School geometry: laid alike two parallelograms take 40 + 50 cm, mirrored ones 50 + 50 cm. */
  @Test
  void clothAlikeOnBothSidesIsLaidFaceDownAndSaidToBeSo() throws IOException {
    String document =
        DOCUMENT.substring(0, DOCUMENT.indexOf("fabric main"))
            + """
            fabric main woven "Linen"
              widths 33 cm
              nap one way
            piece leaning "Leaning" number 1
              cut 2 of main, mirrored
              point a at 0 cm, 0 cm
              point b at 30 cm, 10 cm
              point c at 30 cm, 50 cm
              point d at 0 cm, 40 cm
              outline low is a to b, right is b to c, top is c to d, left is d to a
              allowance 0 cm
              grain up
            """;
    write(document);
    assertThat(alike(rows("--size", "S"))).isEqualTo("single 1000 false");
    assertThat(text("--size", "S")).startsWith("main: Linen, with nap\n");
    assertThat(alike(rows("--size", "S", "--both-sides-alike"))).isEqualTo("single 900 true");
    assertThat(text("--size", "S", "--both-sides-alike"))
        .startsWith("main: Linen, both sides alike, with nap\n");
    assertThat(made("yardage.html")).contains("main: Linen, both sides alike, with nap");
    write(document.replace("nap one way\n", "nap one way\n  both sides alike\n"));
    assertThat(alike(rows("--size", "S"))).isEqualTo("single 900 true");
  }

  private static String alike(List<JsonNode> rows) {
    JsonNode best = rows.stream().filter(row -> row.get("best").asBoolean()).findFirst().get();
    return best.get("fold").asText()
        + " "
        + Math.round(best.get("length_mm").asDouble())
        + " "
        + best.get("both_sides_alike").asBoolean();
  }

  /**
   * School arithmetic on a repeat of 9 cm: round a girth of four half panels the bars go on over
   * one side seam where front and back have each a place of their own, and over both where the
   * girth is so many repeats. Alike, they would go on where two half panels are.
   */
  @ParameterizedTest
  @CsvSource({"24.75, 0", "22.5, 0", "24, 30", "26, 40"})
  void aPanelCutTwiceHasTwoPlacesInAnUnevenRepeat(String half, int apart) throws IOException {
    write(
        DOCUMENT.substring(0, DOCUMENT.indexOf("fabric main"))
            + """
            fabric plaid woven "Uneven check"
              widths 115 cm, 150 cm
              repeat along 10 cm
              repeat across 9 cm, uneven
              match side_match
            piece panel "Panel" number 1
              cut 2 of plaid, on the fold
              copies front, back
              rectangle HALF cm by 40 cm, edges hem, side, top, centre
              fold centre
              allowance 1.5 cm
              grain along centre
            seam side_seams panel.side with panel.side
              notch at 12 cm from start as side_match
            """
                .replace("HALF", half));
    assertThat(text("--size", "S")).doesNotContain("does not fit");
    String told = err.toString(StandardCharsets.UTF_8);
    if (apart == 0) {
      assertThat(told).isEmpty();
    } else {
      assertThat(told).contains("of panel lies " + apart + " mm beside that of panel");
    }
  }

  @Test
  void aClothOfWhichNothingIsCutIsToldWithTheWayOut() throws IOException {
    write(DOCUMENT.replace("piece panel", "fabric spare woven\n  widths 90 cm\npiece panel"));
    String unused =
        "pattern.hem:13:1: worth a look: No piece is cut from spare, so there is nothing of it to"
            + " lay or to buy; write in a piece what is cut from it, such as `cut 1 of spare`, or"
            + " take its lines out.\n";
    for (String asked : List.of("main,rib,spare", "spare")) {
      text("--size", "S", "--fabric", asked);
      assertThat(err.toString(StandardCharsets.UTF_8)).endsWith(unused).hasLineCount(1);
    }
    text("--size", "S", "--fabric", "main");
    assertThat(err.toString(StandardCharsets.UTF_8)).isEmpty();
  }

  @Test
  void whatToBuyIsThatOfTheHandbook() throws IOException {
    // handbook section 10, check values 26 and 27: 1.52 m is 1.6 m or 1 3/4 yd, 1.50 m is sold
    // as it is, and 1 3/4 yd
    assertThat(best("main", "S", 1000).get("buy").toString()).isEqualTo("{\"m\":1.6,\"yd\":1.75}");
    assertThat(best("main", "M", 1000).get("buy").toString()).isEqualTo("{\"m\":1.5,\"yd\":1.75}");
    assertThat(text("--fabric", "main"))
        .contains("100 cm: exact length 152 cm in size S, 150 cm in size M, 300 cm in size L");
    // check value 28: 3.00 m after 5 % shrinkage is 3.158 m, buy 3.2 m
    JsonNode shrunk = best("main", "L", 1000, "--shrink", "5%");
    assertThat(shrunk.get("bought_mm").asDouble()).isCloseTo(3157.895, within(0.001));
    assertThat(shrunk.get("buy").get("m").asDouble()).isEqualTo(3.2);
    // check value 29: a repeat of 4 1/4 in for each piece that lies behind another
    JsonNode striped = best("main", "L", 1000, "--repeat", "4 1/4in");
    assertThat(striped.get("stripes_extra_mm").asDouble()).isCloseTo(4.25 * 25.4, within(1e-6));
  }

  @ParameterizedTest
  @CsvSource({
    "135cm, 1350, 135 cm",
    "135 cm, 1350, 135 cm",
    "1.35m, 1350, 135 cm",
    "52 1/2in, 1333, 133.4 cm",
    "52.5 in, 1333, 133.4 cm",
    "1 1/2yd, 1371, 137.2 cm"
  })
  void aWidthInAnyUnitOfAShop(String said, int width, String shown) throws IOException {
    assertThat(best("main", "S", width, "--width", said).get("length_mm").asDouble())
        .isEqualTo(1520);
    assertThat(text("--width", said)).contains(shown).doesNotContain("100 cm");
  }

  @Test
  void aDocumentInInchesIsAnsweredInInches() throws IOException {
    write(DOCUMENT.replace("units centimetres", "units inches"));
    assertThat(text("--width", "52 1/2in")).contains("52 1/2 in").contains("1 3/4 yd · 1.6 m");
    assertThat(text("--fit-in", "1 1/2yd")).contains("From a length of 54 in:");
    assertThat(text("--repeat", "10cm")).contains("about 3 7/8 in more");
  }

  @Test
  void whichSizesAreCutFromTheLengthThereIs() throws IOException {
    for (String length : List.of("1.52m", "152 cm", "152cm")) {
      assertThat(text("--fit-in", length))
          .contains("main: Jersey, with nap, 100 cm wide: sizes S and M");
    }
    assertThat(text("--fit-in", "1 1/2yd")).contains("100 cm wide: no size");
    // 1.55 m that shrinks by 5 % is 1.4725 m
    assertThat(text("--fit-in", "1.55m", "--shrink", "5%")).contains("100 cm wide: no size");
    assertThat(best("main", "S", 1000, "--fit-in", "1.52m").get("enough").asBoolean()).isTrue();
    assertThat(best("main", "L", 1000, "--fit-in", "1.52m").get("enough").asBoolean()).isFalse();
    assertThat(made("yardage.html")).contains("<h2>From a length of 152 cm · 59⅞ in</h2>");
    assertThat(made("yardage.csv").lines().filter(line -> line.contains(",main,")))
        .allMatch(line -> line.endsWith(line.contains(",L,") ? ",no" : ",yes"));
  }

  @Test
  void whetherHerClothStretchesEnough() {
    assertThat(text("--stretch", "10cm to 14cm"))
        .contains("main is asked to stretch 30% across, and this cloth stretches 40%: enough.")
        .contains("rib is not asked to stretch across");
    assertThat(text("--stretch", "4in to 5in", "--fabric", "main")).doesNotContain("rib is");
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("pattern.hem:8:1: worth a look: main is asked to stretch 30% across")
        .contains("this cloth stretches 25%; take a cloth that stretches more");
    assertThat(text("--stretch", "45%", "--stretch-along", "5%"))
        .contains("this cloth stretches 45%");
  }

  @Test
  void oneFabricOfHerOwnThatShrinksAndStretches() throws IOException {
    String said =
        text("--fabric", "main", "--shrink", "5%", "--shrink-across", "3%", "--stretch", "40%");
    assertThat(said).contains("stretches 40%: enough").doesNotContain("rib:");
    assertThat(said)
        .contains("3.2 m · 3 1/2 yd")
        .contains("of cloth that shrinks by 5% along and 3% across before it is cut.");
    assertThat(text("--shrink", "2.5%")).contains("shrinks by 2.5% along before it is cut.");
    assertThat(made("yardage.html")).contains("shrinks by 2.5% along before it is cut.");
    assertThat(text()).doesNotContain("shrinks");
    // 100 cm less 3 % and the selvedges is 94 cm, which the panel just takes; less 4 % it is not
    assertThat(best("main", "S", 1000, "--shrink-across", "3%").get("fits").asBoolean()).isTrue();
    assertThat(rows("--fabric", "main", "--shrink-across", "4%"))
        .filteredOn(row -> row.get("width_mm").asInt() == 1000)
        .isNotEmpty()
        .allMatch(row -> !row.get("fits").asBoolean());
  }

  @Test
  void whatDoesNotFitIsNamedWithWhatWouldDo() throws IOException {
    assertThat(text("--width", "90cm,140cm")).contains("does not fit");
    String told = err.toString(StandardCharsets.UTF_8);
    assertThat(told)
        .contains("panel needs 94 cm across the grain in every size")
        .contains("main 90 cm wide leaves 87 cm")
        .contains("take it 100 cm wide or wider, or split the piece");
    assertThat(made("yardage.csv")).contains("panel: Take it 100 cm wide or wider");
    assertThat(made("yardage.html"))
        .contains("Take it 100 cm wide or wider")
        .contains("does not fit");
    assertThat(rows("--width", "90cm,140cm"))
        .filteredOn(row -> row.get("width_mm").asInt() == 900)
        .filteredOn(row -> row.get("fabric").asText().equals("main"))
        .isNotEmpty()
        .allMatch(row -> row.get("misfits").get(0).get("piece").asText().equals("panel"));
    assertThat(text("--width", "90cm", "--shrink-across", "2%")).contains("does not fit");
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("main 90 cm wide leaves 85.2 cm")
        .contains("take it 100 cm wide or wider");
    assertThat(text("--fabric", "main", "--width", "90cm", "--shrink-across", "40%"))
        .contains("does not fit");
    // 94 cm and twice 1.5 cm of selvedge, less 40 %, is 161.7 cm
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("no width that main is sold in takes it, which would have to be 162 cm wide");
  }

  @Test
  void whatFitsOnlySingleClothIsToldWhereAFoldWasAskedFor() throws IOException {
    assertThat(text("--fabric", "main", "--fold", "crosswise", "--size", "S")).isNotEmpty();
    assertThat(err.toString(StandardCharsets.UTF_8)).contains("Nothing is laid");
    assertThat(rows("--fabric", "main", "--fold", "crosswise", "--size", "S")).isEmpty();
    write(
        DOCUMENT
            .replace("cut 1 of main", "cut 2 of main, mirrored")
            .replace("rectangle 94 cm", "rectangle 60 cm")
            .replace("left\npiece tab", "left\n  notch left at 20 cm from start\npiece tab"));
    assertThat(text("--fabric", "main", "--fold", "lengthwise", "--size", "S"))
        .contains("does not fit");
    // half of 100 cm less the selvedge
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("panel needs 60 cm across the grain in size S")
        .contains("main 100 cm wide folded so (lengthwise) leaves 48.5 cm; lay it on single cloth");
    assertThat(made("yardage.csv")).contains("panel: Lay it on single cloth");
    assertThat(text("--fabric", "main", "--size", "S")).doesNotContain("does not fit");
    assertThat(err.toString(StandardCharsets.UTF_8)).doesNotContain("folded so");
  }

  @Test
  void costAndWhatIsLeftStandInAllFourForms() throws IOException {
    String[] asked = {
      "--price", "12.50/m", "--price", "rib=6/yd", "--width", "140cm", "--fold", "single"
    };
    assertThat(text(asked))
        .contains("1.6 m · 1 3/4 yd for 20.00")
        .contains("1.38 m² of the exact length is left over; of what is bought, the largest")
        .contains("what is left has room, if the cloth is the same, for all of rib in every size");
    JsonNode row = best("main", "S", 1400, asked);
    assertThat(row.get("cost").asDouble()).isEqualTo(20);
    // 152 by 140 cm less the panel of 152 by 94 cm
    assertThat(row.get("area_left_mm2").asDouble()).isCloseTo(1520 * 460, within(1.0));
    // between the selvedges 137 cm less 94, along 1.6 m as it is bought
    assertThat(row.get("left").get("across_mm").asDouble()).isCloseTo(430, within(5.1));
    assertThat(row.get("left").get("along_mm").asDouble()).isCloseTo(1600, within(5.1));
    assertThat(row.get("left").get("also_fits").get("rib").get(0).asText()).isEqualTo("tab");
    assertThat(best("rib", "S", 1400, asked).get("cost").asDouble()).isEqualTo(6 / 8.0);
    assertThat(made("yardage.csv")).contains(",20.00,").contains("rib: tab").contains(",6992,");
    assertThat(made("yardage.html"))
        .contains("1.6 m · 1¾ yd<span class=\"cost\"> for 20.00</span>")
        .contains("0.7 m²")
        .contains("all of rib")
        .contains("of what is bought, the largest rectangle that is left is");
  }

  @Test
  void everythingThatIsWrongIsTold() {
    assertThat(
            problems(
                "--width",
                "wide,2cm",
                "--fit-in",
                "-1m",
                "--stretch",
                "14cm to 10cm",
                "--fabric",
                "silk",
                "--view",
                "Z",
                "--fold",
                "thrice",
                "--shrink",
                "60%",
                "--price",
                "cheap"))
        .contains("--width wide: that is no length; write it as 135cm, 1.4m, 54in or 1 1/2yd")
        .contains("--width 2cm: nothing is left between the selvedges")
        .contains("--fit-in -1m: that is no length")
        .contains("--stretch 14cm to 10cm: write the length at rest first")
        .contains("--fabric silk: the pattern has no such fabric; it has main, rib")
        .contains("--view Z: the pattern has no such view")
        .contains("--fold thrice: there are lengthwise, partial, double, crosswise, single")
        .contains("--shrink 60%: write a share below 50%")
        .contains("--price cheap: write it as 12.50/m");
    for (String nothing : List.of("0m", "0cm", "0 in")) {
      assertThat(problems("--fit-in", nothing)).contains("--fit-in " + nothing);
      assertThat(problems("--repeat", nothing)).contains("--repeat " + nothing);
    }
    assertThat(problems("--repeat-across", "8cm"))
        .contains("--repeat-across 8cm: no fabric that is asked about has bars along it");
    assertThat(problems("--stretch", "10 to 14")).contains("--stretch 10 to 14");
    assertThat(problems("--stretch", "10cm to wide")).contains("--stretch 10cm to wide");
    assertThat(problems("--stretch", "1.2.3%")).contains("--stretch 1.2.3%");
    assertThat(problems("--width", "1.2.3m")).contains("--width 1.2.3m");
  }

  /** At the scale of a kilometre on a page whole pieces, and corners of them, are one point. */
  @ParameterizedTest
  @CsvSource({"svg,1000", "png,1000", "svg,3000"})
  void aPieceOfAKilometreIsDrawnWithASmallOneBesideIt(String kind, int metres) throws IOException {
    write(
        DOCUMENT.replace("94 cm by long", "20 cm by " + 100 * metres + " cm")
            + """
            piece pocket "Pocket" number 3
              cut 1 of main, on the fold
              cut 1 of main
              point a at 0 cm, 0 cm
              point b from a down 3 cm
              point d from a right 3 cm
              line centre from a to b
              curve round from b leaving right to d arriving up
              line top from d to a
              outline centre is centre, round is round, top is top
              fold centre
              allowance 0 cm
              grain along centre
            """);
    assertThat(cloth("--size", "S", "--as", kind, "--fabric", "main"))
        .as(err.toString(StandardCharsets.UTF_8))
        .isEqualTo(0);
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("exact length " + 100 * metres);
  }

  /** 90 cm are 35.433 in: to an eighth 35 3/8, to a thirty-second 35 7/16. */
  @Test
  void aWidthReadsTheSameInTheTableAndInWhatIsCheckedOfIt() throws IOException {
    write(DOCUMENT.replace("units centimetres", "units inches").replace("100 cm, 140 cm", "90 cm"));
    assertThat(text("--size", "S", "--fabric", "main")).contains("35 3/8 in");
    assertThat(err.toString(StandardCharsets.UTF_8))
        .contains("main 35 3/8 in · 90 cm wide leaves")
        .doesNotContain("35 7/16");
    out.reset();
    Main.run(out, err, "check", folder.toString());
    assertThat(out + err.toString(StandardCharsets.UTF_8))
        .contains("the widest main of 35 3/8 in")
        .doesNotContain("35 7/16");
  }

  @Test
  void layingsThatAreKeptAreTakenAgainByContent() throws IOException {
    String first = text("--json");
    Path kept;
    try (Stream<Path> files = Files.walk(folder)) {
      kept =
          files
              .filter(file -> file.getFileName().toString().contains("laying"))
              .findFirst()
              .orElseThrow();
    }
    byte[] before = Files.readAllBytes(kept);
    assertThat(text("--json")).isEqualTo(first);
    assertThat(Files.readAllBytes(kept)).isEqualTo(before);
  }

  private Path answer() {
    return folder.resolve(".hemwright").resolve(Answers.file("cloth"));
  }

  private Path layings() {
    return folder.resolve(".hemwright").resolve(KeptLayings.FILE);
  }

  private String told(String... arguments) {
    out.reset();
    err.reset();
    List<String> all = new ArrayList<>(List.of("cloth", folder.toString(), "--work", "200"));
    all.addAll(List.of(arguments));
    assertThat(Main.run(out, err, all.toArray(String[]::new))).isZero();
    return out.toString(StandardCharsets.UTF_8) + "\n--\n" + err.toString(StandardCharsets.UTF_8);
  }

  private Map<String, String> standing() throws IOException {
    return StandingFiles.in(folder.resolve("out"));
  }

  /** What is laid anew is kept: where nothing is kept, nothing was laid. */
  @Test
  void theSameQuestionOfAnUnchangedFolderIsAnsweredWithoutLaying() throws IOException {
    String first = told("--width", "90cm");
    Map<String, String> made = standing();
    assertThat(first).contains("does not fit").contains("panel needs 94 cm");
    Files.delete(layings());
    assertThat(told("--width", "90cm")).isEqualTo(first);
    assertThat(standing()).isEqualTo(made);
    assertThat(layings()).doesNotExist();
    assertThat(told("--width", "100cm")).doesNotContain("does not fit");
    assertThat(layings()).exists();
    assertThat(told("--width", "90cm")).as("out held another answer").isEqualTo(first);
    assertThat(standing()).isEqualTo(made);
  }

  @Test
  void whatWasMadeAndIsGoneOrChangedIsMadeAnew() throws IOException {
    String first = told();
    Map<String, String> made = standing();
    Path table = folder.resolve("out/cloth/yardage.csv");
    Files.writeString(table, Files.readString(table).replace("1.6", "1.5"));
    assertThat(told()).isEqualTo(first);
    assertThat(standing()).isEqualTo(made);
    Files.delete(table);
    assertThat(told()).isEqualTo(first);
    assertThat(standing()).isEqualTo(made);
    Files.writeString(folder.resolve("out/cloth/old.csv"), "size\n");
    assertThat(told()).isEqualTo(first);
    assertThat(standing()).as("what was asked last and nothing else").isEqualTo(made);
  }

  @Test
  void anAnswerThatWasTamperedWithOrIsOfAnotherChartIsNotTold() throws IOException {
    String first = told();
    String kept = Files.readString(answer());
    assertThat(kept).contains("1.6 m");
    Files.writeString(answer(), kept.replace("1.6 m", "1.5 m"));
    assertThat(told()).isEqualTo(first).contains("1.6 m");
    Files.writeString(folder.resolve("sizes.csv"), "size,long (cm)\nS,148\nM,150\nL,300\n");
    assertThat(told()).contains("148 cm in size S").doesNotContain("152 cm in size S");
    Files.writeString(folder.resolve("sizes.csv"), "size,long (cm)\nS,152\nM,150\nL,300\n");
    Files.writeString(answer(), kept);
    assertThat(told()).as("its files are gone").isEqualTo(first);
  }
}
