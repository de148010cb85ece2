package org.hemwright.workbench.traced;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a part of a drawing is. */
public enum PartRole {
  /** The outline, without allowance. */
  STITCH_LINE("stitch|sew|sewn|seam|net"),
  /** The outline, allowance and all. */
  CUT_LINE("cut|cutting|boundary|outline|allowance"),
  /** Dots on the outline where edges end. */
  CORNERS("corner|corners|turn|points?"),
  /** Short lines or dots that touch the outline. */
  NOTCHES("notch|notches|ticks?"),
  /** The arrow along the thread. */
  GRAIN("grain|grainline"),
  /** A line drawn inside and not sewn to anything. */
  INNER_LINE("inner|internal|fold|crease"),
  /** A line that another piece's edge is sewn to. */
  PLACEMENT("placement|pocket|place"),
  /** Dots where a hole is marked. */
  DRILL("drill|hole|holes"),
  /** Dots that become points of their names, for levels and whatever else stands at a point. */
  POINT("level|levels"),
  /** A line whose length she knows. */
  SCALE_LINE("scale|ruler|test"),
  /** Nothing of the piece. */
  LEFT_OUT("");

  private final Pattern words;

  PartRole(String words) {
    this.words =
        Pattern.compile(
            "(?:^|[^\\p{L}])(?:" + (words.isEmpty() ? "\\b\\B" : words) + ")(?:[^\\p{L}]|$)",
            Pattern.CASE_INSENSITIVE);
  }

  /** How windows and answers call it: {@code stitch line}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The one of a word. */
  public static Optional<PartRole> of(String word) {
    return List.of(values()).stream().filter(role -> role.word().equals(word)).findFirst();
  }

  /**
   * What a part may be by its name alone; what the name does not say is left out.
   *
   * @param name the part's name
   * @param closed whether it is one closed line: nothing else is proposed as an outline
   */
  static PartRole proposed(String name, boolean closed) {
    for (PartRole role : values()) {
      boolean outline = role == STITCH_LINE || role == CUT_LINE;
      if ((closed || !outline) && role.words.matcher(name).find()) {
        return role;
      }
    }
    return LEFT_OUT;
  }
}
