package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    List<String> names = sizes.stream().map(Size::name).toList();
    List<CornerRule> rules = new ArrayList<>();
    int last = edges.size() - 1;
    for (int i = 0; i < edges.size(); i++) {
      List<Double> across = new ArrayList<>();
      List<Double> up = new ArrayList<>();
      for (int p = 1; p < sizes.size(); p++) {
        Vector before = corners.get(p - 1).get(i).minus(corners.get(p - 1).get(last));
        Vector step = corners.get(p).get(i).minus(corners.get(p).get(last)).minus(before);
        across.add(step.dx());
        up.add(step.dy());
      }
      rules.add(new CornerRule(edges.get(i), StepWords.of(across, names), StepWords.of(up, names)));
    }
    return Optional.of(rules);
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
