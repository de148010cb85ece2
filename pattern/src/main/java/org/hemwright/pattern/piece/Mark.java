package org.hemwright.pattern.piece;

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
}
