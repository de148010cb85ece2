package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/** A piece is cut on the fold, from every cloth, exactly when one of its edges lies there. */
final class FoldCheck implements EachSizeCheck {
  @Override
  public String id() {
    return "fold";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      boolean drawnHalf = piece.foldEdge().isPresent();
      if (piece.card().onFold() && !drawnHalf) {
        findings.add(
            Finding.fail("fold-without-edge", piece.name())
                .with("piece", piece.name())
                .at(piece.card().origin())
                .build());
      } else if (drawnHalf && !piece.card().onFold() && !piece.card().cuts().isEmpty()) {
        findings.add(
            Finding.fail("fold-not-cut-on-it", piece.name())
                .with("piece", piece.name())
                .with("edge", piece.foldEdge().map(Edge::name).orElse(""))
                .at(piece.card().origin())
                .build());
      } else if (drawnHalf) {
        for (Cut cut : piece.card().cuts()) {
          if (!cut.onFold()) {
            findings.add(
                Finding.fail("fold-not-cut-on-it", piece.name())
                    .with("piece", piece.name())
                    .with("edge", piece.foldEdge().map(Edge::name).orElse(""))
                    .at(cut.origin())
                    .build());
          }
        }
      }
    }
    return findings;
  }
}
