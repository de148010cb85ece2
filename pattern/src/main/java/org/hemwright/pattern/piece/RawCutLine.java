package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * A cut line round the whole piece that may still cross itself: each curve knows the edge that it
 * belongs to.
 *
 * <p>Where an allowance is wider than an inward curve or corner has room for, the line beside the
 * stitch line runs round a loop that lies within the allowance; such a loop is cut off at its
 * crossing. It runs counter-clockwise, like the whole. A loop the other way round, or one that
 * holds all there is of an edge, is no such thing: there the cut lines of two edges run through one
 * another.
 */
final class RawCutLine {
  /** Owns the curves of a corner that belong to neither edge. */
  static final int NO_EDGE = -1;

  /** No more loops than this are cut off; a line with more has no cut line. */
  private static final int MOST_LOOPS = 64;

  private record Owned(Curve curve, int edge) {}

  private final List<Owned> round;

  private RawCutLine(List<Owned> round) {
    this.round = round;
  }

  /** A line without curves yet. */
  static RawCutLine empty() {
    return new RawCutLine(new ArrayList<>());
  }

  /** Goes on along curves of an edge; a gap is closed by a straight line of neither edge. */
  void add(List<Curve> next, int edge) {
    for (Curve curve : next) {
      if (curve.length() > Tolerance.NO_LENGTH) {
        if (!round.isEmpty()) {
          bridge(round.get(round.size() - 1).curve().end(), curve.start());
        }
        round.add(new Owned(curve, edge));
      }
    }
  }

  /** The same line, come back to its start, with every joint one point. */
  RawCutLine closed() {
    bridge(round.get(round.size() - 1).curve().end(), round.get(0).curve().start());
    List<Curve> welded = Path.of(round.stream().map(Owned::curve).toList()).curves();
    if (welded.size() != round.size()) {
      throw new GeometryProblem("a cut line has stretches without length");
    }
    List<Owned> joined = new ArrayList<>();
    for (int i = 0; i < welded.size(); i++) {
      joined.add(new Owned(welded.get(i), round.get(i).edge()));
    }
    return new RawCutLine(joined);
  }

  private void bridge(Point reached, Point wanted) {
    if (!reached.isAt(wanted)) {
      round.add(new Owned(new Line(reached, wanted), NO_EDGE));
    }
  }

  private Outline outline() {
    return Outline.of(Path.of(round.stream().map(Owned::curve).toList()));
  }

  /** What is left of an edge's own stretch; absent where nothing is. */
  Optional<Path> stretch(int edge) {
    List<Curve> own =
        round.stream().filter(owned -> owned.edge() == edge).map(Owned::curve).toList();
    boolean some = own.stream().anyMatch(curve -> curve.length() > Tolerance.SAME_POINT);
    return some ? Optional.of(Path.of(own)) : Optional.empty();
  }

  /**
   * A line without its loops.
   *
   * @param crossings where it crosses itself still
   */
  record Trimmed(RawCutLine line, Outline outline, List<Meeting> crossings) {}

  /** The line with its loops cut off. */
  Trimmed trimmed() {
    Trimmed trimmed = asItIs();
    for (int i = 0; i < MOST_LOOPS && !trimmed.crossings().isEmpty(); i++) {
      Optional<RawCutLine> shorter = withoutOneLoop(trimmed);
      if (shorter.isEmpty()) {
        return trimmed;
      }
      trimmed = shorter.get().asItIs();
    }
    return trimmed;
  }

  private Trimmed asItIs() {
    Outline outline = outline();
    return new Trimmed(
        this, outline, outline.crossings().stream().filter(RawCutLine::goesRound).toList());
  }

  /** Whether there is a way round between the two passes; at the point of a cusp there is none. */
  private static boolean goesRound(Meeting crossing) {
    return crossing.distanceOnOther() - crossing.distanceOnThis() > Tolerance.SAME_POINT;
  }

  private static Optional<RawCutLine> withoutOneLoop(Trimmed line) {
    return line.crossings().stream()
        .sorted(Comparator.comparingDouble(m -> m.distanceOnOther() - m.distanceOnThis()))
        .flatMap(crossing -> line.line().without(line.outline(), crossing).stream())
        .findFirst();
  }

  /** The line without the smaller of the two loops at a crossing, if that one may go. */
  private Optional<RawCutLine> without(Outline outline, Meeting crossing) {
    double from = crossing.distanceOnThis();
    double to = crossing.distanceOnOther();
    Path path = outline.path();
    double inner = Outline.of(loop(path, from, to)).signedArea();
    double outer = outline.signedArea() - inner;
    boolean innerGoes = Math.abs(inner) <= Math.abs(outer);
    if (!((innerGoes ? inner : outer) > 0)) {
      return Optional.empty();
    }
    RawCutLine kept = new RawCutLine(new ArrayList<>());
    if (innerGoes) {
      kept.keep(this, 0, from);
      kept.keep(this, to, path.length());
    } else {
      kept.keep(this, from, to);
    }
    boolean allEdges = edges().stream().allMatch(edge -> kept.stretch(edge).isPresent());
    return allEdges ? Optional.of(kept.closed()) : Optional.empty();
  }

  private static Path loop(Path path, double from, double to) {
    List<Curve> curves = new ArrayList<>(path.part(from, to).curves());
    Point first = curves.get(0).start();
    Point last = curves.get(curves.size() - 1).end();
    if (!last.equals(first)) {
      curves.add(new Line(last, first));
    }
    return Path.of(curves);
  }

  private List<Integer> edges() {
    return round.stream().map(Owned::edge).filter(edge -> edge != NO_EDGE).distinct().toList();
  }

  /** Takes over what lies between two lengths of another line. */
  private void keep(RawCutLine other, double from, double to) {
    double walked = 0;
    for (Owned owned : other.round) {
      Curve curve = owned.curve();
      double length = curve.length();
      double start = Math.max(0, from - walked);
      double end = Math.min(length, to - walked);
      if (end - start > Tolerance.NO_LENGTH) {
        double t0 = start > Tolerance.NO_LENGTH ? curve.parameterAt(start) : 0;
        double t1 = length - end > Tolerance.NO_LENGTH ? curve.parameterAt(end) : 1;
        if (t0 < t1) {
          round.add(new Owned(t0 == 0 && t1 == 1 ? curve : curve.part(t0, t1), owned.edge()));
        }
      }
      walked += length;
    }
  }
}
