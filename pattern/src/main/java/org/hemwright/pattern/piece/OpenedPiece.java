package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * A piece as it lies on the table once cut: a piece drawn as a half is opened over its fold edge,
 * any other is as it is drawn. It keeps the drawing's coordinates; the second half lies beyond the
 * fold.
 *
 * <p>Edges come round the whole, counter-clockwise: first those of the drawn half from the end of
 * the fold to its start, then their mirror images. The fold edge itself is gone.
 *
 * @param drawn the piece as drawn
 * @param mirror the mirroring in its fold edge; absent where it has none
 */
public record OpenedPiece(Piece drawn, Optional<Motion> mirror) {
  /** The piece, opened. */
  public static OpenedPiece of(Piece piece) {
    return new OpenedPiece(
        piece, piece.foldEdge().map(f -> Motion.mirror(f.path().start(), f.path().end())));
  }

  /** The whole stitch line, counter-clockwise. */
  public Outline stitchLine() {
    if (mirror.isEmpty()) {
      return drawn.stitchLine();
    }
    List<Curve> round = new ArrayList<>();
    for (OpenedEdge edge : edges()) {
      round.addAll(edge.edge().path().curves());
    }
    return Outline.of(Path.of(round));
  }

  /** The edges round the whole. */
  public List<OpenedEdge> edges() {
    List<OpenedEdge> edges = new ArrayList<>();
    for (int index : drawnOrder()) {
      edges.add(new OpenedEdge(drawn.edges().get(index), false));
    }
    mirror.ifPresent(
        fold -> {
          for (int i = edges.size() - 1; i >= 0; i--) {
            edges.add(new OpenedEdge(mirrored(edges.get(i).edge(), fold), true));
          }
        });
    return List.copyOf(edges);
  }

  /** The indices of the drawing's edges from the end of the fold to its start. */
  private List<Integer> drawnOrder() {
    int count = drawn.edges().size();
    int fold = 0;
    while (fold < count && !drawn.edges().get(fold).onFold()) {
      fold++;
    }
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int index = mirror.isEmpty() ? i : (fold + 1 + i) % count;
      if (mirror.isEmpty() || index != fold) {
        order.add(index);
      }
    }
    return order;
  }

  private static Edge mirrored(Edge edge, Motion fold) {
    return new Edge(
        edge.name(),
        edge.path().moved(fold).reversed(),
        false,
        edge.allowance(),
        !edge.reversed(),
        edge.origin());
  }

  /**
   * The whole cut line; its stretches answer to {@link #edges()}, one for one.
   *
   * @param half the cut line of the piece as drawn
   */
  public CutLine cutLine(CutLine half) {
    if (mirror.isEmpty()) {
      return half;
    }
    Motion fold = mirror.get();
    Path besides = withoutFold(half);
    Path whole = besides.then(besides.moved(fold).reversed());
    List<Path> stretches = new ArrayList<>();
    for (int index : drawnOrder()) {
      stretches.add(half.edges().get(index));
    }
    for (int i = stretches.size() - 1; i >= 0; i--) {
      stretches.add(stretches.get(i).moved(fold).reversed());
    }
    return new CutLine(Outline.of(whole), stretches);
  }

  /** The half's cut line from the end of the fold to its start. */
  private Path withoutFold(CutLine half) {
    int fold = drawn.edges().indexOf(drawn.foldEdge().orElseThrow());
    Path folded = half.edges().get(fold);
    Path outline = half.outline().path();
    double from = outline.nearest(folded.end()).distance();
    double to = outline.nearest(folded.start()).distance();
    double length = outline.length();
    boolean startsAtEnd = from >= length - Tolerance.SAME_POINT;
    boolean endsAtStart = to <= Tolerance.SAME_POINT;
    return outline.part(startsAtEnd ? 0 : from, endsAtStart ? length : to);
  }

  /**
   * The notches of the whole: those of the drawn half, then those of the other; one that stands on
   * the fold is told once, with its marks on both halves.
   *
   * @param half the marks of the piece as drawn
   */
  public List<NotchMark> notchMarks(List<NotchMark> half) {
    if (mirror.isEmpty()) {
      return List.copyOf(half);
    }
    Motion fold = mirror.get();
    List<NotchMark> whole = new ArrayList<>();
    for (NotchMark mark : half) {
      whole.add(isOnFold(mark.notch()) ? mark.onBothHalves(fold) : mark);
    }
    for (NotchMark mark : half) {
      if (!isOnFold(mark.notch())) {
        mirrored(mark.notch()).ifPresent(notch -> whole.add(mark.mirrored(fold, notch)));
      }
    }
    return List.copyOf(whole);
  }

  /** Whether a notch stands at the end of an edge that meets the fold. */
  boolean isOnFold(Notch notch) {
    return mirror.isPresent()
        && drawn
            .edge(notch.edge())
            .filter(edge -> !edge.onFold())
            .map(edge -> edge.path().at(Math.min(edge.path().length(), notch.distance())).point())
            .filter(point -> mirror.get().apply(point).isAt(point))
            .isPresent();
  }

  private Optional<Notch> mirrored(Notch notch) {
    return drawn
        .edge(notch.edge())
        .filter(edge -> !edge.onFold())
        .map(
            edge ->
                new Notch(
                    notch.edge(),
                    Math.max(0, edge.path().length() - notch.distance()),
                    notch.kind(),
                    notch.name(),
                    notch.origin()));
  }

  /**
   * The hem fold lines of the whole; one that ends on the fold runs through to the other half.
   *
   * @param half the fold lines of the piece as drawn
   */
  public List<FoldLine> foldLines(List<FoldLine> half) {
    List<FoldLine> whole = new ArrayList<>();
    for (FoldLine line : half) {
      if (mirror.isEmpty()) {
        whole.add(line);
      } else {
        addThrough(whole, line, line.path().moved(mirror.get()).reversed());
      }
    }
    return List.copyOf(whole);
  }

  private static void addThrough(List<FoldLine> whole, FoldLine line, Path image) {
    Path path = line.path();
    if (path.end().isAt(image.start())) {
      whole.add(new FoldLine(line.edge(), line.turn(), path.then(image)));
    } else if (image.end().isAt(path.start())) {
      whole.add(new FoldLine(line.edge(), line.turn(), image.then(path)));
    } else {
      whole.add(line);
      whole.add(new FoldLine(line.edge(), line.turn(), image));
    }
  }

  /**
   * What is drawn on the whole. Points and lines stand on both halves, those on the fold once; a
   * lengthen line runs through; labels, levels and the stretch arrow stand once, where drawn.
   */
  public List<Mark> marks() {
    List<Mark> whole = new ArrayList<>(drawn.marks());
    mirror.ifPresent(
        fold -> {
          for (Mark mark : drawn.marks()) {
            mirrored(mark, fold).ifPresent(whole::add);
          }
        });
    return List.copyOf(whole);
  }

  private static Optional<Mark> mirrored(Mark mark, Motion fold) {
    if (mark instanceof Mark.Drill drill) {
      return moved(drill.at(), fold)
          .map(at -> new Mark.Drill(drill.name(), at, drill.text(), drill.origin()));
    }
    if (mark instanceof Mark.Inner inner) {
      return moved(inner.path(), fold)
          .map(path -> new Mark.Inner(inner.name(), path, inner.text(), inner.origin()));
    }
    if (mark instanceof Mark.Placement line) {
      return moved(line.path(), fold)
          .map(path -> new Mark.Placement(line.name(), path, line.text(), line.origin()));
    }
    if (mark instanceof Mark.Lengthen lengthen) {
      return moved(lengthen.line(), fold).map(path -> new Mark.Lengthen(path, lengthen.origin()));
    }
    return Optional.empty();
  }

  private static Optional<Point> moved(Point point, Motion fold) {
    Point image = fold.apply(point);
    return image.isAt(point) ? Optional.empty() : Optional.of(image);
  }

  private static Optional<Path> moved(Path path, Motion fold) {
    Path image = path.moved(fold);
    boolean onFold = path.flattened(Tolerance.OFFSET).stream().allMatch(p -> fold.apply(p).isAt(p));
    return onFold ? Optional.empty() : Optional.of(image);
  }
}
