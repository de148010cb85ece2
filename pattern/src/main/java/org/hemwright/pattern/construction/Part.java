package org.hemwright.pattern.construction;

import org.hemwright.pattern.seam.EdgePlace;

/**
 * One cut copy of a piece.
 *
 * @param piece its name
 * @param copy its own name, or its number
 */
public record Part(String piece, String copy) {
  static Part of(EdgePlace place) {
    return new Part(place.piece(), place.copy());
  }
}
