package org.hemwright.pattern.seam;

import java.util.Optional;

/**
 * A stretch of one edge, or of one placement line, of one cut copy.
 *
 * @param piece the piece's name
 * @param copy the copy's name (see {@link org.hemwright.pattern.piece.Copy})
 * @param half which half, where the piece is on the fold
 * @param edge the edge's name, or the placement line's
 * @param from the notch that it starts at; the edge's own start when absent
 * @param to the notch that it ends at; the edge's own end when absent
 * @param reversed whether it is sewn against the direction of the designer's drawing of the edge
 */
public record EdgePlace(
    String piece,
    String copy,
    Half half,
    String edge,
    Optional<String> from,
    Optional<String> to,
    boolean reversed) {
  /** The same place, walked from its other end. */
  public EdgePlace turned() {
    return new EdgePlace(piece, copy, half, edge, from, to, !reversed);
  }

  /** The halves of a piece that is drawn as one half and opened over its fold. */
  public enum Half {
    /** The piece has no fold edge, or the edge runs across both halves. */
    WHOLE,
    /** The half that is drawn. */
    DRAWN,
    /** The half that lies under the fold. */
    MIRRORED
  }
}
