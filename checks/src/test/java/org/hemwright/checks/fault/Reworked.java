package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/** Pieces and sizes with one thing in them exchanged. */
final class Reworked {
  private Reworked() {}

  static SizedPattern size(SizedPattern sized, Piece changed) {
    return new SizedPattern(
        sized.size(),
        sized.pieces().stream().map(p -> p.name().equals(changed.name()) ? changed : p).toList(),
        sized.seams(),
        sized.elastics(),
        sized.numbers());
  }

  static SizedPattern seams(SizedPattern sized, List<Seam> seams) {
    return new SizedPattern(sized.size(), sized.pieces(), seams, sized.elastics(), sized.numbers());
  }

  static SizedPattern seam(SizedPattern sized, Seam changed) {
    return seams(
        sized,
        sized.seams().stream().map(s -> s.name().equals(changed.name()) ? changed : s).toList());
  }

  static SizedPattern elastic(SizedPattern sized, Elastic changed) {
    return new SizedPattern(
        sized.size(),
        sized.pieces(),
        sized.seams(),
        sized.elastics().stream().map(e -> e.name().equals(changed.name()) ? changed : e).toList(),
        sized.numbers());
  }

  static Piece notches(Piece piece, List<Notch> notches) {
    return new Piece(
            piece.card(),
            piece.stitchLine(),
            piece.edges(),
            piece.corners(),
            notches,
            piece.grain(),
            piece.marks(),
            piece.openings(),
            piece.stackPoint())
        .sewnAs(piece);
  }

  static Piece card(Piece piece, PieceCard card) {
    return new Piece(
            card,
            piece.stitchLine(),
            piece.edges(),
            piece.corners(),
            piece.notches(),
            piece.grain(),
            piece.marks(),
            piece.openings(),
            piece.stackPoint())
        .sewnAs(piece);
  }

  static Piece corners(Piece piece, List<Corner> corners) {
    return new Piece(
            piece.card(),
            piece.stitchLine(),
            piece.edges(),
            corners,
            piece.notches(),
            piece.grain(),
            piece.marks(),
            piece.openings(),
            piece.stackPoint())
        .sewnAs(piece);
  }

  static Piece grain(Piece piece, Optional<Grain> grain) {
    return new Piece(
            piece.card(),
            piece.stitchLine(),
            piece.edges(),
            piece.corners(),
            piece.notches(),
            grain,
            piece.marks(),
            piece.openings(),
            piece.stackPoint())
        .sewnAs(piece);
  }

  static Piece marks(Piece piece, List<Mark> marks) {
    return new Piece(
            piece.card(),
            piece.stitchLine(),
            piece.edges(),
            piece.corners(),
            piece.notches(),
            piece.grain(),
            marks,
            piece.openings(),
            piece.stackPoint())
        .sewnAs(piece);
  }

  /** With other edges, which still meet end to end. */
  static Piece edges(Piece piece, List<Edge> edges) {
    List<Curve> round = new ArrayList<>();
    edges.forEach(edge -> round.addAll(edge.path().curves()));
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Corner corner = piece.corners().get(i);
      corners.add(
          new Corner(
              corner.before(), corner.after(), edges.get(i).path().start(), corner.finish()));
    }
    return new Piece(
            piece.card(),
            Outline.of(Path.of(round)),
            edges,
            corners,
            piece.notches(),
            piece.grain(),
            piece.marks(),
            piece.openings(),
            piece.stackPoint())
        .sewnAs(piece);
  }

  static Piece edge(Piece piece, Edge changed) {
    return edges(
        piece,
        piece.edges().stream().map(e -> e.name().equals(changed.name()) ? changed : e).toList());
  }

  static Edge path(Edge edge, Path path) {
    return new Edge(
        edge.name(), path, edge.onFold(), edge.allowance(), edge.reversed(), edge.origin());
  }

  static Edge allowance(Edge edge, Allowance allowance) {
    return new Edge(
        edge.name(), edge.path(), edge.onFold(), allowance, edge.reversed(), edge.origin());
  }

  /** The piece with the corner where edge {@code index} begins moved; both edges follow. */
  static Piece cornerMoved(Piece piece, int index, Vector by) {
    int count = piece.edges().size();
    int before = (index + count - 1) % count;
    List<Edge> edges = new ArrayList<>(piece.edges());
    edges.set(before, path(edges.get(before), bent(edges.get(before).path(), Vector.ZERO, by)));
    edges.set(index, path(edges.get(index), bent(edges.get(index).path(), by, Vector.ZERO)));
    return edges(piece, edges);
  }

  /** A path whose ends are moved by these steps and all between in proportion. */
  static Path bent(Path path, Vector atStart, Vector atEnd) {
    Point start = path.start();
    Vector chord = path.end().minus(start);
    double square = chord.dot(chord);
    UnaryOperator<Point> moved =
        point -> {
          double share = Math.max(0, Math.min(1, point.minus(start).dot(chord) / square));
          return point.plus(atStart.times(1 - share)).plus(atEnd.times(share));
        };
    return through(path, moved);
  }

  /** A path with every point of its curves carried elsewhere. */
  static Path through(Path path, UnaryOperator<Point> moved) {
    List<Curve> curves = new ArrayList<>();
    for (Curve curve : path.curves()) {
      if (curve instanceof Cubic cubic) {
        curves.add(
            new Cubic(
                moved.apply(cubic.start()),
                moved.apply(cubic.control1()),
                moved.apply(cubic.control2()),
                moved.apply(cubic.end())));
      } else {
        curves.add(new Line(moved.apply(curve.start()), moved.apply(curve.end())));
      }
    }
    return Path.of(curves);
  }

  /** A piece drawn wider and longer by factors, seen from its stack point; its levels with it. */
  static Piece scaled(Piece piece, double wider, double longer) {
    Point still = piece.stackPoint();
    UnaryOperator<Point> moved =
        point ->
            new Point(
                still.x() + (point.x() - still.x()) * wider,
                still.y() + (point.y() - still.y()) * longer);
    List<Mark> marks = new ArrayList<>();
    for (Mark mark : piece.marks()) {
      marks.add(
          mark instanceof Mark.Level level
              ? new Mark.Level(level.name(), moved.apply(level.at()), level.origin())
              : mark);
    }
    return marks(
        edges(
            piece,
            piece.edges().stream().map(edge -> path(edge, through(edge.path(), moved))).toList()),
        marks);
  }

  /** A size in which every piece is drawn wider by a factor. */
  static SizedPattern scaled(SizedPattern sized, double wider) {
    return new SizedPattern(
        sized.size(),
        sized.pieces().stream().map(piece -> scaled(piece, wider, 1)).toList(),
        sized.seams(),
        sized.elastics(),
        sized.numbers());
  }

  /** The corner where an edge ends, its edge turned about that end by an angle. */
  static Edge turnedAtEnd(Edge edge, boolean last, double radians) {
    List<Curve> curves = new ArrayList<>(edge.path().curves());
    int index = last ? curves.size() - 1 : 0;
    Curve curve = curves.get(index);
    Cubic cubic = curve instanceof Cubic own ? own : Cubic.straight(curve.start(), curve.end());
    Point corner = last ? cubic.end() : cubic.start();
    Point control = last ? cubic.control2() : cubic.control1();
    Point turned = corner.plus(control.minus(corner).turned(radians));
    curves.set(
        index,
        last
            ? new Cubic(cubic.start(), cubic.control1(), turned, cubic.end())
            : new Cubic(cubic.start(), turned, cubic.control2(), cubic.end()));
    return path(edge, Path.of(curves));
  }
}
