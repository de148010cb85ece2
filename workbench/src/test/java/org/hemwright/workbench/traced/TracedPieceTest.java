package org.hemwright.workbench.traced;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.exchange.drawing.DrawingReader;
import org.hemwright.pattern.traced.TracedDrawing;
import org.junit.jupiter.api.Test;

/** What is written of a drawing as she says what its parts are. */
class TracedPieceTest {
  private static final String TEXT =
      """
      language 1
      pattern "Copy"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 12

      fabric main woven
        widths 150 cm

      make
        do "Look at it"
      """;

  private static TracedDrawing drawing(String inside) {
    String svg =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"300mm\" height=\"700mm\" viewBox=\"0 0"
            + " 300 700\">"
            + inside
            + "</svg>";
    return DrawingReader.read("traced/a.svg", svg.getBytes(StandardCharsets.UTF_8))
        .drawing()
        .orElseThrow();
  }

  private static TracingAnswers answers(
      Map<String, PartRole> roles, List<TracingAnswers.EdgeAnswer> edges, String fold) {
    return new TracingAnswers(
        "traced/a.svg",
        roles,
        "",
        "top left",
        true,
        12,
        "1 cm",
        edges,
        new TracingAnswers.Card(
            "panel", "Panel \"A\"", 3, 2, "main", false, fold, "1.5 cm", "", Optional.empty()));
  }

  private static TracingAnswers.EdgeAnswer edge(String name) {
    return new TracingAnswers.EdgeAnswer(name, "", false);
  }

  @Test
  void aCutLineLosesItsAllowanceAndEdgesEndAtCornersAndDots() {
    TracedDrawing drawing =
        drawing(
            "<g id=\"layer\"><path id=\"cut\" d=\"M0 0H100V200H0Z\"/><circle id=\"fork\" cx=\"100\""
                + " cy=\"80\" r=\"1\"/><path d=\"M20 20V120\"/></g><path d=\"M30 30h10\"/>");
    Map<String, PartRole> roles = new LinkedHashMap<>();
    roles.put("cut", PartRole.CUT_LINE);
    roles.put("fork", PartRole.CORNERS);
    roles.put("line 3", PartRole.GRAIN);
    roles.put("line 4", PartRole.INNER_LINE);
    Document document = DocumentReader.read("pattern.hem", TEXT);
    TracedPiece piece =
        TracedPiece.of(
            document,
            drawing,
            answers(
                roles,
                List.of(
                    edge("waist"),
                    edge("upper side"),
                    new TracingAnswers.EdgeAnswer("side", "", false),
                    new TracingAnswers.EdgeAnswer("hem", "4 cm", false),
                    new TracingAnswers.EdgeAnswer("", "", true)),
                ""),
            none -> List.of(),
            text -> List.of());
    assertThat(piece.lines())
        .containsExactly(
            "piece panel traced \"traced/a.svg\" as \"Panel \"\"A\"\"\" number 3",
            "  cut 2 of main",
            "  outline traced \"cut\" from the top left clockwise, less 1 cm, edges waist,"
                + " upper_side to \"fork\", side, hem less 4 cm, left out",
            "  allowance 1.5 cm",
            "  grain traced \"line 3\"",
            "  inner line_4 is traced \"line 4\"");
    assertThat(piece.ends().ends()).hasSize(5);
    assertThat(piece.text()).contains("  widths 150 cm\n\npiece panel", "\n\nmake\n");
    assertThat(DocumentReader.read("pattern.hem", piece.text()).findings()).isEmpty();
  }

  @Test
  void namesAreProposedAndNothingElseIs() {
    DrawnParts parts =
        DrawnParts.of(
            drawing(
                "<g id=\"Front\"><path id=\"sew line\" d=\"M0 0H100V200H0Z\"/><g"
                    + " id=\"notches\"><path d=\"M0 9h3\"/><path d=\"M0 19h3\"/></g><path"
                    + " id=\"cutter\" d=\"M5 5h9\"/></g><path d=\"M30 30h10\"/>"));
    assertThat(parts.parts())
        .extracting(part -> part.name() + ": " + part.proposed().word() + " " + part.round())
        .containsExactlyInAnyOrder(
            "sew line: stitch line true",
            "Front: left out false",
            "notches: notches false",
            "cutter: left out false",
            "line 5: left out false");
  }
}
