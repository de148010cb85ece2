package org.hemwright.pattern.piece;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.Finding;

/**
 * A piece's allowances added to its stitch line: the cut line, or what stands in its way (handbook
 * section 3).
 *
 * <p>Each edge's stitch line is moved outward by its allowance, {@link CornerFinish} by {@link
 * CornerFinish} joined to the next. At a fold the neighbour's cut line ends on the fold line, run
 * on. The result is simple and runs counter-clockwise.
 *
 * @param cutLine absent where a finding fails
 * @param findings what fails, and what is worth a look, round the piece; their places are points on
 *     the piece
 */
public record AddedAllowance(Optional<CutLine> cutLine, List<Finding> findings) {
  public AddedAllowance {
    findings = List.copyOf(findings);
  }

  /** The allowances of a piece, added. Never throws: what cannot be drawn is a finding. */
  public static AddedAllowance to(Piece piece) {
    return new AllowanceDrawing(piece).result();
  }
}
