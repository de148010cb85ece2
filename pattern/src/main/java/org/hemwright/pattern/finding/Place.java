package org.hemwright.pattern.finding;

import java.util.Optional;
import org.hemwright.geometry.Point;

/**
 * Where a finding points: a place in a text, a point on a piece (mm), or both.
 *
 * @param origin where in a file
 * @param piece the piece's name
 * @param point on that piece, in its own coordinates (mm)
 */
public record Place(Optional<Origin> origin, Optional<String> piece, Optional<Point> point) {
  /** A place in a text. */
  public static Place in(Origin origin) {
    return new Place(Optional.of(origin), Optional.empty(), Optional.empty());
  }

  /** A place in a text and a point on a piece. */
  public static Place on(Origin origin, String piece, Point point) {
    return new Place(Optional.of(origin), Optional.of(piece), Optional.of(point));
  }
}
