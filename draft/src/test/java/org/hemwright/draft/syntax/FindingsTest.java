package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.hemwright.draft.Drafting;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every problem that reading tells, with its exact words: {@code findings.txt}. */
class FindingsTest {
  private static final Path CASES =
      Path.of("src/test/resources/org/hemwright/draft/syntax/findings.txt");
  private static final Path SOURCES = Path.of("src/main/java/org/hemwright/draft/syntax");
  private static final Wording WORDING = Wording.of(Drafting.messages());

  /** A document and all that is said about it. */
  record Case(String title, String text, List<String> expected) {
    /** The code that the case is about. */
    String code() {
      return title.split("[ ,]", 2)[0];
    }

    @Override
    public String toString() {
      return title;
    }
  }

  static Stream<Case> cases() {
    List<Case> cases = new ArrayList<>();
    for (String block : SampleTexts.read(CASES).split("(?m)^=== ", -1)) {
      if (!block.isBlank()) {
        String[] head = block.split("\n", 2);
        String[] parts = head[1].split("(?m)^--- *\n", 2);
        String text = parts[0].startsWith("@") ? parts[0].substring(1) : "language 1\n" + parts[0];
        cases.add(
            new Case(head[0], text, parts.length < 2 ? List.of() : parts[1].lines().toList()));
      }
    }
    return cases.stream();
  }

  private static List<String> told(String text) {
    return DocumentReader.read("", text).findings().stream()
        .map(finding -> WORDING.line(finding).substring(1))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isToldInTheseWords(Case one) {
    assertThat(told(one.text())).isEqualTo(one.expected());
    assertThat(DocumentReader.read("", one.text()).findings().stream().map(Finding::code))
        .contains(one.code());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isGoneOnceItsMendIsTaken(Case one) {
    for (Finding finding : DocumentReader.read("", one.text()).findings()) {
      finding
          .edit()
          .ifPresent(
              edit ->
                  assertThat(DocumentReader.read("", edit.applyTo(one.text())).findings())
                      .noneMatch(
                          left ->
                              left.code().equals(finding.code())
                                  && left.origin().equals(finding.origin())));
    }
  }

  @Test
  void everyProblemHasACase() throws IOException {
    StringBuilder sources = new StringBuilder();
    try (Stream<Path> files = Files.list(SOURCES)) {
      files.sorted().map(SampleTexts::read).forEach(sources::append);
    }
    List<String> codes =
        Drafting.messages().sentences().keySet().stream()
            .filter(key -> key.endsWith(".message"))
            .map(key -> key.substring(0, key.length() - ".message".length()))
            .filter(code -> sources.indexOf('"' + code + '"') >= 0)
            .toList();
    List<String> elsewhere =
        List.of("line-too-long", "text-too-long", "more-findings", "too-deep", "too-long-sum");
    assertThat(codes).hasSizeGreaterThan(40).containsAll(elsewhere);
    assertThat(cases().map(Case::code).toList())
        .containsAll(codes.stream().filter(code -> !elsewhere.contains(code)).toList());
    assertThat(WORDING.lacking(codes)).isEmpty();
  }

  @Test
  void everyPhraseIsWorded() {
    List<String> keys = new ArrayList<>(List.of("term." + Reading.END));
    for (Slot slot : Slot.values()) {
      keys.add("term." + slot.term());
    }
    for (Where where : Where.values()) {
      keys.add("term." + where.term());
    }
    assertThat(Drafting.messages().sentences()).containsKeys(keys.toArray(String[]::new));
  }
}
