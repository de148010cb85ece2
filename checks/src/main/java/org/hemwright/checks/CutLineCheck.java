package org.hemwright.checks;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Piece;

/** A check that looks at the cut lines, one size after the other, and tells each cause once. */
interface CutLineCheck extends Check {
  /** The cut lines, shared with the other checks. */
  CutLines cutLines();

  /** What it found in one size; the sizes are filled in. */
  List<Finding> check(SizedPattern sized, Pattern pattern, Drawn drawn);

  /** The cut lines of one size, by the name of the piece. */
  record Drawn(Map<String, AddedAllowance> allowances) {
    /** A piece's allowances. */
    AddedAllowance of(Piece piece) {
      AddedAllowance known = allowances.get(piece.name());
      return known == null ? AddedAllowance.to(piece) : known;
    }

    /** A piece's cut line, if it can be drawn. */
    Optional<CutLine> cutLine(Piece piece) {
      return of(piece).cutLine();
    }
  }

  @Override
  default List<Finding> check(SizeRun run) {
    List<Map<String, AddedAllowance>> drawn = cutLines().of(run);
    return BySize.findings(
        run, index -> check(run.sizes().get(index), run.pattern(), new Drawn(drawn.get(index))));
  }
}
