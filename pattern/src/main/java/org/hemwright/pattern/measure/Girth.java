package org.hemwright.pattern.measure;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Piece;

/**
 * How far a piece reaches across at a height: the sum of the stretches that lie within the stitch
 * line, level with the drawing's x, less what darts and pleats take in there (handbook section 1,
 * "Ease").
 */
public final class Girth {
  private Girth() {}

  /** Across one drawing, a half where it has a fold edge (mm); 0 above and below the piece. */
  public static double across(Piece piece, double y) {
    Outline outline = piece.stitchLine();
    Box box = outline.bounds();
    if (y < box.minY() - Tolerance.SAME_POINT || y > box.maxY() + Tolerance.SAME_POINT) {
      return 0;
    }
    double level = Math.max(box.minY(), Math.min(box.maxY(), y));
    Path line = Path.straight(new Point(box.minX() - 1, level), new Point(box.maxX() + 1, level));
    double sum = within(outline, line, level);
    for (Intake intake : piece.intakes()) {
      if (intake instanceof Intake.Dart dart) {
        sum -= within(mouth(piece, dart), line, level);
      } else if (intake instanceof Intake.Pleat pleat) {
        sum -= between(pleat, line);
      }
    }
    return sum;
  }

  /** What lies outside the legs of a dart, its cap with it. */
  private static Outline mouth(Piece piece, Intake.Dart dart) {
    Path cap = piece.edge(dart.edge()).orElseThrow().path().part(dart.from(), dart.to());
    return Outline.of(cap.then(Path.polyline(List.of(cap.end(), dart.tip(), cap.start()))));
  }

  /** What a pleat takes in where the level crosses both its outer lines. */
  private static double between(Intake.Pleat pleat, Path line) {
    List<Meeting> first = pleat.lines().get(0).meetings(line);
    List<Meeting> last = pleat.lines().get(pleat.lines().size() - 1).meetings(line);
    return first.isEmpty() || last.isEmpty()
        ? 0
        : Math.abs(first.get(0).point().x() - last.get(0).point().x());
  }

  private static double within(Outline outline, Path line, double level) {
    List<Double> crossings = new ArrayList<>();
    line.meetings(outline.path()).forEach(meeting -> crossings.add(meeting.point().x()));
    crossings.sort(Double::compare);
    double sum = 0;
    for (int i = 1; i < crossings.size(); i++) {
      double left = crossings.get(i - 1);
      double right = crossings.get(i);
      if (right - left > Tolerance.SAME_POINT
          && outline.contains(new Point((left + right) / 2, level))) {
        sum += right - left;
      }
    }
    return sum;
  }

  /** Round the garment as far as the piece goes: all cut copies, opened over the fold (mm). */
  public static double of(Piece piece, double y) {
    int copies = Math.max(1, piece.card().copies().size());
    return across(piece, y) * copies * (piece.foldEdge().isPresent() ? 2 : 1);
  }
}
