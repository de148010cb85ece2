package org.hemwright.pattern;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/**
 * The pattern in one size.
 *
 * @param size which
 * @param pieces in the order of the document; a piece that could not be drawn is absent, and a
 *     finding says why
 * @param seams resolved, in the order of the document
 * @param elastics in the order of the document
 * @param numbers every measurement, dial, let and solve by its name ({@code piece.name} inside a
 *     piece)
 */
public record SizedPattern(
    Size size,
    List<Piece> pieces,
    List<Seam> seams,
    List<Elastic> elastics,
    Map<String, Quantity> numbers) {
  public SizedPattern {
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
    elastics = List.copyOf(elastics);
    numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
  }

  /** The piece of that name in this size. */
  public Optional<Piece> piece(String name) {
    for (Piece piece : pieces) {
      if (piece.name().equals(name)) {
        return Optional.of(piece);
      }
    }
    return Optional.empty();
  }
}
