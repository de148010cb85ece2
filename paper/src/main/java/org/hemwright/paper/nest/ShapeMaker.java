package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;

/** Lays a piece of one size on paper. */
final class ShapeMaker {
  /** The longest stroke of a notch (mm), and how far apart two strokes stand. */
  private static final double LONGEST_TICK = 4;

  private static final double TICKS_APART = 4;

  private final Size size;
  private final Piece piece;
  private final CutLine cutLine;
  private final Motion laid;
  private final Optional<Edge> fold;
  private final Optional<Motion> opened;

  private ShapeMaker(Size size, Piece piece, CutLine cutLine, boolean whole, int quarterTurns) {
    this.size = size;
    this.piece = piece;
    this.cutLine = cutLine;
    laid = laid(piece, quarterTurns);
    fold = piece.foldEdge();
    opened =
        whole
            ? fold.map(edge -> Motion.mirror(edge.path().start(), edge.path().end()))
            : Optional.empty();
  }

  /**
   * The shape.
   *
   * @param whole whether a fold piece is opened over its fold
   * @param quarterTurns counter-clockwise from grain upward
   */
  static PieceShape of(Size size, Piece piece, CutLine cutLine, boolean whole, int quarterTurns) {
    return new ShapeMaker(size, piece, cutLine, whole, quarterTurns).shape();
  }

  /** Grain upward, turned by quarters from there, the stack point at the origin. */
  static Motion laid(Piece piece, int quarterTurns) {
    double up = piece.grain().map(grain -> grain.direction().angleTo(new Vector(0, 1))).orElse(0.0);
    return Motion.turn(piece.stackPoint(), up + quarterTurns * Math.PI / 2)
        .then(Motion.move(Point.ORIGIN.minus(piece.stackPoint())));
  }

  private PieceShape shape() {
    Path cutFromFold = withoutFold(cutLine.outline().path());
    Path sewnFromFold = withoutFold(piece.stitchLine().path());
    Path cutWhole = opened.map(over -> doubled(cutFromFold, over)).orElse(cutFromFold);
    Path sewnWhole = opened.map(over -> doubled(sewnFromFold, over)).orElse(sewnFromFold);
    Outline area = opened.isPresent() ? Outline.of(cutWhole) : cutLine.outline();
    return new PieceShape(
        size,
        piece,
        cutLine,
        area.moved(laid),
        cutWhole.moved(laid),
        sewnWhole.moved(laid),
        opened.isPresent() ? Optional.empty() : fold.map(edge -> foldLine(edge).moved(laid)),
        edges(),
        notches(),
        marks(),
        piece.grain().map(this::grain));
  }

  /** A closed line without the stretches that lie on the fold line; the whole where none do. */
  private Path withoutFold(Path closed) {
    if (fold.isEmpty()) {
      return closed;
    }
    Path line = fold.get().path();
    List<Curve> curves = closed.curves();
    int count = curves.size();
    int after = -1;
    for (int i = 0; i < count && after < 0; i++) {
      if (on(line, curves.get(i)) && !on(line, curves.get((i + 1) % count))) {
        after = (i + 1) % count;
      }
    }
    if (after < 0) {
      return closed;
    }
    List<Curve> kept = new ArrayList<>();
    for (int i = 0; i < count && !on(line, curves.get((after + i) % count)); i++) {
      kept.add(curves.get((after + i) % count));
    }
    return Path.of(kept);
  }

  private static boolean on(Path line, Curve curve) {
    Vector along = line.startDirection();
    return curve instanceof Line
        && Math.abs(along.cross(curve.start().minus(line.start()))) <= Tolerance.SAME_POINT
        && Math.abs(along.cross(curve.end().minus(line.start()))) <= Tolerance.SAME_POINT;
  }

  /** From fold to fold and, mirrored, back. */
  private static Path doubled(Path half, Motion over) {
    return half.isClosed() ? half : half.then(half.moved(over).reversed());
  }

  /** The fold line from cut line to cut line, in the direction of the outline. */
  private Path foldLine(Edge edge) {
    Path rest = withoutFold(cutLine.outline().path());
    return rest.isClosed() ? edge.path() : Path.straight(rest.end(), rest.start());
  }

  private List<PieceShape.EdgeShape> edges() {
    List<PieceShape.EdgeShape> shapes = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      if (!edge.onFold()) {
        shapes.add(
            new PieceShape.EdgeShape(
                edge.name(), edge.path().moved(laid), edge.allowance(), laid.isMirror()));
        opened.ifPresent(
            over ->
                shapes.add(
                    new PieceShape.EdgeShape(
                        edge.name(), edge.path().moved(over.then(laid)), edge.allowance(), true)));
      }
    }
    return shapes;
  }

  private List<PieceShape.NotchShape> notches() {
    List<PieceShape.NotchShape> shapes = new ArrayList<>();
    for (Notch notch : piece.notches()) {
      Optional<Edge> edge = piece.edge(notch.edge());
      if (edge.isPresent()) {
        List<PieceShape.Tick> ticks = ticks(edge.get(), notch);
        shapes.add(moved(notch, ticks, laid));
        opened.ifPresent(over -> shapes.add(moved(notch, ticks, over.then(laid))));
      }
    }
    return shapes;
  }

  private static PieceShape.NotchShape moved(
      Notch notch, List<PieceShape.Tick> ticks, Motion motion) {
    return new PieceShape.NotchShape(
        notch.edge(),
        notch.kind(),
        ticks.stream()
            .map(tick -> new PieceShape.Tick(motion.apply(tick.from()), motion.apply(tick.to())))
            .toList());
  }

  private List<PieceShape.Tick> ticks(Edge edge, Notch notch) {
    if (notch.kind() == Notch.Kind.SINGLE) {
      return List.of(tick(edge, notch.distance()));
    }
    return List.of(
        tick(edge, notch.distance() - TICKS_APART / 2),
        tick(edge, notch.distance() + TICKS_APART / 2));
  }

  /** From the cut line straight toward the stitch line, through half the allowance at most. */
  private PieceShape.Tick tick(Edge edge, double distance) {
    double length = edge.path().length();
    PathPlace place = edge.path().at(Math.max(0, Math.min(length, distance)));
    double width = edge.allowance().width();
    Point beside = place.point().plus(place.left().times(-width));
    Point cut = cutLine.outline().path().nearest(beside).point();
    double deep = width > 0 ? Math.min(width / 2, LONGEST_TICK) : LONGEST_TICK / 2;
    return new PieceShape.Tick(cut, cut.plus(place.left().times(deep)));
  }

  private Path grain(Grain grain) {
    return Path.straight(laid.apply(grain.from()), laid.apply(grain.to()));
  }

  private List<Mark> marks() {
    List<Mark> all = new ArrayList<>();
    for (Mark mark : piece.marks()) {
      all.add(moved(mark, laid));
      if (opened.isPresent() && comesInPairs(mark)) {
        all.add(moved(mark, opened.get().then(laid)));
      }
    }
    return all;
  }

  private static boolean comesInPairs(Mark mark) {
    return !(mark instanceof Mark.Label || mark instanceof Mark.Stretch);
  }

  private static Mark moved(Mark mark, Motion motion) {
    if (mark instanceof Mark.Drill drill) {
      return new Mark.Drill(drill.name(), motion.apply(drill.at()), drill.text(), drill.origin());
    } else if (mark instanceof Mark.Inner inner) {
      return new Mark.Inner(inner.name(), inner.path().moved(motion), inner.text(), inner.origin());
    } else if (mark instanceof Mark.Placement placement) {
      return new Mark.Placement(
          placement.name(), placement.path().moved(motion), placement.text(), placement.origin());
    } else if (mark instanceof Mark.Label label) {
      return new Mark.Label(label.text(), motion.apply(label.at()), label.origin());
    } else if (mark instanceof Mark.Lengthen lengthen) {
      return new Mark.Lengthen(lengthen.line().moved(motion), lengthen.origin());
    } else if (mark instanceof Mark.Level level) {
      return new Mark.Level(level.name(), motion.apply(level.at()), level.origin());
    } else if (mark instanceof Mark.Stretch stretch) {
      return new Mark.Stretch(motion.apply(stretch.direction()), stretch.origin());
    } else if (mark instanceof Mark.Split split) {
      return new Mark.Split(
          split.name(),
          split.lines().stream().map(line -> line.moved(motion)).toList(),
          split.allowance(),
          split.parts(),
          split.origin());
    }
    throw new IllegalStateException("a mark of an unknown kind: " + mark);
  }
}
