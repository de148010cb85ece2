package org.hemwright.checks;

import java.util.List;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;

/** Every piece has a grain arrow. */
final class GrainCheck implements EachSizeCheck {
  @Override
  public String id() {
    return "grain";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    return sized.pieces().stream()
        .filter(piece -> piece.grain().isEmpty())
        .map(
            piece ->
                Finding.fail(id(), piece.name())
                    .with("piece", piece.name())
                    .at(piece.card().origin())
                    .build())
        .toList();
  }
}
