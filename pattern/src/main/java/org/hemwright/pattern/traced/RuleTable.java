package org.hemwright.pattern.traced;

import java.util.List;
import org.hemwright.pattern.finding.Origin;

/**
 * Rules by which corners and control points move from size to size, as a table has them.
 *
 * @param file its name in the pattern folder
 * @param rules in the order of the table
 */
public record RuleTable(String file, List<Rule> rules) {
  public RuleTable {
    rules = List.copyOf(rules);
  }

  /**
   * One row: how a point moves one way.
   *
   * @param piece the piece's name
   * @param edge the edge's name
   * @param place where on the edge
   * @param upright whether it moves up, or to the right
   * @param steps from size to size; a step that is missing is 0
   * @param origin where it stands
   */
  public record Rule(
      String piece,
      String edge,
      RulePlace place,
      boolean upright,
      List<Step> steps,
      Origin origin) {
    public Rule {
      steps = List.copyOf(steps);
    }
  }

  /**
   * How far from one size to the next.
   *
   * @param from the size's name
   * @param to the name of the next larger size
   * @param mm how many millimetres to the right or up; less than 0 to the left or down
   */
  public record Step(String from, String to, double mm) {}
}
