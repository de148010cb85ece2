package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * Every piece says how many to cut and from which fabric of the pattern, its copies are as many and
 * mirrored as the cut line says, and the seams use all of them.
 */
final class CutCountCheck implements EachSizeCheck {
  @Override
  public String id() {
    return "cut-count";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      PieceCard card = piece.card();
      if (card.cuts().isEmpty()) {
        findings.add(problem("cut-unstated", card).at(card.origin()).build());
        continue;
      }
      for (Cut cut : card.cuts()) {
        if (!pattern.fabrics().isEmpty() && pattern.fabric(cut.fabric()).isEmpty()) {
          findings.add(
              problem("cut-fabric", card).with("fabric", cut.fabric()).at(cut.origin()).build());
        }
      }
      copies(card).ifPresent(findings::add);
      unused(card, sized).ifPresent(findings::add);
    }
    return findings;
  }

  private static Finding.Builder problem(String code, PieceCard card) {
    return Finding.fail(code, card.name()).with("piece", card.name());
  }

  private static Optional<Finding> copies(PieceCard card) {
    Cut cut = card.cuts().get(0);
    int mirrored = (int) card.copies().stream().filter(Copy::mirrored).count();
    int wanted = cut.mirrored() ? cut.count() / 2 : 0;
    if (card.copies().size() == cut.count() && mirrored == wanted) {
      return Optional.empty();
    }
    return Optional.of(
        problem("cut-copies", card)
            .with("count", Argument.of(cut.count()))
            .with("mirrored", Argument.of(wanted))
            .with("copies", Argument.of(card.copies().size()))
            .with("turned", Argument.of(mirrored))
            .values(card.copies().size(), cut.count(), "")
            .at(cut.origin())
            .build());
  }

  /** Copies that no seam takes, of a piece of which some are sewn. */
  private static Optional<Finding> unused(PieceCard card, SizedPattern sized) {
    Set<String> sewn = new LinkedHashSet<>();
    for (Seam seam : sized.seams()) {
      for (EdgePlace place : SewnLoop.places(seam)) {
        if (place.piece().equals(card.name())) {
          sewn.add(place.copy());
        }
      }
    }
    List<String> idle =
        card.copies().stream().map(Copy::name).filter(name -> !sewn.contains(name)).toList();
    if (idle.isEmpty() || sewn.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        problem("cut-unused", card)
            .with("count", Argument.of(card.copies().size()))
            .with("sewn", Argument.of(sewn.size()))
            .with("copies", Argument.of(idle))
            .values(card.copies().size(), sewn.size(), "")
            .at(card.cuts().get(0).origin())
            .build());
  }
}
