package org.hemwright.cloth.rule;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.fabric.Fabric;

/**
 * How a piece is held to the bars of its cloth.
 *
 * @param repeat the stripes or checks
 * @param along how far along the cloth its own origin lies behind a bar (mm); 0 where no bar runs
 *     across the cloth
 * @param across where across the cloth its copies lie; absent where no bar runs along the cloth
 * @param mates its notches that lie on the same place of the repeat as another
 */
public record Striped(
    Fabric.Repeat repeat, double along, Optional<Across> across, List<Mate> mates) {
  /** This near to a bar (mm) an axis lies on it: what rounding adds. */
  private static final double CENTRED = 1e-6;

  public Striped {
    mates = List.copyOf(mates);
  }

  /**
   * How far across the cloth the axes of copies lie behind a bar.
   *
   * @param drawn of a copy as drawn (mm)
   * @param mirrored of a mirrored one (mm); as far before a bar where the bars are even, so that
   *     the copy is the mirror image in its bars too
   */
  public record Across(double drawn, double mirrored) {
    /** Of copies that are mirror images of each other in their bars too. */
    static Across even(double drawn) {
      return new Across(drawn, -drawn);
    }

    /** Of a copy as drawn, or of a mirrored one (mm). */
    double of(boolean ofMirrored) {
      return ofMirrored ? mirrored : drawn;
    }
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

  /**
   * Whether a copy of a shape that is even-sided is its mirror image in its bars too: where they
   * are even its axis lies on one, as on a fold; where they are not, copies as drawn and mirrored
   * ones lie alike.
   */
  boolean isCentred() {
    return across.isEmpty() || isCentred(across.get());
  }

  private boolean isCentred(Across own) {
    double meant = repeat.unevenAcross() ? own.mirrored : 0;
    return Phases.apart(own.drawn, meant, repeat.across().orElseThrow()) <= CENTRED;
  }
}
