package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.fabric.Fabric;

/**
 * How the copies of all pieces are shared out between doubled and single cloth.
 *
 * @param folded what is laid while the cloth is folded
 * @param single what must lie on one layer
 */
record LaidItems(List<ClothItem> folded, List<ClothItem> single) {
  LaidItems {
    folded = List.copyOf(folded);
    single = List.copyOf(single);
  }

  /** Everything on one layer: each copy by itself, mirror images as such. */
  static LaidItems onSingle(List<ClothPiece> pieces, Fabric.Nap nap) {
    List<ClothItem> single = new ArrayList<>();
    for (ClothPiece piece : pieces) {
      addSingle(piece, nap, piece.asDrawn(), piece.asMirrored(), single);
    }
    return new LaidItems(List.of(), single);
  }

  /**
   * On cloth with a lengthwise fold: pieces that the designer cuts on the fold lie on it, pairs lie
   * on both layers, an even-sided piece that is left over lies on the fold if it can, anything else
   * on one layer. Folded cloth has its wrong side up, so what is cut right side up lies on one
   * layer too.
   */
  static LaidItems onLengthwiseFold(List<ClothPiece> pieces, Fabric.Nap nap) {
    List<ClothItem> folded = new ArrayList<>();
    List<ClothItem> single = new ArrayList<>();
    for (ClothPiece piece : pieces) {
      if (piece.rightSideUp()) {
        addSingle(piece, nap, piece.asDrawn(), piece.asMirrored(), single);
        continue;
      }
      int onFold = piece.liesOnFold() && piece.onFold() ? piece.count() : 0;
      int pairs = onFold > 0 ? 0 : piece.pairs(nap);
      int left = piece.count() - onFold - 2 * pairs;
      if (piece.liesOnFold()) {
        onFold += left;
        left = 0;
      }
      add(piece, ClothItem.Layers.ON_FOLD, onFold, folded);
      add(piece, ClothItem.Layers.DOUBLE, pairs, folded);
      addRest(piece, nap, pairs, left, single);
    }
    return new LaidItems(folded, single);
  }

  /** On cloth folded across: pairs lie on both layers, anything else on one. */
  static LaidItems onCrosswiseFold(List<ClothPiece> pieces, Fabric.Nap nap) {
    List<ClothItem> folded = new ArrayList<>();
    List<ClothItem> single = new ArrayList<>();
    for (ClothPiece piece : pieces) {
      if (piece.rightSideUp()) {
        addSingle(piece, nap, piece.asDrawn(), piece.asMirrored(), single);
        continue;
      }
      int pairs = piece.pairs(nap);
      add(piece, ClothItem.Layers.DOUBLE, pairs, folded);
      addRest(piece, nap, pairs, piece.count() - 2 * pairs, single);
    }
    return new LaidItems(folded, single);
  }

  private static void addRest(
      ClothPiece piece, Fabric.Nap nap, int pairs, int left, List<ClothItem> single) {
    if (left > 0) {
      int mirrored = Math.max(0, piece.asMirrored() - pairs);
      addSingle(piece, nap, left - mirrored, mirrored, single);
    }
  }

  private static void addSingle(
      ClothPiece piece, Fabric.Nap nap, int asDrawn, int mirrored, List<ClothItem> single) {
    if (piece.ownMirror(nap)) {
      add(piece, ClothItem.Layers.SINGLE, asDrawn + mirrored, single);
      return;
    }
    add(piece, ClothItem.Layers.SINGLE, asDrawn, single);
    if (mirrored > 0) {
      single.add(new ClothItem(piece, ClothItem.Layers.SINGLE, true, mirrored));
    }
  }

  private static void add(
      ClothPiece piece, ClothItem.Layers layers, int demand, List<ClothItem> into) {
    if (demand > 0) {
      into.add(new ClothItem(piece, layers, false, demand));
    }
  }
}
