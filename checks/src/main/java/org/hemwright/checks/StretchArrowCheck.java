package org.hemwright.checks;

import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;

/** A piece cut from a knit shows which way it stretches most (handbook section 1, "Grain"). */
final class StretchArrowCheck implements EachSizeCheck {
  @Override
  public String id() {
    return "stretch-arrow";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    return sized.pieces().stream()
        .filter(piece -> isKnit(piece, pattern) && piece.marks(Mark.Stretch.class).isEmpty())
        .map(
            piece ->
                Finding.warn(id(), piece.name())
                    .with("piece", piece.name())
                    .with("fabric", piece.card().cuts().get(0).fabric())
                    .at(piece.card().origin())
                    .build())
        .toList();
  }

  private static boolean isKnit(Piece piece, Pattern pattern) {
    return piece.card().cuts().stream()
        .limit(1)
        .flatMap(cut -> pattern.fabric(cut.fabric()).stream())
        .anyMatch(fabric -> fabric.kind() == Fabric.Kind.KNIT);
  }
}
