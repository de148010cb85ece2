package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What became of the slips planted in documents and charts, as a page. */
final class WrittenTable {
  private WrittenTable() {}

  /** How one slip fared. */
  static final class Row {
    private final String words;
    private final TreeSet<String> checks = new TreeSet<>();
    private final List<String> survivors = new ArrayList<>();
    private int planted;

    Row(String words) {
      this.words = words;
    }

    void add(String where, Set<String> told) {
      planted++;
      checks.addAll(told);
      if (told.isEmpty()) {
        survivors.add(where);
      }
    }

    int planted() {
      return planted;
    }

    List<String> survivors() {
      return survivors;
    }

    @Override
    public String toString() {
      return "| "
          + String.join(
              " | ",
              words,
              String.join(", ", checks.stream().map(check -> "`" + check + "`").toList()),
              Integer.toString(planted),
              Integer.toString(planted - survivors.size()),
              survivors.isEmpty() ? "none" : survivors.size() + "")
          + " |";
    }
  }

  static String page(List<Row> rows, Map<String, String> reasons) {
    StringBuilder page =
        new StringBuilder(
            """
            # The fault bench of documents and charts

            Each slip of the pen is planted in the text of five examples, or in their size charts, at every line or
            cell where it applies, one at a time; then the whole is read, drafted and checked in every size. It
            counts as caught when a check that is meant for it, or reading the document itself (`reading`), tells
            it about the piece, seam, view, line or cell that was changed. Slips that change nothing a maker would
            notice are not planted: a symmetrical piece no longer mirrored, a patch pocket cut the other way. The
            table is written and held by a test
            (`mvn test -pl checks -am -Dtest=WrittenFaultBenchTest -Dwrite.docs=true -Dsurefire.failIfNoSpecifiedTests=false`).
            What goes wrong in one size of the drafted pieces is planted in [the fault bench](fault-bench.md).

            | what is done | caught by | planted | caught | survivors |
            | --- | --- | --- | --- | --- |
            """);
    int planted = 0;
    int survivors = 0;
    for (Row row : rows) {
      page.append(row).append('\n');
      planted += row.planted;
      survivors += row.survivors.size();
    }
    page.append("\nSlips: ").append(rows.size());
    page.append(". Planted: ").append(planted);
    page.append(". Caught: ").append(planted - survivors).append(".\n");
    for (Row row : rows) {
      for (String survivor : row.survivors) {
        page.append("\n- ").append(row.words).append(", ").append(survivor).append(": ");
        page.append(reasons.getOrDefault(survivor, "not yet explained")).append('\n');
      }
    }
    return page.toString();
  }
}
