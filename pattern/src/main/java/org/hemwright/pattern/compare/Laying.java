package org.hemwright.pattern.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/**
 * How a new piece is laid on the old one: as it is drawn, or moved and turned so that one of its
 * edges lies where it lay, or so that stack point and grain do.
 *
 * <p>Of all these that way is taken, the same in every size, which leaves most of the stitch line
 * where it was. So a longer skirt has its hem moved and its waist not, and a piece that is drawn
 * elsewhere in its own plane has nothing moved.
 *
 * @param kind which of the three
 * @param edge the edge that is laid on itself, for {@link Kind#EDGE}
 */
public record Laying(Kind kind, String edge) {
  /** As drawn, in both. */
  static final Laying AS_DRAWN = new Laying(Kind.AS_DRAWN, "");

  private static final Laying STACKED = new Laying(Kind.STACKED, "");

  /** What lies where it lay. */
  public enum Kind {
    /** The plane of the piece. */
    AS_DRAWN,
    /** One edge. */
    EDGE,
    /** The stack point, and the grain where both have one. */
    STACKED
  }

  /** Old and new of one piece in one size. */
  record Pair(Piece old, Piece now) {}

  /** The best way for a piece in all its sizes, at least one. */
  static Laying of(List<Pair> pairs) {
    double whole = kept(AS_DRAWN, pairs);
    if (whole >= pairs.size() - Tolerance.SAME_POINT) {
      return AS_DRAWN;
    }
    Laying best = AS_DRAWN;
    double most = whole;
    for (Laying other : others(pairs.get(0))) {
      double kept = kept(other, pairs);
      if (kept > most + Tolerance.SAME_POINT) {
        best = other;
        most = kept;
      }
    }
    return most > 0 ? best : STACKED;
  }

  private static List<Laying> others(Pair pair) {
    List<Laying> others = new ArrayList<>();
    for (Edge edge : pair.now.edges()) {
      if (pair.old.edge(edge.name()).isPresent()) {
        others.add(new Laying(Kind.EDGE, edge.name()));
      }
    }
    others.add(STACKED);
    return others;
  }

  /** The share of the stitch line that stays where it was, added up over the sizes. */
  private static double kept(Laying laying, List<Pair> pairs) {
    double sum = 0;
    for (Pair pair : pairs) {
      Optional<Motion> motion = laying.motion(pair.old, pair.now);
      if (motion.isPresent()) {
        double kept = 0;
        for (Edge edge : pair.now.edges()) {
          Optional<Edge> before = pair.old.edge(edge.name());
          if (before.isPresent()
              && LineDistance.same(before.get().path(), edge.path().moved(motion.get()))) {
            kept += edge.path().length();
          }
        }
        sum += kept / pair.now.stitchLine().path().length();
      }
    }
    return sum;
  }

  /**
   * The motion that lays the new piece on the old; nothing where this way is none for them, as
   * where an edge is missing or has another length.
   */
  public Optional<Motion> motion(Piece old, Piece now) {
    return switch (kind) {
      case AS_DRAWN -> Optional.of(Motion.identity());
      case EDGE -> {
        Optional<Edge> before = old.edge(edge);
        Optional<Edge> after = now.edge(edge);
        yield before.isPresent() && after.isPresent()
            ? onto(before.get().path(), after.get().path())
            : Optional.empty();
      }
      case STACKED -> {
        Motion turn = Motion.identity();
        if (old.grain().isPresent() && now.grain().isPresent()) {
          Vector was = old.grain().get().direction();
          turn = Motion.turn(now.stackPoint(), now.grain().get().direction().angleTo(was));
        }
        yield Optional.of(turn.then(Motion.move(old.stackPoint().minus(now.stackPoint()))));
      }
    };
  }

  /** Lays the ends of one path on those of another that is as long from end to end. */
  static Optional<Motion> onto(Path goal, Path path) {
    Vector was = goal.end().minus(goal.start());
    Vector is = path.end().minus(path.start());
    boolean noWay = is.length() <= Tolerance.DRAWN_LENGTH;
    if (noWay || Math.abs(was.length() - is.length()) > Tolerance.DRAWN_LENGTH) {
      return Optional.empty();
    }
    Point middle = goal.start().toward(goal.end(), 0.5);
    Point own = path.start().toward(path.end(), 0.5);
    return Optional.of(Motion.turn(own, is.angleTo(was)).then(Motion.move(middle.minus(own))));
  }
}
