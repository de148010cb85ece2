package org.hemwright.checks.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** How one kind of mistake fared, in all the places where it was planted. */
public final class BenchRow {
  private final String words;
  private final TreeSet<String> checks = new TreeSet<>();
  private final List<String> survivors = new ArrayList<>();
  private int planted;

  /**
   * A row that nothing was planted for yet.
   *
   * @param words what is done: {@code a seam left out}
   */
  public BenchRow(String words) {
    this.words = words;
  }

  /**
   * Counts one that was planted.
   *
   * @param where at what place
   * @param told the checks that told it, of those that are meant for it; none: it survived
   */
  public void add(String where, Set<String> told) {
    planted++;
    checks.addAll(told);
    if (told.isEmpty()) {
      survivors.add(where);
    }
  }

  String words() {
    return words;
  }

  int planted() {
    return planted;
  }

  /** Where it was planted and no check told it. */
  public List<String> survivors() {
    return List.copyOf(survivors);
  }

  /** The row as a page has it. */
  @Override
  public String toString() {
    return "| "
        + String.join(
            " | ",
            words,
            String.join(", ", checks.stream().map(check -> "`" + check + "`").toList()),
            Integer.toString(planted),
            Integer.toString(planted - survivors.size()),
            survivors.isEmpty() ? "none" : Integer.toString(survivors.size()))
        + " |";
  }
}
