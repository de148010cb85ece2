package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;

/**
 * A turned-back hem lies flat: where the side beside it is not square to it, its end is mirrored
 * over the fold (handbook section 3, "Mirrored").
 */
record HemFlatCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "hem-flat";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      for (int i = 0; i < piece.edges().size(); i++) {
        if (piece.edges().get(i).allowance() instanceof Allowance.TurnedBack hem) {
          for (boolean last : new boolean[] {false, true}) {
            int corner = (i + (last ? 1 : 0)) % piece.edges().size();
            EdgeTip tip = new EdgeTip(piece, "", EdgePlace.Half.WHOLE, i, last);
            judge(tip, hem, piece.corners().get(corner).finish(), findings);
          }
        }
      }
    }
    return findings;
  }

  private void judge(
      EdgeTip tip, Allowance.TurnedBack hem, CornerFinish finish, List<Finding> findings) {
    Edge edge = tip.drawn();
    Edge beside = tip.beside().drawn();
    boolean mirrored =
        finish instanceof CornerFinish.TurnedBack turned
            && (turned.edge().equals(edge.name())
                || beside.allowance() instanceof Allowance.TurnedBack);
    double depth = hem.folds().get(0);
    double off = 2 * depth / Math.abs(StrictMath.tan(tip.interior()));
    if (mirrored || beside.onFold() || off <= settings.sewing().hemOff()) {
      return;
    }
    Finding.Builder finding =
        Finding.fail(id(), tip.text())
            .with("piece", tip.piece().name())
            .with("edge", edge.name())
            .with("beside", beside.name())
            .with("by", Argument.mm(off))
            .values(off, 0, "mm")
            .at(Place.on(edge.origin(), tip.piece().name(), tip.point()));
    if (beside.allowance() instanceof Allowance.TurnedBack) {
      finding.with("other", beside.name());
    }
    findings.add(
        finding.build().as(off > settings.sewing().seamFail() ? Status.FAIL : Status.WARN));
  }
}
