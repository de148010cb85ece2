package org.hemwright.workbench.traced;

/**
 * A line of a piece that is brought in.
 *
 * @param onTrial whether it stays only where the document holds with it
 * @param hers whether it is a line of the piece whose place is taken
 */
record TrialLine(String text, boolean onTrial, boolean hers) {
  static TrialLine sure(String text) {
    return new TrialLine(text, false, false);
  }
}
