package org.hemwright.pattern.seam;

import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.jspecify.annotations.Nullable;

/**
 * One cut copy of a piece, or one half of a copy that is drawn as a half.
 *
 * @param piece as drawn
 * @param copy which
 * @param half which half; {@code WHOLE} where the piece has no fold edge
 */
record CutPart(Piece piece, Copy copy, EdgePlace.Half half) {
  /** Whether it is the mirror image of the drawing, face up. */
  boolean mirrored() {
    return copy.mirrored() != (half == EdgePlace.Half.MIRRORED);
  }

  /** The edge of that index in the outline's order. */
  Edge edge(int index) {
    return piece.edges().get(index);
  }

  /** The edge that meets this end of an edge at its corner. */
  EdgeEnd besideAtCorner(int edge, boolean last) {
    int count = piece.edges().size();
    return new EdgeEnd(this, (edge + (last ? 1 : count - 1)) % count, !last);
  }

  /**
   * +1 when the designer's direction of the edge runs counter-clockwise round this part, seen face
   * up, else −1.
   */
  int hand(int edge) {
    return edge(edge).reversed() == mirrored() ? 1 : -1;
  }

  /** Parts are the same by their names; pieces of one size have names of their own. */
  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof CutPart part && key().equals(part.key());
  }

  @Override
  public int hashCode() {
    return key().hashCode();
  }

  /** How it is told apart in an {@link EdgePlace}. */
  Key key() {
    return new Key(piece.name(), copy.name(), half);
  }

  /** Names one part. */
  record Key(String piece, String copy, EdgePlace.Half half) {
    static Key of(EdgePlace place) {
      return new Key(place.piece(), place.copy(), place.half());
    }
  }
}
