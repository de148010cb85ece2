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
import org.jspecify.annotations.Nullable;

/**
 * Every piece has a title of its own and a number that no other piece has, and the numbers run from
 * 1 without a gap, so that a maker can tell whether she has all (handbook section 6).
 */
final class LabelCheck implements Check {
  @Override
  public String id() {
    return "label";
  }

  @Override
  public List<Finding> check(SizeRun run) {
    List<Finding> findings = new ArrayList<>();
    Map<String, PieceCard> byMark = new LinkedHashMap<>();
    Map<String, PieceCard> byTitle = new LinkedHashMap<>();
    int largest = 0;
    for (PieceCard card : cards(run)) {
      largest = Math.max(largest, card.number());
      if (card.title().isBlank()) {
        findings.add(
            Finding.fail("label-title", card.name())
                .with("piece", card.name())
                .at(card.origin())
                .build());
      } else {
        other(byTitle.putIfAbsent(card.title(), card), "label-same-title", card, findings);
      }
      other(byMark.putIfAbsent(card.mark(), card), "label-number", card, findings);
    }
    long names = cards(run).stream().map(PieceCard::name).distinct().count();
    if (findings.isEmpty() && largest > names) {
      int last = largest;
      PieceCard card =
          cards(run).stream()
              .filter(each -> each.number() == last)
              .findFirst()
              .orElseGet(() -> run.pattern().pieces().get(0));
      findings.add(
          Finding.warn("label-gap", card.name())
              .with("piece", card.name())
              .with("number", Argument.of(largest))
              .with("count", Argument.of(names))
              .values(largest, (double) names, "")
              .at(card.origin())
              .build());
    }
    return findings;
  }

  /** The cards as the pieces carry them; as the pattern lists them where none is drawn. */
  private static List<PieceCard> cards(SizeRun run) {
    List<PieceCard> drawn =
        run.sizes().stream()
            .flatMap(sized -> sized.pieces().stream())
            .map(piece -> piece.card())
            .distinct()
            .toList();
    return drawn.isEmpty() ? run.pattern().pieces() : drawn;
  }

  private static void other(
      @Nullable PieceCard before, String code, PieceCard card, List<Finding> findings) {
    if (before != null && !before.name().equals(card.name())) {
      findings.add(
          Finding.fail(code, card.name())
              .with("piece", card.name())
              .with("other", before.name())
              .with("number", Argument.of(card.number()))
              .with("title", card.title())
              .at(card.origin())
              .at(before.origin())
              .build());
    }
  }
}
