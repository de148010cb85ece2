package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.cloth.laying.Turn;
import org.hemwright.pattern.fabric.Fabric;

/**
 * One way in which copies of a piece are laid: on the fold, through two layers, or on one.
 *
 * @param piece the piece
 * @param layers through which layers it is cut
 * @param mirrored whether its mirror image is laid; on single cloth only
 * @param demand how many are laid, 1 or more; through two layers each gives two copies
 */
public record ClothItem(ClothPiece piece, Layers layers, boolean mirrored, int demand) {
  /** Through which layers a piece is cut. */
  public enum Layers {
    /** Half of it on doubled cloth, its axis on the fold. */
    ON_FOLD,
    /** The whole of it on doubled cloth, which gives it and its mirror image. */
    DOUBLE,
    /** The whole of it on one layer. */
    SINGLE
  }

  private static final double SAME = 0.001;
  private static final Turn MIRRORED = new Turn(0, true);
  private static final Turn MIRRORED_HALF = new Turn(180, true);

  /** Its name in a strip problem. */
  public String id() {
    return switch (layers) {
      case ON_FOLD -> piece.id() + ".fold";
      case DOUBLE -> piece.id() + ".pair";
      case SINGLE -> mirrored ? piece.id() + ".mirrored" : piece.id();
    };
  }

  /** What it covers of the table, in the piece's own frame. */
  public Silhouette shape() {
    if (layers == Layers.ON_FOLD) {
      return piece.half();
    }
    return mirrored ? piece.shape().mirrored() : piece.shape();
  }

  /** What the search lays for it: the shape with half of the gap round it, but not over a fold. */
  Silhouette room() {
    if (layers == Layers.ON_FOLD) {
      return piece.halfRoom().orElseThrow();
    }
    return mirrored ? piece.room().mirrored() : piece.room();
  }

  /** How much it needs across the cloth, opened (mm). */
  public double across() {
    return layers == Layers.ON_FOLD ? 2 * piece.half().high() : piece.shape().height();
  }

  /**
   * The ways it may lie.
   *
   * @param farFold whether there is a second fold, on the far side of the table
   */
  List<Turn> turns(Fabric.Nap nap, boolean farFold) {
    List<Turn> turns = new ArrayList<>(List.of(Turn.AS_DRAWN));
    boolean either = nap == Fabric.Nap.EITHER_WAY;
    Silhouette shape = shape();
    if (layers != Layers.ON_FOLD) {
      boolean turnsOver = layers == Layers.SINGLE && piece.eitherFace() && !piece.ownShape(either);
      if (turnsOver) {
        turns.add(MIRRORED);
      }
      if (either && !shape.isLike(shape.turned(), SAME)) {
        turns.add(Turn.HALF);
        if (turnsOver) {
          turns.add(MIRRORED_HALF);
        }
      }
      return turns;
    }
    if (farFold) {
      turns.add(MIRRORED);
    }
    if (either && !piece.shape().isLike(piece.shape().turned(), SAME)) {
      turns.add(MIRRORED_HALF);
      if (farFold) {
        turns.add(Turn.HALF);
      }
    }
    return turns;
  }
}
