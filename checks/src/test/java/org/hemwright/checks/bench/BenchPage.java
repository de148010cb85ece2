package org.hemwright.checks.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The page of the docs that tells what became of a bench's mistakes.
 *
 * @param file its name in {@code docs}
 * @param test the test that writes and holds it
 * @param mistakes what the bench calls them: {@code Faults}
 * @param opening the heading, and how the bench plants and counts
 * @param reasons why nothing can tell a survivor, by where it was planted
 */
public record BenchPage(
    String file, Class<?> test, String mistakes, String opening, Map<String, String> reasons) {
  private static final Path DOCS = Path.of("../docs");

  public BenchPage {
    reasons = Map.copyOf(reasons);
  }

  /** Holds the page to what was caught; with {@code -Dwrite.docs=true} it is written anew. */
  public void holds(List<BenchRow> rows) throws IOException {
    Path page = DOCS.resolve(file);
    String made = text(rows);
    if (Boolean.getBoolean("write.docs")) {
      Files.writeString(page, made);
    }
    assertThat(rows).as("every one applies somewhere").allMatch(row -> row.planted() > 0);
    assertThat(rows.stream().flatMap(row -> row.survivors().stream()))
        .as("survivors without a reason")
        .allMatch(reasons::containsKey);
    assertThat(Files.readString(page)).isEqualTo(made);
  }

  private String text(List<BenchRow> rows) {
    StringBuilder page = new StringBuilder(opening);
    page.append("\nThe table is written and held by a test (`mvn test -pl checks -am -Dtest=");
    page.append(test.getSimpleName());
    page.append(" -Dwrite.docs=true -Dsurefire.failIfNoSpecifiedTests=false`).\n\n");
    page.append("| what is done | caught by | planted | caught | survivors |\n");
    page.append("| --- | --- | --- | --- | --- |\n");
    rows.forEach(row -> page.append(row).append('\n'));
    int planted = rows.stream().mapToInt(BenchRow::planted).sum();
    int survivors = rows.stream().mapToInt(row -> row.survivors().size()).sum();
    page.append('\n').append(mistakes).append(": ").append(rows.size());
    page.append(". Planted: ").append(planted);
    page.append(". Caught: ").append(planted - survivors).append(".\n");
    for (BenchRow row : rows) {
      for (String survivor : row.survivors()) {
        page.append("\n- ").append(row.words()).append(", ").append(survivor).append(": ");
        page.append(reasons.getOrDefault(survivor, "not yet explained")).append('\n');
      }
    }
    return page.toString();
  }
}
