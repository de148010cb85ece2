package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.PieceCard;

/** Every piece has a title, and a number that no other piece has. */
final class LabelCheck implements Check {
  @Override
  public String id() {
    return "label";
  }

  @Override
  public List<Finding> check(SizeRun run) {
    List<Finding> findings = new ArrayList<>();
    Map<Integer, PieceCard> byNumber = new LinkedHashMap<>();
    for (PieceCard card : run.pattern().pieces()) {
      if (card.title().isBlank()) {
        findings.add(
            Finding.fail("label-title", card.name())
                .with("piece", card.name())
                .at(card.origin())
                .build());
      }
      PieceCard before = byNumber.putIfAbsent(card.number(), card);
      if (before != null && !before.name().equals(card.name())) {
        findings.add(
            Finding.fail("label-number", card.name())
                .with("piece", card.name())
                .with("other", before.name())
                .with("number", Argument.of(card.number()))
                .at(card.origin())
                .at(before.origin())
                .build());
      }
    }
    return findings;
  }
}
