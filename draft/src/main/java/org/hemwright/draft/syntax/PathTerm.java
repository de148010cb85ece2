package org.hemwright.draft.syntax;

import java.util.List;
import java.util.Optional;

/**
 * A path that stands in a slot: by name, or straight between two points, with what is done to it.
 *
 * <p>{@code side_line from a to b reversed mirrored across centre offset 1 cm left}: parts are
 * taken first, then the rest in the order written.
 */
public sealed interface PathTerm {
  /** Where it stands. */
  Span span();

  /** {@code side_line}, {@code front.side}: a line, curve, arc, path or edge. */
  record Named(Reference reference, Span span) implements PathTerm {}

  /** {@code a to b}: two points; a stretch of a path up to a point is a {@link Part}. */
  record Straight(Reference from, Reference to, Span span) implements PathTerm {}

  /** {@code straight}: to the start of what follows (in an outline, or between two others). */
  record StraightOn(Span span) implements PathTerm {}

  /** {@code traced "fold line"}: a line of the drawing that the piece is traced from. */
  record Traced(String line, Span span) implements PathTerm {}

  /**
   * {@code PATH from a to b}: the stretch between two points on it; either end may be missing. A
   * path without a start is written in brackets, {@code (side) to b}, since {@code side to b} joins
   * two points.
   */
  record Part(PathTerm path, Optional<Reference> from, Optional<Reference> to, Span span)
      implements PathTerm {}

  /** {@code PATH reversed}. */
  record Reversed(PathTerm path, Span span) implements PathTerm {}

  /** {@code PATH mirrored …}, {@code moved …}, {@code turned …}. */
  record Moved(PathTerm path, Move move, Span span) implements PathTerm {}

  /** {@code PATH offset 1 cm left}: parallel, to the left or right of its heading. */
  record Offset(PathTerm path, Expression distance, boolean left, Span span) implements PathTerm {}

  /** {@code PATH then PATH}: end to end. */
  record Chain(List<PathTerm> parts, Span span) implements PathTerm {
    public Chain {
      parts = List.copyOf(parts);
    }
  }
}
