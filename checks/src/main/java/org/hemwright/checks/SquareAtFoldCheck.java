package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.EdgePlace;

/** An edge leaves a fold squarely, so that the opened piece has no point there. */
record SquareAtFoldCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "square-at-fold";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      for (Edge fold : piece.edges()) {
        for (boolean last : new boolean[] {false, true}) {
          if (fold.onFold()) {
            int index = piece.edges().indexOf(fold);
            judge(new EdgeTip(piece, "", EdgePlace.Half.DRAWN, index, last), findings);
          }
        }
      }
    }
    return findings;
  }

  private void judge(EdgeTip fold, List<Finding> findings) {
    double angle = fold.interior();
    if (Math.abs(angle - Math.PI / 2) > settings.sewing().angleWarn()) {
      Edge edge = fold.beside().drawn();
      findings.add(
          Finding.warn(id(), fold.beside().text())
              .with("piece", fold.piece().name())
              .with("edge", edge.name())
              .with("fold", fold.drawn().name())
              .with("angle", Argument.of(Quantity.angle(angle)))
              .values(Math.toDegrees(angle), 90, "deg")
              .at(Place.on(edge.origin(), fold.piece().name(), fold.point()))
              .build());
    }
  }
}
