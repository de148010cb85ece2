package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.OffsetPath;
import org.hemwright.geometry.Path;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;

/**
 * The edge of a turned-back hem is not much longer or shorter than the line that it is sewn to: a
 * curved hem is eased or stretched by the difference (handbook section 3, "Hem depth falls as flare
 * rises").
 */
record HemEaseCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "hem-ease";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      for (Edge edge : piece.edges()) {
        if (edge.allowance() instanceof Allowance.TurnedBack hem) {
          judge(piece, edge, hem.folds().get(0), findings);
        }
      }
    }
    return findings;
  }

  private void judge(Piece piece, Edge edge, double depth, List<Finding> findings) {
    Path path = edge.path();
    try {
      double raw = OffsetPath.of(path, -depth).length();
      double line = OffsetPath.of(path, depth).length();
      double share = raw / line - 1;
      if (Math.abs(share) > settings.making().hemEase()) {
        findings.add(
            Finding.warn(share > 0 ? "hem-ease" : "hem-stretch", piece.name() + "." + edge.name())
                .with("piece", piece.name())
                .with("edge", edge.name())
                .with("depth", Argument.mm(depth))
                .with("by", Argument.mm(Math.abs(raw - line)))
                .with("share", Argument.of(Quantity.ratio(Math.abs(share))))
                .with("most", Argument.of(Quantity.ratio(settings.making().hemEase())))
                .values(raw, line, "mm")
                .at(Place.on(edge.origin(), piece.name(), path.at(path.length() / 2).point()))
                .build());
      }
    } catch (GeometryProblem problem) {
      // A hem deeper than its curve allows is told where its allowance is drawn.
      return;
    }
  }
}
