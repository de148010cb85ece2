package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.SmoothCurve;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/**
 * A line moved into a piece or out of it meets its neighbour as the line that it comes from did:
 * where the neighbour curves, the last stretch is redrawn. So a facing runs as smoothly across a
 * seam at its inner edge as at its outer one (handbook section 1, "Junctions").
 */
final class KeptCorner {
  /** How far from the corner a line is redrawn at most (mm; common practice, no source). */
  private static final double REACH = 40;

  /** How much of the line is redrawn at most. */
  private static final double SHARE = 1.0 / 3;

  private KeptCorner() {}

  /** The line with its end, or its start, running in another direction. */
  static Path bent(Path line, boolean atEnd, Vector direction) {
    Vector own = atEnd ? line.endDirection() : line.startDirection();
    if (Math.abs(own.angleTo(direction)) <= Tolerance.SAME_DIRECTION) {
      return line;
    }
    double length = line.length();
    double reach = Math.min(REACH, length * SHARE);
    double cut = atEnd ? length - reach : reach;
    Path kept = atEnd ? line.part(0, cut) : line.part(cut, length);
    List<Curve> curves = new ArrayList<>();
    if (atEnd) {
      curves.addAll(kept.curves());
      curves.addAll(drawn(kept.end(), kept.endDirection(), line.end(), direction));
    } else {
      curves.addAll(drawn(line.start(), direction, kept.start(), kept.startDirection()));
      curves.addAll(kept.curves());
    }
    return Path.of(curves);
  }

  private static List<Curve> drawn(Point from, Vector leaving, Point to, Vector arriving) {
    return SmoothCurve.from(from).leaving(leaving).to(to).arriving(arriving).path().curves();
  }
}
