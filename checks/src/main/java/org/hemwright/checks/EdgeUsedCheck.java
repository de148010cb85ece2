package org.hemwright.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * Every edge of every cut copy and half is sewn, turned back, folded, bound by a step or declared
 * raw, or has no allowance because it stays raw; and no seam is declared twice.
 */
final class EdgeUsedCheck implements EachSizeCheck {
  @Override
  public String id() {
    return "edge-used";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    Set<Side> sewn = new HashSet<>();
    for (Seam seam : sized.seams()) {
      for (EdgePlace place : SewnLoop.places(seam)) {
        sewn.add(new Side(place.piece(), place.edge(), place.copy(), place.half()));
      }
    }
    List<Finding> findings = new ArrayList<>();
    twice(sized.seams(), findings);
    if (!AllDrawn.in(sized, pattern)) {
      return findings;
    }
    for (Piece piece : sized.pieces()) {
      for (Edge edge : piece.edges()) {
        boolean finished =
            edge.onFold()
                || edge.allowance() instanceof Allowance.TurnedBack
                || edge.allowance().width() == 0;
        List<Side> sides = sides(piece, edge);
        // A step speaks of the edge of every copy: where one copy is sewn, the others are too.
        if (sides.stream().noneMatch(sewn::contains)) {
          finished |= Finished.apart(piece, edge, sized, pattern);
        }
        List<Side> open = sides.stream().filter(side -> !sewn.contains(side)).toList();
        if (!finished && !open.isEmpty()) {
          findings.add(problem(piece, edge, open, sides.size()));
        }
      }
    }
    return findings;
  }

  /** Seams that bring the same stretches together: one of the two is a slip. */
  private static void twice(List<Seam> seams, List<Finding> findings) {
    Map<Set<Set<List<EdgePlace>>>, Seam> known = new LinkedHashMap<>();
    for (Seam seam : seams) {
      Set<Set<List<EdgePlace>>> joins = new HashSet<>();
      for (Seam.Join join : seam.joins()) {
        Set<List<EdgePlace>> layers = new HashSet<>();
        join.layers().forEach(layer -> layers.add(layer.run()));
        joins.add(layers);
      }
      Seam before = known.putIfAbsent(joins, seam);
      if (before != null) {
        findings.add(
            Finding.fail("seam-again", "seam " + seam.name())
                .with("seam", seam.name())
                .with("other", before.name())
                .at(seam.origin())
                .at(before.origin())
                .build());
      }
    }
  }

  /** One edge of one cut copy, or of one half of it. */
  private record Side(String piece, String edge, String copy, EdgePlace.Half half) {}

  private static List<Side> sides(Piece piece, Edge edge) {
    List<EdgePlace.Half> halves =
        piece.foldEdge().isPresent()
            ? List.of(EdgePlace.Half.DRAWN, EdgePlace.Half.MIRRORED)
            : List.of(EdgePlace.Half.WHOLE);
    List<String> copies = piece.card().copies().stream().map(Copy::name).toList();
    List<Side> sides = new ArrayList<>();
    for (String copy : copies.isEmpty() ? List.of("1") : copies) {
      halves.forEach(half -> sides.add(new Side(piece.name(), edge.name(), copy, half)));
    }
    return sides;
  }

  private static Finding problem(Piece piece, Edge edge, List<Side> open, int all) {
    Finding.Builder finding =
        Finding.warn("edge-used", piece.name() + "." + edge.name())
            .with("piece", piece.name())
            .with("edge", edge.name())
            .with("allowance", Argument.mm(edge.allowance().width()))
            .found(edge.allowance().width(), "mm")
            .at(
                Place.on(
                    edge.origin(), piece.name(), edge.path().at(edge.path().length() / 2).point()));
    if (open.size() < all) {
      finding.with("open", Argument.of(open.size())).with("all", Argument.of(all));
    }
    return finding.build();
  }
}
