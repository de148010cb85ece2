package org.hemwright.pattern.seam;

import java.util.List;
import java.util.Set;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Piece;

/**
 * Which copies and halves each seam of the document joins.
 *
 * <p>Every cut copy of a piece, and each half of a copy that is drawn as a half, has each edge once
 * (an edge on the fold has none). Layers are sewn right sides together, starts together unless
 * {@code reversed}; so partners walk round their parts in opposite senses. A seam named once stands
 * for all its joins, and takes every instance of each layer once; along a placement line, as many
 * as there are edges to sew to it. An edge named with itself joins different copies where there are
 * two or more, else its two halves. In a run each edge goes on where the one before it ends; where
 * their order leaves one way only to walk them, that is it, however they are drawn. {@code every}
 * strings instances end to end, over folds and across other seams, and starts where the first of
 * them starts. A copy that is its own mirror image may be sewn either way.
 *
 * @param seams those that resolved, in the order of the document
 * @param findings why the others did not, in the order of the document, without sizes
 */
public record SeamResolution(List<Seam> seams, List<Finding> findings) {
  public SeamResolution {
    seams = List.copyOf(seams);
    findings = List.copyOf(findings);
  }

  /** Resolves the seams of one size, in which no piece is absent. */
  public static SeamResolution resolve(List<SeamRequest> requests, List<Piece> pieces) {
    return resolve(requests, pieces, Set.of());
  }

  /**
   * Resolves the seams of one size.
   *
   * @param requests as the document states them, in its order
   * @param pieces of that size, names all different
   * @param absent names of pieces that the document knows but this size lacks: a seam that needs
   *     one of them is left out without a finding
   */
  public static SeamResolution resolve(
      List<SeamRequest> requests, List<Piece> pieces, Set<String> absent) {
    return new SeamResolver(new CutParts(pieces), absent).resolve(requests);
  }
}
