package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Statement.PieceSection;
import org.hemwright.draft.syntax.Statement.Unread;
import org.hemwright.pattern.finding.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentReaderTest {
  private static Document read(String text) {
    return DocumentReader.read("pattern.hem", "language 1\n" + text);
  }

  private static List<String> codes(Document document) {
    return document.findings().stream().map(Finding::code).toList();
  }

  @Test
  void indentedLinesBelongToTheSectionAbove() {
    Document read =
        read(
            """
            piece front "Front" number 1
              fold centre

            # a note at the edge
              grain up
            let x = 3 cm
            """);
    assertThat(read.findings()).isEmpty();
    assertThat(read.statements()).hasSize(3);
    assertThat(((PieceSection) read.statements().get(1)).body()).hasSize(2);
  }

  @Test
  void aStatementGoesOnAfterACommaAndInsideBrackets() {
    String lines =
        """
        piece front "Front" number 1
          outline top is a to b,   # the first
            # and the second
            side is b to c,
          hem is c to a
          let x = (3 cm
            + 4 cm
            ) * 2
          curve c from a to b,
            then straight to d
        """;
    Document read = read(lines);
    assertThat(read.findings()).isEmpty();
    String joined =
        lines
            .replaceAll("#.*", "")
            .replaceAll(",\\s+", ", ")
            .replace("cm\n", "cm")
            .replace("cm\n", "");
    joined = joined.replaceAll("cm\\s+\\+ 4 cm\\s+\\)", "cm + 4 cm)");
    assertThat(Trees.of(read(joined))).isEqualTo(Trees.of(read));
  }

  @Test
  void everyStatementsSpanIsItsOwnText() {
    List<String> texts = new ArrayList<>(SampleTexts.examples().values());
    texts.add(SampleTexts.sketch());
    for (String text : texts) {
      Source source = new Source("p", text);
      Document read = DocumentReader.read("p", text);
      for (Statement statement : read.statements()) {
        String own = source.text(statement.span());
        String language = own.startsWith("language") ? "" : "language 1\n";
        assertThat(own).doesNotContain("#").isEqualTo(own.strip());
        List<Statement> alone = DocumentReader.read("p", language + own).statements();
        Statement again = alone.get(alone.size() - 1);
        if (statement instanceof Statement.Section section) {
          for (Statement line : section.body()) {
            String lineText = source.text(line.span());
            assertThat(lineText).doesNotContain("#").isEqualTo(lineText.strip());
            List<Statement> within =
                DocumentReader.read("p", language + own + "\n  " + lineText).statements();
            assertThat(Trees.of(((Statement.Section) within.get(within.size() - 1)).body()))
                .isEqualTo(Trees.of(List.of(line)));
          }
        } else {
          assertThat(Trees.of(List.of(again))).isEqualTo(Trees.of(List.of(statement)));
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "point from at 0 cm, 0 cm",
        "point point from from right 3 cm",
        "point up from from up up then right down",
        "point to midway from from to to",
        "line line from to to from to at",
        "curve curve from from leaving up to to arriving left, then straight to straight",
        "curve c from a leaving along l to b",
        "curve c from a leaving along b to c to d",
        "path straight is straight to to then straight then from",
        "let length = length of length + length",
        "let round = round / 2 + round round to 1 cm",
        "let of = 90% of of",
        "let then = 1 cm, then then from size 22",
        "let when = when when when > when, otherwise otherwise",
        "let girth = larger of smaller and larger",
        "let size = 1 cm when size > 3 cm, otherwise size",
        "notch notch at notch as as",
        "notch lower at length of back.waist from start",
        "notch at at at",
        "allowance 1 cm, then none, none none",
        "outline is is is, edges is edges",
        "cut 1 of of, mirrored",
        "corner and and and square to and",
        "level level at level",
      })
  void noWordIsReserved(String line) {
    Document read = read("piece p \"P\" number 1\n  " + line);
    assertThat(read.findings()).as(() -> codes(read).toString()).isEmpty();
  }

  @Test
  void whatFollowsAPathIsItsOwnUnlessTheLineNeedsIt() {
    assertThat(Trees.readable(body("curve c from a leaving along l to b").get(0)))
        .contains("leaving=Optional[Along[path=l]]", "to=b");
    assertThat(Trees.readable(body("curve c from a leaving along l to b to d").get(0)))
        .contains("leaving=Optional[Along[path=Straight[from=l, to=b]]]", "to=d");
    assertThat(Trees.readable(body("notch e at length of l from a from start").get(0)))
        .contains("Part[path=l, from=a, to=none]");
  }

  @Test
  void productsBindBeforeSumsAndSharesBeforeProducts() {
    assertThat(Trees.readable(body("let x = a + b * c - d / 2").get(0)))
        .contains(
            "Binary[operator=MINUS, left=Binary[operator=PLUS, left=a,"
                + " right=Binary[operator=TIMES, left=b, right=c]],"
                + " right=Binary[operator=OVER, left=d, right=2.0 NONE]]");
    assertThat(Trees.readable(body("let x = 90% of a / 2").get(0)))
        .contains("Binary[operator=OVER, left=Binary[operator=TIMES, left=90.0 PERCENT, right=a]");
    assertThat(Trees.readable(body("let x = a/3/4 - 3/4 in").get(0)))
        .contains("left=Binary[operator=OVER, left=a, right=3.0 NONE], right=4.0 NONE]")
        .contains("right=0.75 IN");
    assertThat(Trees.readable(body("let x = 1 3/4in").get(0))).contains("1.75 IN");
  }

  @Test
  void cornersOfACurveAreSaid() {
    assertThat(Trees.readable(body("curve c from a to b, then to d").get(0)))
        .contains("to=b", "smoothOn=false", "Corner[leaving=none]", "to=d");
    assertThat(Trees.readable(body("curve c from a straight to b then to d").get(0)))
        .doesNotContain("Corner");
    assertThat(Trees.readable(body("curve c from a straight to b then leaving up to d").get(0)))
        .contains("Corner[leaving=Optional[Compass[way=UP]]]");
    assertThat(Trees.readable(body("curve c from a to b then leaving up through d to e").get(0)))
        .contains("Corner[leaving=Optional[Compass[way=UP]]]", "to=d", "smoothOn=true");
  }

  @Test
  void theSideOfTwoCompassesMayBeToldFromEitherEnd() {
    assertThat(Trees.readable(body("point p 3 cm from a and 4 cm from b, left of a to b").get(0)))
        .contains("left=true");
    assertThat(Trees.readable(body("point p 3 cm from a and 4 cm from b, left of b to a").get(0)))
        .contains("left=false");
    assertThat(Trees.readable(body("point p 3 cm from a and 4 cm from b, right of b to a").get(0)))
        .contains("left=true");
  }

  @Test
  void anUnreadLineKeepsTheNameItWouldHaveGiven() {
    Document read =
        read("piece front \"Front\" nummer seven\n  point tip from neck 3 cm\nlet x = ,");
    Unread piece = (Unread) read.statements().get(1);
    assertThat(piece.word()).isEqualTo("piece");
    assertThat(piece.name().map(Name::text)).isEqualTo(Optional.of("front"));
    Unread point = (Unread) piece.body().get(0);
    assertThat(point.word()).isEqualTo("point");
    assertThat(point.name().map(Name::text)).isEqualTo(Optional.of("tip"));
    Unread let = (Unread) read.statements().get(2);
    assertThat(let.name().map(Name::text)).isEqualTo(Optional.of("x"));
  }

  @Test
  void aSlipNeverSwallowsTheNextSection() {
    Document read =
        read(
            """
            let x = (3 cm
            let y = 4 cm
            peace front "Front" number 1
              fold centre
            nonsense here
              more nonsense ( here
            piece back "Back" number 2
              fold centre
            """);
    assertThat(codes(read)).containsExactly("bracket-unclosed", "unknown-word", "unknown-line");
    assertThat(read.statements().stream().map(s -> s.getClass().getSimpleName()))
        .containsExactly("Language", "Let", "Let", "PieceSection", "Unread", "PieceSection");
  }

  @Test
  void everyProblemIsToldAtOnce() {
    assertThat(codes(read("let x = 3,5 cm\nlet y = 4 inches\nlet z = \nby Tern Cove")))
        .containsExactly("decimal-comma", "unknown-unit", "line-ends-early", "words-unquoted");
  }

  private static List<Statement> body(String line) {
    Document read = read("piece p \"P\" number 1\n  " + line);
    assertThat(read.findings()).as(() -> codes(read).toString()).isEmpty();
    return ((Statement.Section) read.statements().get(1)).body();
  }
}
