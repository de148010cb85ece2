package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.OffsetPath;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/**
 * A line on which a turned-back allowance is folded, drawn from cut line to cut line. The first is
 * the edge itself; a hem turned twice has a second, as deep outside it as the hem is.
 *
 * @param edge the name of the edge that is turned back
 * @param turn 1 for the edge itself, 2 for the fold of the turn-under
 * @param path in the direction of the edge
 */
public record FoldLine(String edge, int turn, Path path) {
  /** The fold lines of all turned-back edges of a piece, in the order of its edges. */
  public static List<FoldLine> of(Piece piece, CutLine cutLine) {
    List<FoldLine> lines = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      if (edge.allowance() instanceof Allowance.TurnedBack hem) {
        double reach = 2 * cutLine.outline().bounds().width() + cutLine.outline().bounds().height();
        lines.add(new FoldLine(edge.name(), 1, across(edge.path(), reach, cutLine)));
        if (hem.folds().size() > 1) {
          Path second = OffsetPath.of(edge.path(), -hem.folds().get(0));
          lines.add(new FoldLine(edge.name(), 2, across(second, reach, cutLine)));
        }
      }
    }
    return List.copyOf(lines);
  }

  /** A line run on straight, or trimmed, to the cut line at both its ends. */
  private static Path across(Path line, double reach, CutLine cutLine) {
    Point farBack = line.start().minus(line.startDirection().times(reach));
    Point farOn = line.end().plus(line.endDirection().times(reach));
    List<Curve> curves = new ArrayList<>();
    curves.add(new Line(farBack, line.start()));
    curves.addAll(line.curves());
    curves.add(new Line(line.end(), farOn));
    Path run = Path.of(curves);
    double middle = reach + line.length() / 2;
    double from = reach;
    double to = reach + line.length();
    boolean endFound = false;
    for (Meeting meeting : run.meetings(cutLine.outline().path())) {
      double at = meeting.distanceOnThis();
      if (at < middle) {
        from = at;
      } else if (!endFound) {
        to = at;
        endFound = true;
      }
    }
    return run.part(from, to);
  }
}
