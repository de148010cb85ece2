package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.hemwright.geometry.Vector;

/**
 * Whether a laying still holds where the bars of a real cloth run beside those it was made for. A
 * laying has a bar in the fold, or down the middle of single cloth; a maker folds hers along the
 * bar that is nearest to the middle, or begins from it.
 *
 * @param laying with pieces that are held to bars along the cloth
 * @param repeat from bar to bar across it (mm)
 */
public record BarsAside(ClothLaying laying, double repeat) {
  /** The laying is tried at so many steps to either side. */
  private static final int STEPS = 4;

  /**
   * How far beside the middle the nearest bar may run (mm, 0 up to half the repeat, which is
   * anywhere) so that every piece still finds room when it moves with the bars, and what is held to
   * none as far as it can. Absent where nothing is held to bars that run along the cloth.
   */
  public static OptionalDouble of(ClothLaying laying) {
    return laying.pieces().stream()
        .filter(laid -> laid.piece().heldAcross())
        .flatMapToDouble(laid -> laid.piece().striped().orElseThrow().repeat().across().stream())
        .limit(1)
        .map(repeat -> new BarsAside(laying, repeat).most())
        .findFirst();
  }

  private double most() {
    double held = room(laid -> laid.piece().heldAcross());
    double all = room(laid -> true);
    return held > all && holdsUpTo(held) ? held : all;
  }

  /** How far some of the pieces may move across the cloth, either way (mm). */
  private double room(Predicate<LaidPiece> which) {
    double room = repeat / 2;
    for (LaidPiece laid : laying.pieces()) {
      if (which.test(laid)) {
        room = Math.min(room, Math.min(below(laid), above(laid)));
      }
    }
    return Math.max(0, room);
  }

  /** How far a piece may move toward the fold, or toward the one selvedge (mm). */
  private double below(LaidPiece laid) {
    ClothSheet sheet = laying.sheet();
    double low = laid.covered().low();
    double margin = sheet.settings().selvedge();
    if (laid.open() || !sheet.foldsAlong()) {
      return low + (sheet.foldsAlong() ? sheet.depth() : 0) - margin;
    }
    return above(laid);
  }

  /** How far it may move toward the other selvedge, or the fold with it (mm). */
  private double above(LaidPiece laid) {
    ClothSheet sheet = laying.sheet();
    double high = laid.covered().high();
    double margin = sheet.settings().selvedge();
    if (laid.open() || !sheet.foldsAlong()) {
      return sheet.width() - margin - high - (sheet.foldsAlong() ? sheet.depth() : 0);
    }
    boolean doubled = laid.item().layers() != ClothItem.Layers.SINGLE;
    return (doubled ? sheet.depth() : sheet.tableWidth()) - margin - high;
  }

  private boolean holdsUpTo(double aside) {
    boolean folded = laying.sheet().fold() == Fold.LENGTHWISE;
    boolean known = laying.sheet().fold() == Fold.SINGLE || (folded && !isOpened());
    boolean holds = known;
    for (int i = 1; i <= STEPS && holds; i++) {
      double step = aside * i / STEPS;
      holds = folded ? isClear(refolded(step)) : isClear(moved(step)) && isClear(moved(-step));
    }
    return holds;
  }

  private boolean isOpened() {
    return laying.pieces().stream().anyMatch(LaidPiece::open);
  }

  private static boolean isClear(ClothLaying tried) {
    return LayingRules.places(tried).isEmpty();
  }

  /** Cloth folded beside its middle, and what is held to no bar moved off the nearer selvedge. */
  private ClothLaying refolded(double step) {
    List<LaidPiece> moved = new ArrayList<>();
    for (LaidPiece laid : laying.pieces()) {
      double back = laid.piece().heldAcross() ? 0 : Math.max(0, step - above(laid));
      moved.add(laid.moved(new Vector(0, -back)));
    }
    ClothSheet nearer = laying.sheet().foldedAt(laying.sheet().depth() - step);
    return new ClothLaying(nearer, laying.length(), laying.openFrom(), moved);
  }

  /** Single cloth with all that is held moved across it, and the rest as far as it can. */
  private ClothLaying moved(double step) {
    List<LaidPiece> moved = new ArrayList<>();
    for (LaidPiece laid : laying.pieces()) {
      double room = step < 0 ? below(laid) : above(laid);
      double own = laid.piece().heldAcross() ? Math.abs(step) : Math.min(Math.abs(step), room);
      moved.add(laid.moved(new Vector(0, StrictMath.copySign(Math.max(0, own), step))));
    }
    return new ClothLaying(laying.sheet(), laying.length(), laying.openFrom(), moved);
  }
}
