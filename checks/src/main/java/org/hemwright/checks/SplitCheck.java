package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.split.Divided;

/** Every split that a piece declares can be made in every size. */
record SplitCheck() implements EachSizeCheck {
  @Override
  public String id() {
    return "split";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      for (Mark.Split split : piece.marks(Mark.Split.class)) {
        findings.addAll(Divided.of(piece, split).findings());
      }
    }
    return findings;
  }
}
