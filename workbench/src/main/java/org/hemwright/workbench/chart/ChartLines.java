package org.hemwright.workbench.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Quoted;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;

/**
 * The lines of a document that follow its chart: which chart and base size it has, and, where the
 * sizes that are printed together are not all in the chart, which are.
 */
public final class ChartLines {
  /** So many sizes can be told apart in one nest; neighbours share two, for who is between. */
  private static final int MOST_TOGETHER = 6;

  private static final int SHARED = 2;

  private ChartLines() {}

  /** A line and what takes its place. */
  private record Change(Span span, String text) {}

  /**
   * The document with another chart.
   *
   * @param file the chart's name
   * @param sizes the names of its sizes
   * @param base one of them
   * @return absent where the document has no line for its chart
   */
  public static Optional<String> with(
      Document document, String file, List<String> sizes, String base) {
    List<Change> changes = new ArrayList<>();
    boolean named = false;
    for (Statement each : document.statements()) {
      if (each instanceof Statement.SizesFrom line) {
        named = true;
        changes.add(
            new Change(line.span(), "sizes from \"" + file + "\" base " + Quoted.size(base)));
      } else if (each instanceof Statement.PaperSection paper) {
        for (Statement inside : paper.body()) {
          if (inside instanceof Statement.Groups groups && lacking(groups, sizes)) {
            changes.add(new Change(groups.span(), groups(sizes)));
          }
        }
      }
    }
    if (!named) {
      return Optional.empty();
    }
    changes.sort(Comparator.comparingInt((Change change) -> change.span.start()).reversed());
    StringBuilder text = new StringBuilder(document.text());
    for (Change change : changes) {
      text.replace(change.span.start(), change.span.end(), change.text);
    }
    return Optional.of(text.toString());
  }

  private static boolean lacking(Statement.Groups groups, List<String> sizes) {
    return groups.groups().stream()
        .anyMatch(
            group -> !sizes.contains(group.from().name()) || !sizes.contains(group.to().name()));
  }

  private static String groups(List<String> sizes) {
    int count = sizes.size();
    int groups =
        count <= MOST_TOGETHER
            ? 1
            : (count - SHARED + MOST_TOGETHER - SHARED - 1) / (MOST_TOGETHER - SHARED);
    List<String> said = new ArrayList<>();
    for (int i = 0; i < groups; i++) {
      int from = i == 0 ? 0 : (count - SHARED) * i / groups;
      int to = i + 1 == groups ? count - 1 : (count - SHARED) * (i + 1) / groups + SHARED - 1;
      said.add(Quoted.size(sizes.get(from)) + " to " + Quoted.size(sizes.get(to)));
    }
    return "groups " + String.join(", ", said);
  }
}
