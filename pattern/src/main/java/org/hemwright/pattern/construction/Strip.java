package org.hemwright.pattern.construction;

import org.hemwright.pattern.seam.EdgePlace;

/**
 * The cloth along one edge of one cut copy, or of one half of a copy that is drawn as a half.
 *
 * @param piece the piece's name
 * @param copy the copy's name
 * @param half which half
 * @param edge the edge's name, or a placement line's
 */
public record Strip(String piece, String copy, EdgePlace.Half half, String edge) {
  static Strip of(EdgePlace place) {
    return new Strip(place.piece(), place.copy(), place.half(), place.edge());
  }

  /** The cut copy that it belongs to. */
  public Part part() {
    return new Part(piece, copy);
  }

  /** As the document names it, copies aside: {@code panel.side}. */
  public String text() {
    return piece + "." + edge;
  }
}
