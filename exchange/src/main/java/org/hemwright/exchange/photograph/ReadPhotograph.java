package org.hemwright.exchange.photograph;

import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.finding.Finding;

/**
 * What came of reading a photograph.
 *
 * @param straightening absent where nothing told how large things are
 * @param pieces the largest first
 * @param findings why something is missing, and what is doubtful
 */
public record ReadPhotograph(
    Optional<Straightening> straightening, List<SeenPiece> pieces, List<Finding> findings) {
  public ReadPhotograph {
    pieces = List.copyOf(pieces);
    findings = List.copyOf(findings);
  }

  /**
   * A piece.
   *
   * @param outline closed, counter-clockwise, in true size (mm)
   * @param doubt how far it may be off where it is farthest from the card (mm)
   */
  public record SeenPiece(Path outline, double doubt) {
    public SeenPiece {
      if (!outline.isClosed()) {
        throw new IllegalArgumentException("the outline of a piece is closed");
      }
    }
  }
}
