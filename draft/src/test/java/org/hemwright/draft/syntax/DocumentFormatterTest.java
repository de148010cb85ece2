package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DocumentFormatterTest {
  private static Document read(String text) {
    return DocumentReader.read("pattern.hem", text);
  }

  private static String format(String text) {
    return DocumentFormatter.format(read(text));
  }

  private static List<String> samples() {
    List<String> texts = new ArrayList<>(SampleTexts.examples().values());
    texts.add(SampleTexts.sketch());
    texts.addAll(SampleTexts.guideBlocks());
    return texts;
  }

  /** What is shown to designers is set as their documents are. */
  @Test
  void theExamplesAndTheGuideStandAsTheyAreSet() {
    for (String text : SampleTexts.examples().values()) {
      assertThat(format(text)).isEqualTo(text);
    }
    for (String text : SampleTexts.guideBlocks()) {
      assertThat(format(text)).isEqualTo(text);
    }
  }

  @Test
  void setsNeighboursInColumns() {
    assertThat(
            format(
                """
                language 1
                dial hip_ease = 4cm from 0 cm to 12 cm "Ease"   # how much
                dial length = 58 cm   from  35 cm to 95 cm "Waist to hem"
                let rise=1 cm,then 1.3 cm from size 22

                piece panel   "Skirt" number 1
                   # the frame
                   point a at 0 cm,-2 cm
                   curve side_line from a leaving up to b
                   notch side at 12 cm from start

                   let x = ( hip -2 cm )/4*( - 3 cm)
                seam s panel.a with panel . b
                seam side panel.c with panel.d
                """))
        .isEqualTo(
            """
            language 1
            dial hip_ease = 4 cm    from 0 cm to 12 cm    "Ease"  # how much
            dial length   = 58 cm   from 35 cm to 95 cm   "Waist to hem"
            let rise      = 1 cm, then 1.3 cm from size 22

            piece panel "Skirt" number 1
              # the frame
              point a         at 0 cm, -2 cm
              curve side_line from a leaving up to b
              notch side at 12 cm from start

              let x = (hip -2 cm) / 4 * (-3 cm)
            seam s panel.a with panel . b
            seam side panel.c with panel.d
            """);
  }

  @Test
  void linesThatGoOnAreIndentedOnceMore() {
    assertThat(
            format(
                """
                language 1
                fabric main knit
                    widths 115 cm,   # the first
                  # and
                 150 cm
                let x = (hip +
                waist)
                """))
        .isEqualTo(
            """
            language 1
            fabric main knit
              widths 115 cm,  # the first
                # and
                150 cm
            let x = (hip +
            waist)
            """);
  }

  @Test
  void aLineThatCannotBeReadStaysAsItIs() {
    assertThat(format("language  1\nfold   x  \n\tdial  =  3\n   \n\n# end"))
        .isEqualTo("language 1\nfold   x\n\tdial  =  3\n\n\n# end\n");
  }

  @Test
  void keepsTheLineEndsOfTheDocument() {
    assertThat(format("language 1\r\nversion   2.0.1-b\r\n"))
        .isEqualTo("language 1\r\nversion 2.0.1-b\r\n");
  }

  @Test
  void formattingTwiceIsFormattingOnceAndSaysTheSame() {
    assertThat(samples())
        .allSatisfy(
            text -> {
              String once = format(text);
              assertThat(Trees.of(read(once))).isEqualTo(Trees.of(read(text)));
              assertThat(format(once)).isEqualTo(once);
            });
  }

  @Test
  void blanksDoNotMatter() {
    Random random = new Random(3);
    for (String text : samples()) {
      String tree = Trees.of(read(text));
      String neat = format(text);
      for (int round = 0; round < 20; round++) {
        String loose = loosened(text, random);
        assertThat(Trees.of(read(loose))).isEqualTo(tree);
        assertThat(format(loose)).isEqualTo(neat);
      }
    }
  }

  @Test
  void documentsWithSlipsKeepTheirFindingsAndSettle() {
    List<SingleSlips.Slip> slips = SingleSlips.of(SampleTexts.sketch());
    for (int i = 0; i < slips.size(); i += 7) {
      Document slipped = read(slips.get(i).text());
      String once = DocumentFormatter.format(slipped);
      assertThat(read(once).findings().stream().map(f -> f.code()))
          .as(slips.get(i).toString())
          .isEqualTo(slipped.findings().stream().map(f -> f.code()).toList());
      assertThat(format(once)).isEqualTo(once);
    }
  }

  /** The same document with other gaps between its tokens. */
  private static String loosened(String text, Random random) {
    Source source = new Source("loose", text);
    StringBuilder loose = new StringBuilder();
    for (int number = 1; number <= source.lines(); number++) {
      Line line = LineLexer.cut(source, number);
      loose.append(line.atLeftEdge() ? "" : "    ");
      for (int i = 0; i < line.tokens().size(); i++) {
        Token token = line.tokens().get(i);
        boolean mayGrow = !token.glued() && i > 0;
        loose
            .append(mayGrow ? " ".repeat(1 + random.nextInt(3)) : "")
            .append(source.text(token.span()));
      }
      line.comment()
          .ifPresent(
              comment ->
                  loose
                      .append(line.tokens().isEmpty() ? "" : " ".repeat(1 + random.nextInt(4)))
                      .append(source.text(comment)));
      loose.append(" ".repeat(random.nextInt(3))).append('\n');
    }
    return loose.toString();
  }
}
