package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.syntax.PathForms.PathStep;

/** Reads paths that stand in a slot, and what is done to them. */
final class PathReading {
  private final Reading reading;

  PathReading(Reading reading) {
    this.reading = reading;
  }

  /** {@code side_line then straight then hem_line}. */
  PathTerm chain() {
    int start = reading.index();
    List<PathTerm> parts = new ArrayList<>();
    do {
      parts.add(term());
    } while (reading.takeThen());
    return parts.size() == 1 ? parts.get(0) : new PathTerm.Chain(parts, reading.spanFrom(start));
  }

  /** {@code side_line from a to b reversed}. */
  PathTerm term() {
    int start = reading.index();
    boolean bracketed = reading.says("(");
    PathTerm path = primary();
    if (path instanceof PathTerm.StraightOn) {
      return path;
    }
    boolean mayBeCut = !reading.barePaths();
    for (int steps = 0; goesOn(mayBeCut, bracketed); steps++) {
      if (steps > Reading.DEEPEST) {
        throw reading.refuseMore("too-deep", Reading.DEEPEST);
      }
      PathStep step = (PathStep) reading.oneOf(Where.PATH_STEP);
      path = step.done().apply(path, reading.spanFrom(start));
      mayBeCut = false;
    }
    return path;
  }

  /**
   * Whether something is done to the path. It is cut first if at all; {@code to b} cuts what stands
   * in brackets alone, since a name before it would be a point.
   */
  private boolean goesOn(boolean mayBeCut, boolean bracketed) {
    if (reading.says("from")) {
      return mayBeCut;
    }
    if (reading.says("to")) {
      return mayBeCut && bracketed;
    }
    return reading
        .peek()
        .filter(Token::isWord)
        .filter(word -> Forms.mayStart(Where.PATH_STEP, word.text()))
        .isPresent();
  }

  /** A name, two points, {@code straight}, or a path in brackets. */
  PathTerm primary() {
    boolean point = reading.says(1, "to") || reading.says(1, ".");
    return (PathTerm)
        reading.oneOf(
            Where.PATH,
            form ->
                switch (form.id()) {
                  case PathForms.STRAIGHT_ON -> !point;
                  case PathForms.STRAIGHT_TO -> !reading.barePaths();
                  default -> true;
                });
  }
}
