package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * A document of odd things: pieces cut once, twice, four and five times, on the fold, mirrored, on
 * the bias, apart; three cloths, one of them with a nap, one piece of two cloths; views that share
 * pieces; sizes that are words.
 */
record OddThings(Path folder, Console console) {
  static final List<String> SIZES = List.of("XS", "S/M", "2T", "XXL");

  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String CHART =
      """
      size,waist (cm),hip (cm)
      XS,60,84
      "S/M",86,100
      "2T",112,126
      XXL,130,160
      """;

  private static final String DOCUMENT =
      """
      language 1
      pattern "Odd things"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base XS
      units centimetres
      fabric main woven "Plain cotton"
        widths 90 cm, 44 in, 118 cm
        nap either way
      fabric velvet woven "Velvet"
        widths 112 cm, 140 cm
        nap one way
      fabric lining woven "Lining"
        widths 90 cm
      piece panel "Panel" number 1
        cut 2 of main, on the fold
        cut 1 of lining, on the fold
        rectangle hip / 4 by 40 cm, edges lower, side, upper, centre
        fold centre
        allowance 1 cm
        grain along centre
      piece band "Waistband" number 2
        cut 1 of main
        cut 2 of velvet
        rectangle waist by 18 cm, edges lower, end_right, upper, end_left
        allowance 1 cm
        grain along end_left
        point half_lower on lower at 50% from start
        point half_upper on upper at 50% from start
        split halves is half_lower to half_upper, allowance 1 cm into left_band, right_band
      piece tall "Tall" number 3
        cut 2 of main, mirrored
        rectangle 20 cm by 80 cm, edges lower, right_side, upper, left_side
        allowance 1 cm
        grain along left_side
      piece five "Five tabs" number 4
        cut 5 of main
        rectangle 12 cm by 7 cm, edges lower, right_side, upper, left_side
        allowance 1 cm
        grain along left_side
      piece four "Four tabs" number 5
        cut 4 of velvet, mirrored
        point a at 0 cm, 0 cm
        point b from a right 10 cm
        point c from b up 14 cm then left 2 cm
        point d from a up 9 cm
        outline low is a to b, right is b to c, top is c to d, left is d to a
        allowance 1 cm
        grain along left
      piece strip "Bias strip" number 6
        cut 1 of lining
        rectangle 60 cm by 4 cm, edges lower, right_side, upper, left_side
        allowance 0 cm
        grain at 45 deg
      seam ring band.end_right with band.end_left
      view A "All"
        pieces panel, band, tall, five, four, strip
      view B "Less"
        pieces panel, band, tall
      """;

  /** The pattern in a folder. */
  static OddThings in(Path folder) throws IOException {
    Files.writeString(folder.resolve("pattern.hem"), DOCUMENT);
    Files.writeString(folder.resolve("sizes.csv"), CHART);
    return new OddThings(folder, new Console());
  }

  /** What a command answers that goes well. */
  String run(String... arguments) {
    console.clear();
    int code = console.run(arguments);
    assertThat(code).as(console.err()).isZero();
    return console.out();
  }

  /** What {@code cloth} answers, with so little search that it takes no time. */
  String cloth(String... arguments) {
    List<String> all = new ArrayList<>(List.of("cloth", folder.toString(), "--work", "300"));
    all.addAll(List.of(arguments));
    return run(all.toArray(String[]::new));
  }

  /** The rows of its answer as JSON. */
  List<JsonNode> rows(String... arguments) throws IOException {
    String answer =
        cloth(Stream.concat(Arrays.stream(arguments), Stream.of("--json")).toArray(String[]::new));
    List<JsonNode> rows = new ArrayList<>();
    JSON.readTree(answer).get("rows").forEach(rows::add);
    return rows;
  }

  /** Some fields of a row, as text. */
  static String cell(JsonNode row, String... fields) {
    return String.join(" ", Arrays.stream(fields).map(each -> row.get(each).asText()).toList());
  }

  /** A number to one digit, without a point where it is whole. */
  static String plain(double number) {
    double rounded = Math.rint(number * 10) / 10;
    return rounded == Math.rint(rounded) ? Long.toString((long) rounded) : "" + rounded;
  }
}
