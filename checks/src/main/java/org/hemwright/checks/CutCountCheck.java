package org.hemwright.checks;

import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Piece;

/** Every piece says how many to cut, and from which fabric. */
final class CutCountCheck implements EachSizeCheck {
  @Override
  public String id() {
    return "cut-count";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    return sized.pieces().stream()
        .map(Piece::card)
        .filter(card -> card.cuts().isEmpty())
        .map(
            card ->
                Finding.fail("cut-unstated", card.name())
                    .with("piece", card.name())
                    .at(card.origin())
                    .build())
        .toList();
  }
}
