package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.draft.syntax.Quoted;

/**
 * How one corner of a traced outline moves from each size to the next larger one.
 *
 * @param edge the edge at whose end the corner is
 * @param across to the right, as she types it: {@code 5 mm, then 7 mm from size 22}, {@code 1/4 of
 *     the hip step}, less than nothing for the left: {@code -5 mm}; empty where it stays
 * @param up the same upward
 */
public record CornerRule(String edge, String across, String up) {
  /** A share of what the chart adds, said shortly: {@code 1/4 hip}, {@code 25% of hip}. */
  private static final Pattern SHARE =
      Pattern.compile(
          "([0-9]+(?:\\.[0-9]+)?%|[0-9]+/[0-9]+|1)\\s+(?:of\\s+)?(?:the\\s+)?"
              + "(\\p{L}[\\p{L}\\p{N}_]*)(?:\\s+step)?");

  private static final Pattern LESS = Pattern.compile("[-\u2212]\\s*(.*)");

  /** The rule as a document says it. */
  public String line() {
    return line("end");
  }

  /**
   * The same for a control point of the edge.
   *
   * @param dot what the drawing calls it
   */
  String atDot(String dot) {
    return line(Quoted.words(dot));
  }

  private String line(String place) {
    List<String> ways = new ArrayList<>();
    way(across, "right", "left", ways);
    way(up, "up", "down", ways);
    return "grade "
        + edge
        + " at "
        + place
        + " "
        + (ways.isEmpty() ? "stays" : String.join(", ", ways));
  }

  private static void way(String typed, String more, String less, List<String> ways) {
    String text = typed.replaceAll("\\s+", " ").strip();
    Matcher negative = LESS.matcher(text);
    boolean back = negative.matches();
    String amount = back ? negative.group(1) : text;
    if (amount.isEmpty() || amount.matches("0(\\.0*)?( ?(mm|cm|in))?")) {
      return;
    }
    Matcher share = SHARE.matcher(amount);
    boolean length = amount.matches(".*[0-9] ?(mm|cm|in)\\b.*");
    if (!length && share.matches()) {
      amount = share.group(1) + " of the " + share.group(2) + " step";
    }
    ways.add((back ? less : more) + " " + amount);
  }

  /**
   * The rule that a line of a document says.
   *
   * @param edge the edge at whose end the corner is, whichever edge the line names
   * @param ways what the line says after the place: {@code right 5 mm, up 2 mm}
   */
  static CornerRule said(String edge, String ways) {
    String across = "";
    String up = "";
    for (String way : ways.split(",\\s*(?=(?:right|left|up|down) )", -1)) {
      String[] words = way.strip().split(" ", 2);
      if (words.length < 2) {
        continue;
      }
      boolean less = words[0].equals("left") || words[0].equals("down");
      String amount = (less ? "-" : "") + words[1];
      if (words[0].equals("right") || words[0].equals("left")) {
        across = amount;
      } else {
        up = amount;
      }
    }
    return new CornerRule(edge, across, up);
  }
}
