package org.hemwright.pattern.piece;

import org.hemwright.pattern.finding.Origin;

/**
 * How many to cut of a piece from one fabric.
 *
 * @param count how many, 1 or more; a piece on the fold counts once for each whole piece
 * @param fabric the fabric's name
 * @param onFold whether it is cut with its fold edge on the fold of the cloth
 * @param mirrored whether every second one is cut mirrored, so that they make a left and a right
 * @param origin where the document says so
 */
public record Cut(int count, String fabric, boolean onFold, boolean mirrored, Origin origin) {
  public Cut {
    if (count < 1) {
      throw new IllegalArgumentException("a piece is cut at least once, not " + count);
    }
  }
}
