package org.hemwright.cloth.rule;

import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;

/**
 * One place on the table: a piece on the fold, a pair, or a single copy.
 *
 * @param item what lies there
 * @param copy which of the item's places it is, from 1
 * @param motion from the piece's own frame to the table
 * @param open whether it lies where the cloth is opened out
 */
public record LaidPiece(ClothItem item, int copy, Motion motion, boolean open) {
  /** The piece. */
  public ClothPiece piece() {
    return item.piece();
  }

  /** What it covers of the table. */
  public Silhouette covered() {
    return moved(item.layers() == ClothItem.Layers.ON_FOLD ? piece().half() : piece().shape());
  }

  private Silhouette moved(Silhouette shape) {
    return Silhouette.of(shape.outline(), motion);
  }

  /** Whether its grain arrow points back toward the cut end of the cloth. */
  public boolean turned() {
    return motion.cos() < 0;
  }

  /** Whether the printed side lies down. */
  public boolean faceDown() {
    return motion.isMirror() && item.layers() != ClothItem.Layers.ON_FOLD;
  }

  /** From the drawing's plane to the table. */
  public Motion fromDrawing() {
    return piece().frame().then(motion);
  }

  /** Where the piece's own origin lies: its left end, on its axis. */
  public Point origin() {
    return motion.apply(Point.ORIGIN);
  }

  /** The same, elsewhere on the table. */
  LaidPiece moved(Vector step) {
    return new LaidPiece(item, copy, motion.then(Motion.move(step)), open);
  }
}
