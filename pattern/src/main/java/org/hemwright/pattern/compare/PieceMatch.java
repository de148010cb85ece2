package org.hemwright.pattern.compare;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.geometry.Motion;
import org.hemwright.pattern.piece.Piece;

/**
 * A piece found again in the new version.
 *
 * @param oldName in the old document
 * @param name in the new
 * @param laying how the new was laid on the old, in every size
 * @param sizes both as drawn, for each size that has both, in the new chart's order
 * @param changes of this piece, notes among them
 */
public record PieceMatch(
    String oldName, String name, Laying laying, Map<String, Both> sizes, List<Change> changes) {
  public PieceMatch {
    sizes = Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
    changes = List.copyOf(changes);
  }

  /**
   * The piece in one size.
   *
   * @param old as it was
   * @param now as it is
   * @param onto lays the new on the old
   */
  public record Both(Piece old, Piece now, Motion onto) {}
}
