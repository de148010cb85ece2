package org.hemwright.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Seam;

/** Every edge is sewn, turned back, folded, or has no allowance. */
final class EdgeUsedCheck implements EachSizeCheck {
  @Override
  public String id() {
    return "edge-used";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    Set<String> sewn = new HashSet<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        for (Seam.Layer layer : join.layers()) {
          layer.run().forEach(place -> sewn.add(place.piece() + "." + place.edge()));
        }
      }
    }
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      for (Edge edge : piece.edges()) {
        String text = piece.name() + "." + edge.name();
        boolean finished =
            edge.onFold()
                || edge.allowance() instanceof Allowance.TurnedBack
                || edge.allowance().width() == 0;
        if (!finished && !sewn.contains(text)) {
          findings.add(
              Finding.warn(id(), text)
                  .with("piece", piece.name())
                  .with("edge", edge.name())
                  .with("allowance", Argument.mm(edge.allowance().width()))
                  .found(edge.allowance().width(), "mm")
                  .at(
                      Place.on(
                          edge.origin(),
                          piece.name(),
                          edge.path().at(edge.path().length() / 2).point()))
                  .build());
        }
      }
    }
    return findings;
  }
}
