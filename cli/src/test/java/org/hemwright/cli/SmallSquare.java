package org.hemwright.cli;

/** The smallest document from which everything is made: one square, in every size of its chart. */
final class SmallSquare {
  static final String DOCUMENT =
      """
      language 1
      pattern "Small square"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 8
      fabric main knit
        widths 115 cm
      piece square "Square" number 1
        cut 1 of main
        rectangle hip / 4 by 20 cm, edges lower, right, upper, left
        allowance 1 cm
        grain along left
        point corner at 0 cm, 0 cm
        stack at corner
      """;

  private SmallSquare() {}
}
