package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.hemwright.draft.Drafting;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;

/** Whatever the text, reading ends with a document, its findings counted and worded. */
class HostileTextTest {
  private static final Wording WORDING = Wording.of(Drafting.messages());

  private static List<String> codes(String text) {
    Document read = DocumentReader.read("hostile", text);
    for (Finding finding : read.findings()) {
      assertThat(WORDING.line(finding).length()).isLessThan(600);
      assertThat(finding.origin()).isPresent();
    }
    String neat = DocumentFormatter.format(read);
    assertThat(DocumentFormatter.format(DocumentReader.read("neat", neat))).isEqualTo(neat);
    return read.findings().stream().map(Finding::code).toList();
  }

  private static String in(String line) {
    return "language 1\n" + line + "\n";
  }

  @Test
  void bracketsInBrackets() {
    assertThat(codes(in("let x = " + "(".repeat(50) + "1" + ")".repeat(50)))).isEmpty();
    assertThat(codes(in("let x = " + "(".repeat(900) + "1" + ")".repeat(900))))
        .containsExactly("too-deep");
    assertThat(codes(in("let x = " + "(".repeat(900)))).contains("bracket-unclosed");
    assertThat(codes(in("let x = " + "(\n".repeat(5000)))).contains("bracket-unclosed");
  }

  @Test
  void formsInForms() {
    assertThat(codes(in("let x = " + "-".repeat(900) + "1"))).containsExactly("too-deep");
    assertThat(codes(in("let x = " + "round up ".repeat(400) + "1" + " to 1".repeat(400))))
        .containsExactly("too-deep");
    assertThat(codes(in("let x = " + "round ".repeat(300) + "1" + " to 1".repeat(300))))
        .containsExactly("too-deep");
    assertThat(codes(in("let x = length of " + "(".repeat(300) + "a" + ")".repeat(300))))
        .containsExactly("too-deep");
    assertThat(codes(in("let x = " + "1% of ".repeat(500) + "hip"))).containsExactly("too-deep");
    String piece = "language 1\npiece p \"P\" number 1\n  ";
    assertThat(codes(piece + "path q is " + "(".repeat(300) + "a" + ")".repeat(300)))
        .containsExactly("too-deep");
    assertThat(codes(piece + "path q is a" + " reversed".repeat(300))).containsExactly("too-deep");
    assertThat(codes(piece + "point q from a " + "turned 1 deg from ".repeat(300) + "up 1 cm"))
        .containsExactly("too-deep");
    assertThat(codes(piece + "path q is a" + " moved along a".repeat(300) + " 1 cm")).isNotEmpty();
  }

  @Test
  void longLines() {
    assertThat(codes(in("let x = 1" + " + 1".repeat(240)))).isEmpty();
    assertThat(codes(in("let x = 1" + " + 1".repeat(600)))).containsExactly("too-long-sum");
    assertThat(codes(in("let x = 1" + " + 1".repeat(100_000)))).contains("line-too-long");
    assertThat(codes(in("let x = " + "1".repeat(1_000_000)))).containsExactly("number-too-long");
    assertThat(codes(in("let " + "x".repeat(1_000_000) + " = 1"))).isEmpty();
    assertThat(codes(in("lett " + "x ".repeat(500_000)))).contains("line-too-long");
    assertThat(codes(in("x".repeat(1_000_000)))).containsExactly("first-word-missing");
    assertThat(codes(in("by \"" + "w".repeat(1_000_000) + "\""))).isEmpty();
    assertThat(codes(in("by \"" + "w".repeat(1_000_000)))).containsExactly("quote-unclosed");
    assertThat(codes(in("#" + " note".repeat(200_000)))).isEmpty();
    assertThat(codes(in(" ".repeat(1_000_000) + "by \"us\""))).containsExactly("indented-heading");
  }

  @Test
  void manyLines() {
    assertThat(codes(in("let x = 1\n".repeat(100_000)))).isEmpty();
    assertThat(codes(in("lte x = 1\n".repeat(5_000)))).hasSize(201).endsWith("more-findings");
    assertThat(codes(in("let x = (1\n".repeat(20_000)))).hasSize(201).endsWith("more-findings");
    assertThat(codes(in("let x = 1,\n".repeat(20_000)))).hasSize(201).endsWith("more-findings");
    assertThat(codes("language 1\npaper\n" + "  x,\n".repeat(20_000))).contains("unknown-line");
    assertThat(codes("language 1\npaper\n" + "  groups (\n".repeat(20_000)))
        .endsWith("more-findings");
    assertThat(codes("language 1\npaper\n  groups 1 to 2,\n" + "    1 to 2,\n".repeat(20_000)))
        .isNotEmpty();
    assertThat(codes("\n".repeat(50_000))).containsExactly("language-first");
    assertThat(codes("language 1\n" + "x".repeat(DocumentReader.LONGEST_TEXT)))
        .containsExactly("text-too-long");
  }

  @Test
  void numbersOfEveryKind() {
    assertThat(codes(in("let x = 1" + "0".repeat(400) + " cm"))).containsExactly("number-too-long");
    assertThat(codes(in("let x = 1/" + "0".repeat(400)))).containsExactly("zero-below-bar");
    assertThat(codes(in("let x = 0/0"))).containsExactly("zero-below-bar");
    assertThat(codes(in("let x = " + "9".repeat(400) + "/" + "9".repeat(400))))
        .containsExactly("zero-below-bar");
    assertThat(codes(in("piece p \"P\" number " + "9".repeat(400)))).isNotEmpty();
    assertThat(codes(in("language " + "9".repeat(30)))).isNotEmpty();
    assertThat(codes(in("dated 999999999-99-99"))).containsExactly("date");
  }

  @Test
  void charactersOfEveryKind() {
    assertThat(codes("")).containsExactly("language-first");
    assertThat(codes("\ufefflanguage 1\n")).isEmpty();
    assertThat(codes(in("let x = 1 \u0000 + \u0007 2"))).contains("odd-character");
    assertThat(codes(in("let \ud800 = 1"))).contains("odd-character");
    assertThat(codes(in("by \"\udfff\ud800\""))).isEmpty();
    assertThat(codes("language 1\rlet x = 1\rlet y = 2\u2028let z = 3")).isNotEmpty();
    assertThat(codes(in("let \u00e9tendue = 1 cm"))).isEmpty();
    assertThat(codes(in("let \ud835\udc65 = 1 cm"))).isEmpty();
    assertThat(codes("language 1\u0085\u000b\u000c")).isNotNull();
  }

  @Test
  void noise() {
    Random random = new Random(11);
    List<String> words =
        Stream.concat(
                Forms.rows().stream().flatMap(form -> form.firstWords().stream()),
                Stream.of(
                    "a",
                    "b.c",
                    "1",
                    "2 cm",
                    "3/4 in",
                    "\"w\"",
                    "(",
                    ")",
                    ",",
                    "=",
                    "from",
                    "to",
                    "then",
                    "of",
                    "and",
                    "straight",
                    "#",
                    "\"",
                    "\n",
                    "\n  ",
                    "\n\t",
                    "\ud800"))
            .distinct()
            .toList();
    for (int round = 0; round < 1000; round++) {
      StringBuilder text = new StringBuilder("language 1\n");
      for (int i = 0; i < random.nextInt(60); i++) {
        text.append(words.get(random.nextInt(words.size())));
        text.append(random.nextInt(4) == 0 ? "" : " ");
      }
      codes(text.toString());
    }
  }
}
