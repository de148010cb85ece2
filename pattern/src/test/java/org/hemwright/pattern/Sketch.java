package org.hemwright.pattern;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/** Draws pieces for tests in a few lines: named points, then edges as the designer draws them. */
public final class Sketch {
  public static final Origin ORIGIN = new Origin("pattern.hem", 1, 1);
  private final String name;
  private final Map<String, Point> points = new LinkedHashMap<>();
  private final List<Drawn> edges = new ArrayList<>();
  private final List<Notch> notches = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private List<Copy> copies = List.of(new Copy("1", false));
  private Optional<Cut> cut = Optional.of(new Cut(1, "main", false, false, ORIGIN));
  private Optional<Grain> grain = Optional.empty();
  private String fold = "";

  private record Drawn(String name, Path path, boolean reversed) {}

  private Sketch(String name) {
    this.name = name;
  }

  public static Sketch piece(String name) {
    return new Sketch(name);
  }

  /** Cuts {@code count} copies, every second one mirrored if so asked. */
  public Sketch cut(int count, boolean mirrored, String... names) {
    List<Copy> made = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      made.add(
          new Copy(names.length > i ? names[i] : Integer.toString(i + 1), mirrored && i % 2 == 1));
    }
    copies = made;
    cut = Optional.of(new Cut(count, "main", false, mirrored, ORIGIN));
    return this;
  }

  public Sketch uncut() {
    copies = List.of();
    cut = Optional.empty();
    return this;
  }

  public Sketch point(String point, double x, double y) {
    points.put(point, new Point(x, y));
    return this;
  }

  private Point at(String point) {
    return Optional.ofNullable(points.get(point)).orElseThrow();
  }

  /** The next edge counter-clockwise, drawn by the designer in that direction. */
  public Sketch along(String edge, String from, String to) {
    return along(edge, Path.straight(at(from), at(to)));
  }

  public Sketch along(String edge, Path path) {
    edges.add(new Drawn(edge, path, false));
    return this;
  }

  /** The next edge counter-clockwise, from one point to another, drawn the other way. */
  public Sketch against(String edge, String from, String to) {
    return against(edge, Path.straight(at(from), at(to)));
  }

  public Sketch against(String edge, Path path) {
    edges.add(new Drawn(edge, path, true));
    return this;
  }

  public Sketch fold(String edge) {
    fold = edge;
    return this;
  }

  /** A notch at a length from the designer's start of an edge. */
  public Sketch notch(String edge, double fromHerStart, String notch) {
    Drawn drawn = edges.stream().filter(e -> e.name.equals(edge)).findFirst().orElseThrow();
    double distance = drawn.reversed ? drawn.path.length() - fromHerStart : fromHerStart;
    notches.add(
        new Notch(
            edge,
            distance,
            Notch.Kind.SINGLE,
            notch.isEmpty() ? Optional.empty() : Optional.of(notch),
            ORIGIN));
    return this;
  }

  public Sketch grain(double x0, double y0, double x1, double y1) {
    grain = Optional.of(new Grain(new Point(x0, y0), new Point(x1, y1), ORIGIN));
    return this;
  }

  public Sketch placement(String line, String... through) {
    List<Point> path = new ArrayList<>();
    for (String point : through) {
      path.add(at(point));
    }
    marks.add(new Mark.Placement(line, Path.polyline(path), Optional.empty(), ORIGIN));
    return this;
  }

  public Sketch level(String level, double x, double y) {
    marks.add(new Mark.Level(level, new Point(x, y), ORIGIN));
    return this;
  }

  public Piece draw() {
    List<Edge> made = new ArrayList<>();
    List<Corner> corners = new ArrayList<>();
    Path whole = edges.get(0).path;
    for (int i = 0; i < edges.size(); i++) {
      Drawn drawn = edges.get(i);
      boolean onFold = drawn.name.equals(fold);
      Allowance allowance = onFold ? Allowance.NONE : new Allowance.Plain(10);
      made.add(new Edge(drawn.name, drawn.path, onFold, allowance, drawn.reversed, ORIGIN));
      Drawn before = edges.get((i + edges.size() - 1) % edges.size());
      corners.add(new Corner(before.name, drawn.name, drawn.path.start(), CornerFinish.USUAL));
      whole = i == 0 ? whole : whole.then(drawn.path);
    }
    boolean onFold = !fold.isEmpty();
    List<Cut> cuts =
        cut.map(c -> List.of(new Cut(c.count(), c.fabric(), onFold, c.mirrored(), ORIGIN)))
            .orElse(List.of());
    PieceCard card =
        new PieceCard(name, "Piece " + name, 1, cuts, copies, false, Optional.empty(), ORIGIN);
    return new Piece(
        card,
        Outline.of(whole),
        made,
        corners,
        notches,
        grain,
        marks,
        List.of(),
        edges.get(0).path.start());
  }

  /** A rectangle from the origin: lower and upper drawn to the right, both ends upward. */
  public static Sketch rectangle(
      String name,
      double width,
      double height,
      String lower,
      String right,
      String upper,
      String left) {
    return piece(name)
        .point("a", 0, 0)
        .point("b", width, 0)
        .point("c", width, height)
        .point("d", 0, height)
        .along(lower, "a", "b")
        .along(right, "b", "c")
        .against(upper, "c", "d")
        .against(left, "d", "a")
        .grain(width / 2, height * 0.2, width / 2, height * 0.8);
  }
}
