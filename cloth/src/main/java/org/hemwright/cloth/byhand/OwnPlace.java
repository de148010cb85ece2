package org.hemwright.cloth.byhand;

import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Vector;

/**
 * Where one piece lies.
 *
 * @param item what lies there, as {@code ClothItem} calls it: {@code front.fold}
 * @param copy which of its places it is, from 1
 * @param turned whether it lies end for end
 * @param mirrored whether its printed side lies down
 * @param along from the cut end of the cloth to the piece's own origin (mm)
 * @param across from the fold or the selvedge to the same (mm)
 */
public record OwnPlace(
    String item, int copy, boolean turned, boolean mirrored, double along, double across) {
  private static final double PER_MM = 100;

  /** Where a piece of a laying lies, to a hundredth of a millimetre. */
  public static OwnPlace of(LaidPiece laid) {
    return new OwnPlace(
        laid.item().id(),
        laid.copy(),
        laid.turned(),
        laid.motion().mirrored(),
        rounded(laid.motion().shift().dx()),
        rounded(laid.motion().shift().dy()));
  }

  static double rounded(double mm) {
    return Math.round(mm * PER_MM) / PER_MM + 0.0;
  }

  /** The same, elsewhere. */
  public OwnPlace at(double newAlong, double newAcross) {
    return new OwnPlace(item, copy, turned, mirrored, rounded(newAlong), rounded(newAcross));
  }

  /** From the piece's own frame to the table. */
  Motion motion() {
    return new Motion(turned ? -1 : 1, 0, mirrored, new Vector(along, across));
  }
}
