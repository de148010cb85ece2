package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LiteralEditTest {
  private static String changed(String number, double to) {
    String before = "language 1\n# keep\ndial ease =  ";
    String after = "  from 0 cm to 9 cm \"Ease\" # and this";
    // The dial's other bounds measure lengths, so other kinds are read as a let.
    String text =
        number.endsWith("cm") || number.endsWith("mm") || number.endsWith("in")
            ? before + number + after
            : "language 1\nlet x = " + number + " # and this";
    Source source = new Source("p", text);
    Document read = DocumentReader.read("p", text);
    assertThat(read.findings()).isEmpty();
    Statement statement = read.statements().get(1);
    Expression value =
        statement instanceof Statement.Dial dial
            ? dial.value()
            : ((NumberRule.Plain) ((Statement.Let) statement).rule()).value();
    Expression.Literal literal = (Expression.Literal) value;
    String after2 = LiteralEdit.of(source, literal, to).applyTo(text);
    int start = literal.span().start();
    int end = after2.length() - (text.length() - literal.span().end());
    assertThat(after2)
        .startsWith(text.substring(0, start))
        .endsWith(text.substring(literal.span().end()));
    return after2.substring(start, end);
  }

  @ParameterizedTest
  @CsvSource({
    "58 cm, 593.4, 59.3 cm",
    "58 cm, 600, 60 cm",
    "58  cm, 600.2, 60  cm",
    "1.25 cm, 13.07, 1.31 cm",
    "4 mm, 4.3, 4.5 mm",
    "4mm, -4.3, -4.5mm",
    "1.125 mm, 2.2371, 2.237 mm",
    "-3 cm, 20, 2 cm",
    "1 1/4 in, 34.925, 1 3/8 in",
    "3/4 in, 25.4, 1 in",
    "1 in, 19.05, 3/4 in",
    "1 in, 0.1, 0 in",
    "1 3/32 in, 28.6, 1 1/8 in",
    "1 3/32 in, 29.36875, 1 5/32 in",
    "1 1/3 in, 42.4, 1 2/3 in",
    "1.5 in, 38.9, 1.55 in",
    "1.25 in, 38.9, 1.53 in",
    "-1 1/2 in, -34.9, -1 3/8 in",
    "90%, 0.8512, 85%",
    "90 %, 0.8538, 85.5 %",
    "2, 2.3456, 2.35",
    "0.125, 0.3333, 0.333",
  })
  void writesTheNewValueAsSheWould(String number, double to, String expected) {
    assertThat(changed(number, to)).isEqualTo(expected);
  }

  @Test
  void anglesKeepHalfDegrees() {
    assertThat(changed("30 deg", Math.toRadians(31.3))).isEqualTo("31.5 deg");
  }

  @Test
  void aBareZeroGetsTheUnitItIsGiven() {
    String text = "language 1\nlet x = 0";
    Source source = new Source("p", text);
    Expression.Literal zero = new Expression.Literal(0, Unit.NONE, new Span(19, 20));
    assertThat(LiteralEdit.of(source, zero, Unit.CM, 12.3).applyTo(text))
        .isEqualTo("language 1\nlet x = 1.2 cm");
    assertThat(LiteralEdit.of(source, zero, Unit.PERCENT, 0.1).applyTo(text))
        .isEqualTo("language 1\nlet x = 10%");
  }

  @Test
  void onlyFiniteNumbersAreWritten() {
    Source source = new Source("p", "0");
    Expression.Literal zero = new Expression.Literal(0, Unit.NONE, new Span(0, 1));
    assertThatThrownBy(() -> LiteralEdit.of(source, zero, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
