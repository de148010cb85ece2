package org.hemwright.draft.add;

import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Expression.Literal;
import org.hemwright.draft.syntax.LiteralEdit;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.draft.syntax.Unit;

/**
 * How new numbers are written in a document: in its unit, rounded to that unit's step.
 *
 * @param length the unit of lengths
 */
record Spelling(Unit length) {
  static Spelling of(Document document) {
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.Units units) {
        return new Spelling(units.inches() ? Unit.IN : Unit.CM);
      }
    }
    return new Spelling(Unit.CM);
  }

  /** A length of 0 or more (mm). */
  String length(double mm) {
    return spelled(length, mm) + " " + length.word();
  }

  /** Whether a length is written as 0. */
  boolean isNothing(double mm) {
    return StrictMath.abs(mm) < smallest() / 2;
  }

  /** An angle (rad), to half a degree. */
  String angle(double radians) {
    return spelled(Unit.DEG, radians) + " deg";
  }

  /** A share, to half a percent. */
  String share(double share) {
    return spelled(Unit.PERCENT, share) + "%";
  }

  private double smallest() {
    return length == Unit.IN ? Unit.IN.factor() / 16 : 1;
  }

  private static String spelled(Unit unit, double value) {
    String one = "1" + (unit == Unit.PERCENT ? "" : " ") + unit.word();
    Literal literal = new Literal(1, unit, new Span(0, one.length()));
    return LiteralEdit.of(new Source("", one), literal, value).replacement();
  }
}
