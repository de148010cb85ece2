package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * Each cloth is used for what it is: what is fused is cut for the pieces that it is fused to, like
 * them and for no others, what is cut only as a second layer is fused by a step, and two pieces
 * that continue each other across edges of one name are of one cloth (common practice, no source).
 */
final class ClothRoleCheck implements EachSizeCheck {
  @Override
  public String id() {
    return "cloth-role";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    Map<String, Set<String>> fused = new LinkedHashMap<>();
    for (Step step : pattern.making().steps()) {
      if (step.act() instanceof Act.Fuse fuse && fuse.fabric().isPresent()) {
        Set<String> pieces =
            fused.computeIfAbsent(fuse.fabric().get(), key -> new LinkedHashSet<>());
        for (Work.OfPiece work : step.work(Work.OfPiece.class)) {
          pieces.add(work.piece());
          sized
              .piece(work.piece())
              .filter(piece -> cut(piece.card(), fuse.fabric().get()).isEmpty())
              .ifPresent(
                  piece ->
                      findings.add(
                          Finding.fail("cloth-unfused", piece.name())
                              .with("piece", piece.name())
                              .with("fabric", fuse.fabric().get())
                              .with("step", step.id())
                              .at(step.origin())
                              .build()));
        }
      }
    }
    for (Piece piece : sized.pieces()) {
      cuts(piece.card(), fused, findings);
    }
    idle(sized, pattern, fused.keySet(), findings);
    for (Seam seam : sized.seams()) {
      mates(seam, sized, fused.keySet()).ifPresent(findings::add);
    }
    return findings;
  }

  private static Optional<Cut> cut(PieceCard card, String fabric) {
    return card.cuts().stream().filter(cut -> cut.fabric().equals(fabric)).findFirst();
  }

  private static void cuts(PieceCard card, Map<String, Set<String>> fused, List<Finding> findings) {
    for (int i = 0; i < card.cuts().size(); i++) {
      Cut cut = card.cuts().get(i);
      Set<String> pieces = fused.get(cut.fabric());
      if (pieces == null) {
        continue;
      }
      if (i == 0) {
        findings.add(told("cloth-interfacing-only", card, cut).as(Status.FAIL));
      } else {
        Cut first = card.cuts().get(0);
        if (!pieces.contains(card.name())) {
          findings.add(told("cloth-not-fused", card, cut));
        }
        if (first.mirrored() != cut.mirrored() && first.count() > 1 && cut.count() > 1) {
          findings.add(
              told("cloth-not-mirrored", card, cut)
                  .as(first.mirrored() ? Status.FAIL : Status.WARN));
        }
        if (cut.count() > first.count()) {
          findings.add(
              Finding.warn("cloth-more", card.name())
                  .with("piece", card.name())
                  .with("fabric", cut.fabric())
                  .with("other", first.fabric())
                  .with("count", Argument.of(cut.count()))
                  .with("wanted", Argument.of(first.count()))
                  .values(cut.count(), first.count(), "")
                  .at(cut.origin())
                  .build());
        }
      }
    }
  }

  /** A cloth of which nothing is cut for itself, and which no step fuses, lies about unused. */
  private static void idle(
      SizedPattern sized, Pattern pattern, Set<String> fused, List<Finding> findings) {
    Set<String> first =
        sized.pieces().stream()
            .flatMap(piece -> piece.card().cuts().stream().limit(1))
            .map(Cut::fabric)
            .collect(Collectors.toSet());
    for (Piece piece : sized.pieces()) {
      for (Cut cut : piece.card().cuts()) {
        boolean used = first.contains(cut.fabric()) || fused.contains(cut.fabric());
        if (pattern.making().isStated() && !used) {
          findings.add(told("cloth-idle", piece.card(), cut));
        }
      }
    }
  }

  private static Finding told(String code, PieceCard card, Cut cut) {
    return Finding.warn(code, card.name())
        .with("piece", card.name())
        .with("fabric", cut.fabric())
        .with("other", card.cuts().get(0).fabric())
        .at(cut.origin())
        .build();
  }

  /** Front and back across their sides: edges of one name that meet are of one cloth. */
  private static Optional<Finding> mates(Seam seam, SizedPattern sized, Set<String> fused) {
    Seam.Join join = seam.joins().get(0);
    if (join.layers().size() != 2
        || join.layers().stream().anyMatch(layer -> layer.run().size() > 1)) {
      return Optional.empty();
    }
    EdgePlace one = join.layers().get(0).run().get(0);
    EdgePlace other = join.layers().get(1).run().get(0);
    Optional<Cut> here = first(one.piece(), sized);
    Optional<Cut> there = first(other.piece(), sized);
    if (one.piece().equals(other.piece())
        || !one.edge().equals(other.edge())
        || here.isEmpty()
        || there.isEmpty()
        || here.get().fabric().equals(there.get().fabric())
        || fused.contains(here.get().fabric())
        || fused.contains(there.get().fabric())) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warn("cloth-mates", one.piece())
            .with("piece", one.piece())
            .with("mate", other.piece())
            .with("fabric", here.get().fabric())
            .with("other", there.get().fabric())
            .with("seam", seam.name())
            .at(here.get().origin())
            .at(there.get().origin())
            .build());
  }

  private static Optional<Cut> first(String piece, SizedPattern sized) {
    return sized.piece(piece).flatMap(found -> found.card().cuts().stream().findFirst());
  }
}
