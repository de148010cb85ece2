package org.hemwright.draft.syntax;

import java.util.List;
import java.util.Optional;

/** How a point is found. */
public sealed interface PointRule {
  /** Where it stands. */
  Span span();

  /** {@code at 0 cm, 12 cm}: right and up from the piece's origin. */
  record At(Expression x, Expression y, Span span) implements PointRule {}

  /** {@code from a right quarter then up 1 cm}. */
  record From(Reference start, List<Leg> legs, Span span) implements PointRule {
    public From {
      legs = List.copyOf(legs);
    }
  }

  /** {@code right 3 cm}. */
  record Leg(Direction direction, Expression distance, Span span) {}

  /** {@code on side_line at 12 cm from start}, {@code on side_line at 40% from end}. */
  record On(PathTerm path, Along along, Span span) implements PointRule {}

  /** {@code midway from a to b}, {@code 1/3 from a to b}: a straight share. */
  record Share(Expression share, Reference from, Reference to, Span span) implements PointRule {}

  /** {@code where a_line meets b_line}, with {@code first}, {@code last} or {@code nearest p}. */
  record Meeting(PathTerm path, PathTerm other, Pick pick, Span span) implements PointRule {}

  /** {@code square from p to side_line}: the foot of the perpendicular. */
  record Foot(Reference from, PathTerm onto, Span span) implements PointRule {}

  /** {@code on shoulder_line where 12 cm from neck}: a pair of compasses set on a point. */
  record Compass(PathTerm path, Expression radius, Reference centre, Pick pick, Span span)
      implements PointRule {}

  /** {@code 12 cm from a and 8 cm from b, left of a to b}: two pairs of compasses. */
  record TwoCompasses(
      Expression firstRadius,
      Reference first,
      Expression secondRadius,
      Reference second,
      boolean left,
      Span span)
      implements PointRule {}

  /** {@code is front.neck mirrored across a to b}: another point, moved. */
  record Moved(Reference point, List<Move> moves, Span span) implements PointRule {
    public Moved {
      moves = List.copyOf(moves);
    }
  }

  /** {@code traced "pocket corner"}: where a dot, a cross or a small ring of the drawing lies. */
  record Traced(String mark, Span span) implements PointRule {}

  /**
   * Which of several places is meant.
   *
   * @param nearest with {@link Which#NEAREST}, the point it is nearest to
   */
  record Pick(Which which, Optional<Reference> nearest) {
    /** Nothing said: there must be only one. */
    public static final Pick ONLY = new Pick(Which.ONLY, Optional.empty());
  }

  /** See {@link Pick}; first and last along the first path named. */
  enum Which {
    ONLY,
    FIRST,
    LAST,
    NEAREST
  }
}
