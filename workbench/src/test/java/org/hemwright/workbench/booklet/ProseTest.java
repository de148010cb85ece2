package org.hemwright.workbench.booklet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.part.Parts;
import org.hemwright.booklet.prose.ProseOutline;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.EditedFolder;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.folder.PatternFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The designer's text in the booklet. */
class ProseTest {
  private static BookletMaking with(String prose) {
    Map<String, String> texts = Map.of(PatternFolder.PROSE, prose);
    return Examples.booklet(new EditedFolder(PackedFolder.DEMO, new TreeMap<>(texts)), "");
  }

  private static String told(BookletMaking making, String part) {
    Section section = Parts.part(making.booklet(), part).orElseThrow();
    StringBuilder text = new StringBuilder();
    Block.texts(section.blocks()).forEach(each -> text.append(Inline.plain(each)).append('\n'));
    return text.toString();
  }

  private static String line(Finding finding) {
    return Workbench.wording(Optional.empty()).line(finding);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void theExamplesHaveTextsWithoutASlip(String example) {
    BookletMaking made = Examples.booklet(example);
    assertThat(made.findings()).isEmpty();
    assertThat(made.given().prose().part("cover")).isNotEmpty();
  }

  @Test
  void numbersAndTablesStandWhereTheyAreNamed() {
    BookletMaking made =
        with("# Care\n\nThe elastic is {number elastic_width} wide.\n\n{table elastics}\n");
    assertThat(made.findings()).isEmpty();
    assertThat(told(made, "care"))
        .contains("The elastic is 3\u00a0cm\u00a0\u00b7\u00a01\u00bc\u00a0in wide.")
        .contains("Elastic by size");
  }

  @Test
  void aStepMayHaveATitleOfHerOwn() {
    BookletMaking made = with("# Steps\n\n## sew_pocket_seam: Sew the pockets on\n\nSlowly.\n");
    assertThat(made.findings()).isEmpty();
    assertThat(told(made, "steps")).contains(". Sew the pockets on\n").contains("\nSlowly.\n");
    assertThat(made.posts(Optional.empty()))
        .anySatisfy(
            post ->
                assertThat(new String(post.bytes(), StandardCharsets.UTF_8))
                    .contains("Sew the pockets on"));
    assertThat(with("# Steps\n\n## sew_pocket_seem: Sew\n").findings())
        .singleElement()
        .satisfies(finding -> assertThat(line(finding)).contains("sew_pocket_seam"));
  }

  /** Common practice, no source: a turned piece shows its right side and is not laid anew. */
  @Test
  void layersAreToldAsTheyLie() {
    String steps = told(Examples.booklet("shingle-shirt"), "steps");
    assertThat(steps)
        .contains("Lay Back (5) between the two pieces of Yoke (6), whose right sides face")
        .contains("Turn Yoke (6) right side out through the neck, and draw the rolled parts out.")
        .contains("Lay Left front (1) and Right front (2) on Back (5), right sides together, side")
        .contains("outer edge to outer edge and end to end")
        .contains("Fold the back pleat on Back (5) along its lines")
        .doesNotContain("_");
    assertThat(told(Examples.booklet("brackish-skirt"), "steps"))
        .contains("Fold the inner dart and outer dart on Skirt back (2) with the right sides");
  }

  @Test
  void aSentenceForSomeNamesThemWhereTheBookletServesOthersToo() {
    BookletMaking made = with("# Care\n\n{for sizes 32 to 42: Sew it **twice**.} Then press.\n");
    assertThat(told(made, "care")).contains("In sizes 32 to 42: Sew it twice. Then press.");
    BookletMaking views = with("# Care\n\n{for view B: Press the pockets.}\n");
    assertThat(told(views, "care")).contains("For view B: Press the pockets.");
    BookletMaking cloth = with("# Care\n\n{for cloth main: Wash it.}\n");
    assertThat(told(cloth, "care")).contains("\nWash it.\n");
  }

  @Test
  void whatIsNotKnownIsToldWithItsLineAndColumn() {
    BookletMaking made =
        with(
            """
            # Suplies

            The {number elastic_widht} and {nonsense} here.

            # Steps

            ## sew_nothing

            {table sices}

            {figure shrot_panel}

            {for sizes 32 to 99: Never.}

            {for view B: open

            <b>no</b> [there](file:///etc/passwd)

            Now a {table sizes} in a line.
            """);
    List<String> lines = made.findings().stream().map(ProseTest::line).toList();
    assertThat(lines).hasSize(12);
    assertThat(lines.get(0)).startsWith("booklet.md:1:1: ").contains("Suplies", "supplies");
    assertThat(lines)
        .anyMatch(l -> l.startsWith("booklet.md:3:5: ") && l.contains("elastic_width"))
        .anyMatch(l -> l.startsWith("booklet.md:3:") && l.contains("nonsense"))
        .anyMatch(l -> l.startsWith("booklet.md:7:1: ") && l.contains("sew_nothing"))
        .anyMatch(l -> l.startsWith("booklet.md:9:1: ") && l.contains("sizes"))
        .anyMatch(l -> l.startsWith("booklet.md:11:1: ") && l.contains("short_panel"))
        .anyMatch(l -> l.startsWith("booklet.md:13:1: ") && l.contains("99"))
        .anyMatch(l -> l.startsWith("booklet.md:15:1: ") && l.contains("closed"))
        .anyMatch(l -> l.startsWith("booklet.md:17:1: ") && l.contains("HTML"))
        .anyMatch(l -> l.startsWith("booklet.md:19:7: ") && l.contains("paragraph of its own"));
  }

  @Test
  void whatIsForThePostsStaysOutOfTheBooklet() {
    BookletMaking made =
        with("# Steps\n\n## close_feed\n\nSlowly.\n\n### Posts\n\nSee the film.\n");
    assertThat(made.findings()).isEmpty();
    assertThat(told(made, "steps")).contains("Slowly.").doesNotContain("See the film.");
    assertThat(made.posts(Optional.empty()))
        .anyMatch(
            file ->
                file.name().endsWith(".md")
                    && new String(file.bytes(), StandardCharsets.UTF_8).contains("See the film."));
  }

  private static List<String> proposed(BookletMaking made, String before) {
    return made.proposals(before).all().stream().map(each -> each.text()).toList();
  }

  @Test
  void whatMayFollowIsProposed() {
    BookletMaking made = with("");
    assertThat(proposed(made, "# ")).containsExactlyElementsOf(Parts.IDS);
    assertThat(proposed(made, "# Steps\n\n## ")).contains("sew_pocket_seam");
    assertThat(proposed(made, "# Care\n\n## ")).isEmpty();
    assertThat(proposed(made, "It is {")).contains("number ", "for ", "version");
    assertThat(proposed(made, "It is {number ")).contains("elastic_width", "hip");
    assertThat(proposed(made, "It is {number hip in ")).contains("14");
    assertThat(proposed(made, "{table ")).contains("sizes", "finished", "cloth", "numbers ");
    assertThat(proposed(made, "{table numbers hip, ")).contains("elastic_width");
    assertThat(made.proposals("{table numbers hip, ").from()).isEqualTo(20);
    assertThat(proposed(made, "{figure ")).contains("sew_pocket_seam", "view A");
    assertThat(proposed(made, "{for sizes 8 to ")).contains("14");
    assertThat(proposed(made, "{number hip} and ")).isEmpty();
    assertThat(proposed(made, "Plain words ")).isEmpty();
  }

  /** Wherever words are put, they are read as those of the part or step that was meant. */
  @Test
  void thereIsRoomForWordsInTheBookletsOrder() {
    String text = "On the cover.\n\n# Care\n\nCold.\n";
    BookletMaking made = with(text);
    for (String step : List.of("", "sew_pocket_seam")) {
      for (String part : step.isEmpty() ? Parts.IDS : List.of("steps")) {
        ProseOutline.Where where = new ProseOutline.Where(part, step);
        ProseOutline.Spot spot = made.spot(text, where);
        String after =
            new StringBuilder(text)
                .insert(spot.at(), spot.insert())
                .insert(spot.caret(), "Here it is.")
                .toString();
        assertThat(ProseOutline.of(after).at(spot.caret())).isEqualTo(where);
        BookletMaking again = made.with(Optional.of(after));
        assertThat(again.findings()).isEmpty();
        List<Block> words =
            step.isEmpty() ? again.given().prose().part(part) : again.given().prose().step(step);
        assertThat(Block.texts(words).stream().map(Inline::plain)).contains("Here it is.");
        assertThat(Block.texts(again.given().prose().part("care")).stream().map(Inline::plain))
            .contains("Cold.");
      }
    }
    String both = "# Steps\n\n## sew_pocket_seam\n\nSlowly.\n\n# Care\n\nCold.\n";
    ProseOutline.Spot spot = made.spot(both, new ProseOutline.Where("steps", ""));
    assertThat(both.substring(0, spot.at())).isEqualTo("# Steps");
  }

  @Test
  void aNearNameIsMendedByOneEdit() {
    String slips =
        """
        # Caer

        It is {number elastic_widht} wide, {nubmer hip} round.

        {table sizs}

        # Steps

        ## sew pocket seem

        {for sizes 8 to 14: Slowly.
        """;
    BookletMaking made = with(slips);
    List<Finding> findings = made.findings();
    assertThat(findings).hasSize(6).allSatisfy(each -> assertThat(each.edit()).isPresent());
    String mended = slips;
    for (int i = 0; i < findings.size(); i++) {
      mended =
          made.with(Optional.of(mended)).findings().get(0).edit().orElseThrow().applyTo(mended);
    }
    assertThat(made.with(Optional.of(mended)).findings()).isEmpty();
    assertThat(mended).contains("# care", "{number elastic_width}", "Slowly.}\n");
  }

  @Test
  void otherWordsLeaveTheDrawingsAsTheyWere() {
    BookletMaking made = with("# Care\n\nCold.\n");
    BookletMaking other = made.with(Optional.of("# Care\n\nWarm.\n\n{table sizs}\n"));
    BookletMaking fresh = with("# Care\n\nWarm.\n\n{table sizs}\n");
    assertThat(other.booklet()).isEqualTo(fresh.booklet());
    assertThat(other.findings()).isEqualTo(fresh.findings()).hasSize(1);
  }

  @Test
  void anotherLanguageHasATextOfItsOwnAndWordsForWhatTheDocumentSays() {
    BookletMaking german = Examples.booklet(new PackedFolder("eddy-skirt"), "de");
    assertThat(german.findings()).isEmpty();
    String text =
        german.booklet().texts().stream().map(Inline::plain).collect(Collectors.joining("\n"));
    assertThat(text)
        .contains(
            "Eddy-Rock",
            "Bund (4) rechts auf rechts falten, so dass die beiden Enden aufeinanderliegen",
            "Seitenkante auf Seitenkante",
            "Tipp: Quer über jede obere Ecke, wo die Hand zieht.")
        .doesNotContain("Skirt", "skirt", "seam", "pocket", "edge", "waist", "the ");

    BookletMaking trousers = Examples.booklet(new PackedFolder("marram-trousers"), "de");
    assertThat(trousers.findings())
        .map(finding -> Workbench.wording(Optional.empty()).line(finding))
        .anyMatch(line -> line.contains("There is no “booklet.de.md”"))
        .anyMatch(line -> line.contains("words have none in “booklet.de.md”"));
  }

  @Test
  void theEndsOfAStripAreCalledSo() {
    String text =
        Examples.booklet("shingle-shirt").booklet().texts().stream()
            .map(Inline::plain)
            .collect(Collectors.joining("\n"));
    assertThat(text).contains("left end").doesNotContain("end edge", "edge edge", "right end edge");
  }
}
