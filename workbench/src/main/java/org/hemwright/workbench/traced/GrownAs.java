package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.Evaluation;
import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/**
 * Steps taken from a piece that the document drafts: at each corner of another piece with edges of
 * the same names, by how much the drafted corner moves from size to size, seen from one corner.
 */
public final class GrownAs {
  /** Ends of edges this close are one corner (mm). */
  private static final double SAME_CORNER = 0.05;

  private GrownAs() {}

  /**
   * The rules; absent where the piece lacks an edge, or is not drafted in every size.
   *
   * @param piece the drafted piece, lying the same way up
   * @param edges the edges of the other, in order; the corner at the end of the last stays
   */
  public static Optional<List<CornerRule>> rules(SizeRun run, String piece, List<String> edges) {
    List<Size> sizes = run.pattern().chart().sizes();
    List<List<Point>> corners = new ArrayList<>();
    for (Size size : sizes) {
      Optional<List<Point>> here =
          run.size(size.name())
              .flatMap(sized -> sized.piece(piece))
              .flatMap(drafted -> corners(drafted, edges));
      if (here.isEmpty()) {
        return Optional.empty();
      }
      corners.add(here.get());
    }
    List<CornerRule> rules = new ArrayList<>();
    int last = edges.size() - 1;
    List<Point> fixed = corners.stream().map(each -> each.get(last)).toList();
    for (int i = 0; i < edges.size(); i++) {
      int corner = i;
      List<Point> places = corners.stream().map(each -> each.get(corner)).toList();
      rules.add(rule(edges.get(i), places, fixed, sizes));
    }
    return Optional.of(rules);
  }

  /** By how much a place moves from size to size, seen from another. */
  private static CornerRule rule(
      String edge, List<Point> places, List<Point> fixed, List<Size> sizes) {
    List<String> names = sizes.stream().map(Size::name).toList();
    List<Double> across = new ArrayList<>();
    List<Double> up = new ArrayList<>();
    for (int p = 1; p < sizes.size(); p++) {
      Vector before = places.get(p - 1).minus(fixed.get(p - 1));
      Vector step = places.get(p).minus(fixed.get(p)).minus(before);
      across.add(step.dx());
      up.add(step.dy());
    }
    return new CornerRule(edge, StepWords.of(across, names), StepWords.of(up, names));
  }

  /**
   * The lines by which a traced piece grows as a drafted one: at its corners, and at those dots on
   * its edges that are points of the drafted piece by their names. Nothing where the corners are
   * not all to be had.
   *
   * @param values of the document in which it is drafted
   */
  public static List<String> lines(Evaluation values, String piece, TracedPiece.Grown grown) {
    SizeRun run = values.drawn().run();
    Optional<List<CornerRule>> rules = rules(run, piece, grown.edges());
    if (rules.isEmpty()) {
      return List.of();
    }
    List<String> lines = new ArrayList<>();
    rules.get().forEach(rule -> lines.add(rule.line()));
    List<Size> sizes = run.pattern().chart().sizes();
    List<Point> fixed = new ArrayList<>();
    for (Size size : sizes) {
      Piece drafted = run.size(size.name()).flatMap(sized -> sized.piece(piece)).orElseThrow();
      List<Point> here = corners(drafted, grown.edges()).orElseThrow();
      fixed.add(here.get(here.size() - 1));
    }
    for (TracedPiece.Grown.Dot dot : grown.dots()) {
      List<Point> places = places(values, piece, dot.name(), sizes.size());
      if (places.size() == sizes.size()) {
        lines.add(rule(dot.edge(), places, fixed, sizes).atDot(dot.drawn()));
      }
    }
    return lines;
  }

  /** Where a point of a piece lies in each size; fewer where it is not drawn in all. */
  private static List<Point> places(Evaluation values, String piece, String name, int sizes) {
    List<Point> places = new ArrayList<>();
    values.plan().things().stream()
        .filter(thing -> thing.owner().equals(piece) && thing.name().equals(name))
        .filter(thing -> thing.what() == Drawn.What.POINT)
        .findFirst()
        .ifPresent(
            thing -> {
              for (int p = 0; p < sizes; p++) {
                values.point(p, thing).ifPresent(places::add);
              }
            });
    return places;
  }

  /** The corner at the end of each edge, where it meets the next. */
  private static Optional<List<Point>> corners(Piece piece, List<String> edges) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Optional<Path> here = piece.edge(edges.get(i)).map(Edge::path);
      Optional<Path> next = piece.edge(edges.get((i + 1) % edges.size())).map(Edge::path);
      if (here.isEmpty() || next.isEmpty()) {
        return Optional.empty();
      }
      if (here.get().end().distanceTo(next.get().start()) <= SAME_CORNER) {
        corners.add(here.get().end());
      } else if (here.get().start().distanceTo(next.get().end()) <= SAME_CORNER) {
        corners.add(here.get().start());
      } else {
        return Optional.empty();
      }
    }
    return Optional.of(corners);
  }
}
