package org.hemwright.workroom.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.hemwright.workroom.text.NameBeside.Kind;
import org.junit.jupiter.api.Test;

/** The forms are those of docs/booklet.md and of the tables of docs/language.md. */
class NameBesideTest {
  private static final String PROSE =
      """
      The yoke lies double. {figure yoke} {number yoke.depth in 14}

      {table numbers yoke_depth, yoke.depth, depth}

      # Steps

      ## sew_yoke_seam: Sew the yoke

      {for sizes 8 to 20: The yoke is narrow: {number depth}}

      ## sew_side
      """;

  private static final String SAMPLES =
      """
      date,size,where,note
      # yoke.neck is short
      2026-10-02,104,yoke.neck,"yoke, long"
      2026-10-02,104,yoke.neck allowance,
      2026-10-02,104,"depth",
      """;

  private static String changed(NameBeside name, String file, String text) {
    return NameBeside.changed(text, name.said(file, text));
  }

  @Test
  void aPieceIsCalledOtherwiseWhereItIsMeantForCertain() {
    NameBeside name =
        new NameBeside(
            "", "yoke", "saddle", Kind.PIECE, Map.of("sew_yoke_seam", "sew_saddle_seam"));
    assertThat(changed(name, "booklet.md", PROSE))
        .isEqualTo(
            PROSE
                .replace("{figure yoke}", "{figure saddle}")
                .replace("yoke.depth", "saddle.depth")
                .replace("## sew_yoke_seam:", "## sew_saddle_seam:"));
    assertThat(changed(name, "samples.csv", SAMPLES))
        .isEqualTo(
            SAMPLES
                .replace("104,yoke.neck,", "104,saddle.neck,")
                .replace("yoke.neck allowance", "saddle.neck allowance"));
    String rules = "piece,edge,at\nyoke,yoke,end\nfront,yoke,end\n";
    assertThat(changed(name, "rules.csv", rules))
        .isEqualTo("piece,edge,at\nsaddle,yoke,end\nfront,yoke,end\n");
    assertThat(name.perhaps("booklet.md", PROSE))
        .extracting(NameBeside.Place::at)
        .containsExactly(
            PROSE.indexOf("yoke lies"),
            PROSE.indexOf("yoke\n\n{for"),
            PROSE.indexOf("yoke is narrow"));
  }

  @Test
  void anEdgeIsFollowedOnItsOwnPieceOnly() {
    NameBeside name = new NameBeside("yoke", "neck", "neckline", Kind.EDGE, Map.of());
    assertThat(changed(name, "samples.csv", SAMPLES))
        .isEqualTo(
            SAMPLES
                .replace("104,yoke.neck,", "104,yoke.neckline,")
                .replace("yoke.neck allowance", "yoke.neckline allowance"));
    assertThat(changed(name, "rules.csv", "piece,edge\nyoke,neck\nfront,neck\n"))
        .isEqualTo("piece,edge\nyoke,neckline\nfront,neck\n");
    assertThat(changed(name, "booklet.md", PROSE)).isEqualTo(PROSE);
  }

  @Test
  void aNumberIsFollowedInPlacesAndSamples() {
    NameBeside name = new NameBeside("", "depth", "yoke_height", Kind.NUMBER, Map.of());
    assertThat(changed(name, "booklet.md", PROSE))
        .isEqualTo(
            PROSE
                .replace("yoke.depth, depth}", "yoke.depth, yoke_height}")
                .replace("{number depth}", "{number yoke_height}"));
    assertThat(changed(name, "samples.csv", SAMPLES))
        .isEqualTo(SAMPLES.replace("\"depth\"", "\"yoke_height\""));
    NameBeside own = new NameBeside("yoke", "depth", "height", Kind.NUMBER, Map.of());
    assertThat(changed(own, "booklet.md", PROSE))
        .isEqualTo(PROSE.replace("yoke.depth", "yoke.height"));
  }

  @Test
  void inTheDocumentOnlyQuotedWordsMayMeanIt() {
    String document = "sew yoke_seam, note \"The yoke and the back yoke\"\npiece yoke \"Yoke\"\n";
    NameBeside name = new NameBeside("", "yoke", "back_saddle", Kind.PIECE, Map.of());
    assertThat(NameBeside.changed(document, name.perhaps("pattern.hem", document)))
        .isEqualTo(
            """
            sew yoke_seam, note "The back_saddle and the back back_saddle"
            piece yoke "Yoke"
            """);
    NameBeside two = new NameBeside("", "back_yoke", "back_saddle", Kind.PIECE, Map.of());
    assertThat(NameBeside.changed(document, two.perhaps("pattern.hem", document)))
        .contains("The yoke and the back saddle");
  }
}
