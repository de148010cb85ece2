package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Origin;

/** Draws pieces for tests, edge by edge, counter-clockwise. */
final class PieceSketch {
  static final Origin ORIGIN = new Origin("pattern.hem", 1, 1);

  private final String name;
  private final List<Edge> edges = new ArrayList<>();
  private final Map<String, CornerFinish> finishes = new LinkedHashMap<>();
  private final List<Notch> notches = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private Optional<Grain> grain = Optional.empty();

  private PieceSketch(String name) {
    this.name = name;
  }

  static PieceSketch named(String name) {
    return new PieceSketch(name);
  }

  static Path straight(double x0, double y0, double x1, double y1) {
    return Path.straight(new Point(x0, y0), new Point(x1, y1));
  }

  static Allowance plain(double width) {
    return new Allowance.Plain(width);
  }

  static Allowance turned(Double... folds) {
    return new Allowance.TurnedBack(List.of(folds));
  }

  PieceSketch edge(String edge, Path path, Allowance allowance) {
    edges.add(new Edge(edge, path, false, allowance, false, ORIGIN));
    return this;
  }

  PieceSketch fold(String edge, Path path) {
    edges.add(new Edge(edge, path, true, Allowance.NONE, false, ORIGIN));
    return this;
  }

  /** How the corner where this edge begins is finished. */
  PieceSketch cornerBefore(String edge, CornerFinish finish) {
    finishes.put(edge, finish);
    return this;
  }

  PieceSketch notch(String edge, double distance, Notch.Kind kind) {
    notches.add(new Notch(edge, distance, kind, Optional.empty(), ORIGIN));
    return this;
  }

  PieceSketch mark(Mark mark) {
    marks.add(mark);
    return this;
  }

  PieceSketch grain(Point from, Point to) {
    grain = Optional.of(new Grain(from, to, ORIGIN));
    return this;
  }

  Piece piece() {
    List<Curve> round = new ArrayList<>();
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Edge before = edges.get((i + edges.size() - 1) % edges.size());
      Edge edge = edges.get(i);
      round.addAll(edge.path().curves());
      corners.add(
          new Corner(
              before.name(),
              edge.name(),
              edge.path().start(),
              finishes.getOrDefault(edge.name(), CornerFinish.USUAL)));
    }
    PieceCard card =
        new PieceCard(name, name, 1, List.of(), List.of(), false, Optional.empty(), ORIGIN);
    return new Piece(
        card,
        Outline.of(Path.of(round)),
        edges,
        corners,
        notches,
        grain,
        marks,
        List.of(),
        edges.get(0).path().start());
  }

  /** A straight-sided piece: edges e0, e1 … all with one allowance. */
  static PieceSketch polygon(Allowance allowance, Point... points) {
    PieceSketch sketch = named("polygon");
    for (int i = 0; i < points.length; i++) {
      sketch.edge("e" + i, Path.straight(points[i], points[(i + 1) % points.length]), allowance);
    }
    return sketch;
  }
}
