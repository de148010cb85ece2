package org.hemwright.pattern.piece;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Origin;

/** Something drawn on a piece that is not its outline. */
public sealed interface Mark {
  /** Where the document puts it. */
  Origin origin();

  /** A point to transfer to the cloth: a dart point, a pocket corner, a button. */
  record Drill(String name, Point at, Optional<String> text, Origin origin) implements Mark {}

  /** A line or curve drawn inside, not sewn to anything: a fold, a centre, a style line. */
  record Inner(String name, Path path, Optional<String> text, Origin origin) implements Mark {}

  /** Where another piece's edge is sewn on: a pocket, a facing. */
  record Placement(String name, Path path, Optional<String> text, Origin origin) implements Mark {}

  /** The designer's own words at a place. */
  record Label(String text, Point at, Origin origin) implements Mark {}

  /**
   * Where the piece is cut apart or folded to make it longer or shorter, square to the grain.
   *
   * @param line from side to side of the piece
   */
  record Lengthen(Path line, Origin origin) implements Mark {}

  /** The height of a body level on this piece, named for the body: {@code hip}. */
  record Level(String name, Point at, Origin origin) implements Mark {}

  /**
   * The way the cloth must stretch most.
   *
   * @param direction unit
   */
  record Stretch(Vector direction, Origin origin) implements Mark {}

  /**
   * How the piece is cut into parts where a cloth is too narrow for the whole of it. Nothing is cut
   * by it as long as the whole piece fits. {@code org.hemwright.pattern.split} makes the parts.
   *
   * @param name of the split, and of the seam that joins the parts again
   * @param lines from edge to edge of the drawing; none where it is cut apart along its fold edge
   * @param allowance of the new edges on either side (mm)
   * @param parts names for the parts, in order; none: they are numbered
   */
  record Split(String name, List<Path> lines, double allowance, List<String> parts, Origin origin)
      implements Mark {
    public Split {
      lines = List.copyOf(lines);
      parts = List.copyOf(parts);
      if (!(allowance >= 0) || !Double.isFinite(allowance)) {
        throw new IllegalArgumentException("an allowance is 0 mm or more, not " + allowance);
      }
    }

    /** Whether the piece is cut along its fold edge. */
    public boolean onFold() {
      return lines.isEmpty();
    }

    /** The name of a part, counted from 0, of the piece of a name. */
    public String part(String piece, int index) {
      return index < parts.size() ? parts.get(index) : piece + "_" + (index + 1);
    }
  }
}
