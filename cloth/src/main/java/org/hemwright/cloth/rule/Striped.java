package org.hemwright.cloth.rule;

import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.fabric.Fabric;

/**
 * How a piece is held to the bars of its cloth.
 *
 * @param repeat the stripes or checks
 * @param along how far along the cloth its own origin lies behind a bar (mm); 0 where no bar runs
 *     across the cloth
 * @param across how far across the cloth the axis of a copy as drawn lies behind a bar, a mirrored
 *     one before it (mm); absent where no bar runs along the cloth
 * @param mates its notches that lie on the same place of the repeat as another
 */
public record Striped(Fabric.Repeat repeat, double along, OptionalDouble across, List<Mate> mates) {
  /** This near to a bar (mm) an axis lies on it: what rounding adds. */
  private static final double CENTRED = 1e-6;

  public Striped {
    mates = List.copyOf(mates);
  }

  /**
   * A notch, and the one that lies on the same place of the repeat.
   *
   * @param notch their name; that of the seam where parts of a piece are joined again
   * @param mirrored whether it is on a mirrored copy
   * @param at where it lies at the stitch line, in the piece's own frame
   * @param meets the other
   */
  public record Mate(String notch, boolean mirrored, Point at, Met meets) {}

  /**
   * The other of two that lie alike.
   *
   * @param piece its piece's id
   * @param mirrored whether it is on a mirrored copy
   * @param at where it lies, in that piece's own frame
   * @param along whether they lie alike along the cloth
   * @param across whether they lie alike across it
   */
  public record Met(String piece, boolean mirrored, Point at, boolean along, boolean across) {}

  Striped shifted(double step) {
    return new Striped(repeat, along + step, across, mates);
  }

  /** Whether its axis lies on a bar that runs along the cloth, as on a fold. */
  boolean isCentred() {
    return across.isEmpty()
        || Phases.apart(across.getAsDouble(), 0, repeat.across().orElseThrow()) <= CENTRED;
  }
}
