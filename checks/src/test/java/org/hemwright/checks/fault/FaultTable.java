package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/** What became of the planted faults, as a page. */
final class FaultTable {
  private FaultTable() {}

  /** How one fault fared. */
  static final class Row {
    private final String words;
    private final TreeSet<String> checks = new TreeSet<>();
    private final List<String> survivors = new ArrayList<>();
    private int planted;

    Row(String words) {
      this.words = words;
    }

    void add(Planted fault, boolean told) {
      planted++;
      checks.add(fault.check());
      if (!told) {
        survivors.add(fault.where());
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
              survivors.isEmpty() ? "none" : survivors.size() + ": " + survivors)
          + " |";
    }
  }

  static String page(List<Row> rows, Map<String, String> reasons) {
    StringBuilder page =
        new StringBuilder(
            """
            # The fault bench

            Each fault is planted in every example, at every place where it applies, in the smallest, a middle
            and the largest size (or in all sizes, where it says so), one at a time. It counts as caught when the
            check that is meant for it tells it in that size and about that piece, edge or seam, and in no other
            size. The table is written by the tests and held by them
            (`mvn test -pl checks -am -Dtest=FaultBenchTest -Dwrite.docs=true -Dsurefire.failIfNoSpecifiedTests=false`).

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
    page.append("\nFaults: ").append(rows.size());
    page.append(". Planted: ").append(planted);
    page.append(". Caught: ").append(planted - survivors).append(".\n");
    for (Row row : rows) {
      for (String survivor : row.survivors) {
        page.append("\n- ").append(survivor).append(": ");
        page.append(reasons.getOrDefault(survivor, "not yet explained")).append('\n');
      }
    }
    return page.toString();
  }
}
