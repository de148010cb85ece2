package org.hemwright.exchange.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hemwright.exchange.table.Table;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/**
 * The findings of one file, in the order of the text. A file with very many is told its first ones
 * and how many more there are, so that a table of the wrong sort does not bury its one cause.
 */
final class ChartProblems {
  private static final int MOST_TOLD = 100;

  private final String file;
  private final List<Finding> findings = new ArrayList<>();
  private long untold;

  ChartProblems(String file) {
    this.file = file;
  }

  void add(Finding.Builder finding) {
    if (findings.size() < MOST_TOLD) {
      findings.add(finding.build());
    } else {
      untold++;
    }
  }

  /** A problem of the whole file. */
  void file(String code, Argument detail) {
    add(Finding.fail(code, file).with("detail", detail).at(new Origin(file, 1, 1)));
  }

  /** A problem at a place that shows the text that was read there. */
  Finding.Builder at(String code, String subject, Table.Entry entry) {
    return Finding.fail(code, subject).with("read", shortened(entry.text())).at(entry.origin());
  }

  List<Finding> inOrder() {
    List<Finding> all = new ArrayList<>(findings);
    all.sort(Comparator.comparing(finding -> finding.origin().orElse(new Origin(file, 1, 1))));
    if (untold > 0) {
      all.add(
          Finding.fail("chart-more", file)
              .with("count", Argument.of(untold))
              .at(new Origin(file, 1, 1))
              .build());
    }
    return List.copyOf(all);
  }

  /** A text short enough for one line of a message. */
  static String shortened(String text) {
    String line = text.replaceAll("\\s+", " ");
    return line.length() <= 40 ? line : line.substring(0, 39) + "…";
  }
}
