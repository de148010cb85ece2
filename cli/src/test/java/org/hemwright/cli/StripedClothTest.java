package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a table of striped cloth tells: the repeat that it was laid for, what is taken for granted,
 * what nothing matches, and how the maker must lay her cloth. Uneven checks are cut from a single
 * layer (handbook section 5, [31]); stripes are laid right side out, bars on bars (handbook section
 * 5, Folds; common practice).
 */
class StripedClothTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String DOCUMENT =
      """
      language 1
      pattern "Check top"
      version 1.0
      dated 2026-11-27
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base S
      units centimetres
      spelling British

      fabric plaid woven "Cotton check"
        widths 115 cm
        repeat along 10 cm
        repeat across 8 cm
        match side_match, centre_match

      piece front "Front" number 1
        cut 1 of plaid, on the fold
        rectangle wide by 40 cm, edges hem, side, top, centre
        fold centre
        allowance 1 cm
        grain along centre

      piece back "Back" number 2
        cut 2 of plaid, mirrored
        rectangle wide by 42 cm, edges hem, side, top, centre
        allowance 1 cm
        grain along centre

      piece pocket "Pocket" number 3
        cut 1 of plaid
        rectangle 12 cm by 14 cm, edges hem, side, top, other
        allowance 1 cm
        grain along side

      seam side_seams back.side with front.side, ease 0 cm to 2 cm
        notch at 12 cm from start as side_match

      seam centre_back back.centre with back.centre
        notch at 20 cm from start as centre_match
      """;

  private static final String EVEN = "repeat across 8 cm\n";
  private static final String UNEVEN = "repeat across 8 cm, uneven\n";

  @TempDir Path folder;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  /** In size S front and back are 24 cm each, three repeats; in L 26 cm. */
  private String text(String document, String... arguments) throws IOException {
    Files.writeString(folder.resolve("pattern.hem"), document);
    Files.writeString(folder.resolve("sizes.csv"), "size,wide (cm)\nS,24\nL,26\n");
    out.reset();
    err.reset();
    List<String> all = new ArrayList<>(List.of("cloth", folder.toString(), "--work", "400"));
    Stream.of(arguments).forEach(all::add);
    all.addAll(List.of("--out", folder.resolve("made").toString()));
    assertThat(Main.run(out, err, all.toArray(String[]::new)))
        .as(err.toString(StandardCharsets.UTF_8))
        .isZero();
    return out.toString(StandardCharsets.UTF_8);
  }

  private List<JsonNode> rows(String document) throws IOException {
    List<JsonNode> rows = new ArrayList<>();
    JSON.readTree(text(document, "--json")).get("rows").forEach(rows::add);
    return rows;
  }

  private String made(String file) throws IOException {
    return Files.readString(folder.resolve("made").resolve(file));
  }

  /** The words on a layout. */
  private String drawn() throws IOException {
    return Pattern.compile("aria-label=\"([^\"]*)\"")
        .matcher(made("layouts/plaid-size-s-115-cm.svg"))
        .results()
        .map(found -> found.group(1))
        .collect(Collectors.joining(" "));
  }

  private String told() {
    return err.toString(StandardCharsets.UTF_8);
  }

  @Test
  void theRepeatThatItWasLaidForStandsInEveryForm() throws IOException {
    String said = text(DOCUMENT);
    assertThat(said)
        .contains("plaid: Cotton check, repeat 10 cm along and 8 cm across")
        .contains("without a notch to match, and so laid where there is room: Pocket");
    assertThat(made("yardage.html")).contains("repeat 10 cm along and 8 cm across");
    assertThat(made("yardage.csv")).contains(",100.00,80.00,,");
    assertThat(drawn())
        .contains("Repeat 10 cm along and 8 cm across.")
        .contains("pin the layers bar on bar.");
    JsonNode repeat = rows(DOCUMENT).get(0).get("repeat");
    assertThat(repeat.get("along_mm").asDouble()).isEqualTo(100);
    assertThat(repeat.get("across_mm").asDouble()).isEqualTo(80);
    assertThat(repeat.get("uneven")).isEmpty();
    assertThat(text(DOCUMENT.replace("  repeat across 8 cm\n", "")))
        .contains("plaid: Cotton check, repeat 10 cm along\n")
        .doesNotContain("middle");
  }

  @Test
  void whereASideSlantsMoreThanItsMateItIsToldHowFarTheBarsPart() throws IOException {
    assertThat(text(DOCUMENT)).doesNotContain("part by up to");
    // the side leans in by 8 cm over 40 and is 40.8 cm long: 28.8 cm along it rise 28.2 cm
    String slanted =
        DOCUMENT.replace(
            "rectangle wide by 40 cm, edges hem, side, top, centre\n",
            "point low at wide, 0 cm\n"
                + "  point high at wide - 8 cm, 40 cm\n"
                + "  point up at 0 cm, 40 cm\n"
                + "  point down at 0 cm, 0 cm\n"
                + "  outline hem is down to low, side is low to high, top is high to up,"
                + " centre is straight\n");
    assertThat(text(slanted))
        .contains("Bars across plaid meet at the notch `side_match` of back and front")
        .contains("part by up to 5.6 mm along the seam side_seams in every size");
  }

  /** A check of another size is laid as if the document had said so. */
  @Test
  void onACheckOfAnotherSizeItIsLaidAsIfThatWereItsOwn() throws IOException {
    String asked = text(DOCUMENT, "--repeat", "13cm", "--repeat-across", "6cm");
    assertThat(asked).contains("repeat 13 cm along and 6 cm across");
    String own =
        text(
            DOCUMENT
                .replace("repeat along 10 cm", "repeat along 13 cm")
                .replace(EVEN, "repeat across 6 cm\n"));
    assertThat(asked).isEqualTo(own);
    assertThat(text(DOCUMENT, "--repeat", "13cm"))
        .contains("repeat 13 cm along and 8 cm across")
        .doesNotContain("about");
  }

  @Test
  void unevenChecksAreLaidSingleInEveryRow() throws IOException {
    String document = DOCUMENT.replace(EVEN, UNEVEN);
    assertThat(rows(DOCUMENT)).anyMatch(row -> !row.get("fold").asText().equals("single"));
    List<JsonNode> rows = rows(document);
    assertThat(rows).hasSize(2).allMatch(row -> row.get("fold").asText().equals("single"));
    assertThat(rows.get(0).get("repeat").get("uneven").get(0).asText()).isEqualTo("across");
    assertThat(text(document))
        .contains("repeat 10 cm along and 8 cm across (uneven across)")
        .contains("uneven across, so never folded; laid whole, though drawn as a half: Front");
    assertThat(made("yardage.csv")).contains(",100.00,80.00,across,");
    assertThat(drawn())
        .contains("Never fold it; lay all pieces one way, each by the bars.")
        .contains("uneven bars of the cloth");
  }

  @Test
  void whereTheGirthIsNoWholeNumberOfRepeatsTheSeamIsNamedThatIsNamedLast() throws IOException {
    // girth of S 96 cm, twelve repeats; of L 104 cm, thirteen; with 7 cm bars 5 cm and 6 cm off
    text(DOCUMENT.replace(EVEN, UNEVEN));
    assertThat(told()).doesNotContain("lies");
    String other = DOCUMENT.replace(EVEN, "repeat across 7 cm, uneven\n");
    text(other);
    assertThat(told())
        .contains("Across the uneven checks of plaid the notch `centre_match` of back lies")
        .contains("10 mm to 20 mm beside that of back in every size")
        .contains("name last in the `match` line the notch of the seam that shows least");
    text(other.replace("match side_match, centre_match", "match centre_match, side_match"));
    assertThat(told())
        .contains("the notch `side_match`")
        .contains("10 mm to 20 mm beside")
        .doesNotContain("`centre_match`");
  }

  @Test
  void askedForAFoldThatTheyCannotHaveTheyAreLaidSingle() throws IOException {
    assertThat(text(DOCUMENT.replace(EVEN, UNEVEN), "--fold", "lengthwise"))
        .contains("single in every size")
        .contains("never folded");
  }
}
