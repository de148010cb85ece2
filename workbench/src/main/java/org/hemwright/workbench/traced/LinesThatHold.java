package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/**
 * The lines of a piece with which its document holds.
 *
 * @param dropped lines of the piece whose place is taken that had to go
 */
record LinesThatHold(List<TrialLine> lines, List<String> dropped) {
  /** Rounds of leaving out lines that do not hold; a line left out may take another with it. */
  private static final int MOST_ROUNDS = 12;

  LinesThatHold {
    lines = List.copyOf(lines);
    dropped = List.copyOf(dropped);
  }

  /**
   * Leaves out, round by round, each line on trial at which something is found.
   *
   * @param problems what drafting a text of the document finds
   */
  static LinesThatHold of(
      PiecePlace place, List<TrialLine> all, Function<String, List<Finding>> problems) {
    List<TrialLine> lines = all;
    List<String> dropped = new ArrayList<>();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      PiecePlace.Placed placed = place.with(lines);
      List<TrialLine> tried = lines;
      Set<Integer> faulty = new TreeSet<>();
      for (Finding finding : problems.apply(placed.text())) {
        finding
            .origin()
            .filter(at -> at.file().equals(place.document().file()))
            .map(Origin::line)
            .map(line -> line - placed.firstLine())
            .filter(line -> line >= 0 && line < tried.size() && tried.get(line).onTrial())
            .ifPresent(faulty::add);
      }
      if (faulty.isEmpty()) {
        break;
      }
      List<TrialLine> left = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        if (!faulty.contains(i)) {
          left.add(lines.get(i));
        } else if (lines.get(i).hers()) {
          dropped.add(lines.get(i).text().strip());
        }
      }
      lines = left;
    }
    return new LinesThatHold(withoutIdle(place, lines, dropped, problems), dropped);
  }

  /** Leaves out numbers of the former piece that nothing asks for any more. */
  private static List<TrialLine> withoutIdle(
      PiecePlace place,
      List<TrialLine> all,
      List<String> dropped,
      Function<String, List<Finding>> problems) {
    List<TrialLine> lines = all;
    for (int i = all.size() - 1; i >= 0; i--) {
      TrialLine line = all.get(i);
      if (line.hers() && line.text().strip().startsWith("let ")) {
        List<TrialLine> without = new ArrayList<>(lines);
        without.remove(line);
        int before = problems.apply(place.with(lines).text()).size();
        if (problems.apply(place.with(without).text()).size() <= before) {
          lines = without;
          dropped.add(line.text().strip());
        }
      }
    }
    return lines;
  }
}
