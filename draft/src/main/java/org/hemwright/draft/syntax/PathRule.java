package org.hemwright.draft.syntax;

import java.util.List;
import java.util.Optional;

/** How a line, curve, arc or path is drawn. */
public sealed interface PathRule {
  /** Where it stands. */
  Span span();

  /** {@code line l from a to b to c}. */
  record Through(List<Reference> points, Span span) implements PathRule {
    public Through {
      points = List.copyOf(points);
    }
  }

  /** {@code line l from a right 20 cm}. */
  record Toward(Reference from, Direction direction, Expression distance, Span span)
      implements PathRule {}

  /**
   * {@code curve c from a leaving up to b arriving left then straight to d then to e}.
   *
   * @param start where it begins
   * @param leaving its heading there, if given
   * @param legs in order
   */
  record Smooth(Reference start, Optional<Direction> leaving, List<Leg> legs, Span span)
      implements PathRule {
    public Smooth {
      legs = List.copyOf(legs);
    }
  }

  /** One stretch of a smooth curve, up to a knot. */
  sealed interface Leg {
    /** Where it stands. */
    Span span();

    /**
     * {@code [tension 1.2] to b [arriving DIR]} up to a corner or the end, {@code [tension 1.2]
     * through b [heading DIR]} where the curve runs on; the tension is that of this stretch.
     *
     * @param smoothOn whether the curve runs on smoothly through the knot
     */
    record Curve(
        Reference to,
        Optional<Direction> heading,
        Optional<Expression> tension,
        boolean smoothOn,
        Span span)
        implements Leg {}

    /**
     * {@code then straight to d}: the curve before it arrives along this line unless a direction
     * was given, and the one after it leaves along it.
     */
    record Straight(Reference to, Span span) implements Leg {}

    /**
     * {@code then}, {@code then leaving DIR} between two curved stretches, or {@code then leaving
     * DIR} after a straight one: a corner; the next stretch starts afresh, in that direction if one
     * is given.
     */
    record Corner(Optional<Direction> leaving, Span span) implements Leg {}
  }

  /** {@code arc c about m from a turning 90 deg}: counter-clockwise when positive. */
  record ArcAbout(Reference centre, Reference from, Expression turning, Span span)
      implements PathRule {}

  /**
   * {@code arc c from a to b radius 30 cm, bulging left}; {@code the long way} for the major arc.
   */
  record ArcRadius(
      Reference from,
      Reference to,
      Expression radius,
      boolean bulgingLeft,
      boolean longWay,
      Span span)
      implements PathRule {}

  /** {@code arc c from a through p to b}. */
  record ArcThrough(Reference from, Reference through, Reference to, Span span)
      implements PathRule {}

  /** {@code path p is side_line then straight then hem_line}. */
  record Is(PathTerm term) implements PathRule {
    @Override
    public Span span() {
      return term.span();
    }
  }
}
