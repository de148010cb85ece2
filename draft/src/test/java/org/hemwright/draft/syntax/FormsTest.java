package org.hemwright.draft.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of the table: its example is read, and gives the record written in forms.txt. */
class FormsTest {
  private static final Map<Where, String> SECTION =
      Map.of(
          Where.FABRIC, "fabric main knit",
          Where.PART, "part bodice",
          Where.PIECE, "piece panel \"Panel\" number 1",
          Where.SEAM, "seam side_seams panel.side with panel.side",
          Where.VIEW, "view A \"Elastic waist\"",
          Where.MAKE, "make",
          Where.PAPER, "paper");

  static Stream<Form> rows() {
    return Forms.rows().stream();
  }

  /** The document that holds an example where it belongs. */
  static String document(Form form) {
    Token first = LineLexer.cut(new Source("", form.example()), 1).tokens().get(0);
    Where where =
        form.where().stream()
            .filter(Where::holdsLines)
            .findFirst()
            .orElseGet(() -> Places.of(first.text()).get(0));
    String language = form.id().equals("language") ? "" : "language 1\n";
    return where == Where.LEFT_EDGE
        ? language + form.example()
        : language + SECTION.get(where) + "\n  " + form.example();
  }

  /** What the example says: the last line's statement. */
  private static Statement said(Document document) {
    Statement last = document.statements().get(document.statements().size() - 1);
    return last instanceof Statement.Section section && !section.body().isEmpty()
        ? section.body().get(0)
        : last;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theExampleIsReadToItsRecord(Form form) {
    Document read = DocumentReader.read("example", document(form));
    assertThat(read.findings()).isEmpty();
    assertThat(form.id() + ": " + Trees.readable(said(read))).isEqualTo(expected().get(form.id()));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void theExampleIsSetNeatly(Form form) {
    String text = document(form);
    assertThat(DocumentFormatter.format(DocumentReader.read("example", text)))
        .isEqualTo(text + "\n");
  }

  @Test
  void everyRowHasAnIdOfItsOwnAndASentence() {
    assertThat(rows().map(Form::id)).doesNotHaveDuplicates();
    assertThat(rows())
        .allSatisfy(form -> assertThat(form.sentence()).endsWith(".").hasSizeLessThan(260));
    assertThat(rows()).allSatisfy(form -> assertThat(form.where()).isNotEmpty());
  }

  @Test
  void everyLineFormStartsWithAWord() {
    assertThat(rows().filter(form -> form.where().stream().anyMatch(Where::holdsLines)))
        .allSatisfy(form -> assertThat(form.firstWords()).isNotEmpty());
  }

  private static Map<String, String> expected() {
    return SampleTexts.read(Path.of("src/test/resources/org/hemwright/draft/syntax/forms.txt"))
        .lines()
        .collect(
            Collectors.toMap(
                line -> line.substring(0, line.indexOf(':')),
                line -> line,
                (one, other) -> one,
                TreeMap::new));
  }
}
