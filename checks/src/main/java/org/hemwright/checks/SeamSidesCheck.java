package org.hemwright.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * The layers of a seam can be laid right sides together as the pieces are cut: every copy and half
 * is there, each is taken once, a right one meets a left one, and a layer goes on from each edge to
 * one that joins it.
 */
final class SeamSidesCheck implements EachSizeCheck {
  @Override
  public String id() {
    return "seam-sides";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    CutHalves halves = new CutHalves(sized);
    List<Finding> findings = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      Set<EdgePlace> taken = new HashSet<>();
      for (Seam.Join join : seam.joins()) {
        if (!there(seam, join, halves, findings)) {
          continue;
        }
        facing(seam, join, halves, findings);
        likes(seam, join, halves, findings);
        for (Seam.Layer layer : join.layers()) {
          holding(seam, layer, halves, findings);
          for (EdgePlace place : layer.run()) {
            if (!taken.add(place)) {
              findings.add(problem("seam-twice", seam, place, halves).build());
            }
          }
        }
      }
      lopsided(seam, halves, findings);
    }
    return findings;
  }

  /**
   * The left and the right of a seam take the two halves of one copy, or the same half of two; a
   * half of one and the other half of another is a slip.
   */
  private static void lopsided(Seam seam, CutHalves halves, List<Finding> findings) {
    if (seam.joins().size() != 2) {
      return;
    }
    List<Seam.Layer> left = seam.joins().get(0).layers();
    List<Seam.Layer> right = seam.joins().get(1).layers();
    for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
      EdgePlace one = left.get(i).run().get(0);
      EdgePlace other = right.get(i).run().get(0);
      boolean alike = one.piece().equals(other.piece()) && one.edge().equals(other.edge());
      if (alike
          && one.half() != other.half()
          && !one.copy().equals(other.copy())
          && halves.has(one)
          && halves.has(other)) {
        findings.add(
            problem("seam-lopsided", seam, one, halves)
                .with("other_copy", other.copy())
                .build()
                .as(Status.WARN));
      }
    }
  }

  private static Finding.Builder problem(
      String code, Seam seam, EdgePlace place, CutHalves halves) {
    Finding.Builder finding =
        Finding.fail(code, "seam " + seam.name())
            .with("seam", seam.name())
            .with("piece", place.piece())
            .with("copy", place.copy())
            .with("edge", place.edge());
    halves
        .middle(place)
        .ifPresentOrElse(
            point -> finding.at(Place.on(seam.origin(), place.piece(), point)),
            () -> finding.at(seam.origin()));
    return finding;
  }

  private static boolean there(
      Seam seam, Seam.Join join, CutHalves halves, List<Finding> findings) {
    boolean all = true;
    for (Seam.Layer layer : join.layers()) {
      for (EdgePlace place : layer.run()) {
        if (!halves.has(place)) {
          findings.add(problem("seam-missing", seam, place, halves).build());
          all = false;
        }
      }
    }
    return all;
  }

  private static void facing(Seam seam, Seam.Join join, CutHalves halves, List<Finding> findings) {
    EdgePlace first = join.layers().get(0).run().get(0);
    EdgePlace second = join.layers().get(1).run().get(0);
    int here = halves.hand(join.layers().get(0));
    int there = halves.hand(join.layers().get(1));
    boolean placed = here == 0 || there == 0;
    boolean wrong =
        placed
            ? halves.isMirrored(first) != halves.isMirrored(second)
                && !halves.isOwnMirror(here == 0 ? second : first)
            : here == there;
    if (wrong) {
      findings.add(
          problem("seam-facing", seam, first, halves)
              .with("other", second.piece())
              .with("other_copy", second.copy())
              .with("other_edge", second.edge())
              .build());
    }
  }

  /** Two copies of one piece in a join lie face to face or back to back: a left on a right. */
  private static void likes(Seam seam, Seam.Join join, CutHalves halves, List<Finding> findings) {
    for (int i = 2; i < join.layers().size(); i++) {
      EdgePlace own = join.layers().get(i).run().get(0);
      for (int k = i - 1; k > 0; k--) {
        EdgePlace other = join.layers().get(k).run().get(0);
        int hand = halves.hand(join.layers().get(i));
        if (other.piece().equals(own.piece())
            && hand != 0
            && hand == halves.hand(join.layers().get(k))) {
          findings.add(
              problem("seam-facing", seam, other, halves)
                  .with("other", own.piece())
                  .with("other_copy", own.copy())
                  .with("other_edge", own.edge())
                  .build());
        }
      }
    }
  }

  private static void holding(
      Seam seam, Seam.Layer layer, CutHalves halves, List<Finding> findings) {
    for (int i = 1; i < layer.run().size(); i++) {
      EdgePlace before = layer.run().get(i - 1);
      EdgePlace after = layer.run().get(i);
      boolean corners =
          EdgeTip.of(before, false, halves.sized()).isPresent()
              && EdgeTip.of(after, true, halves.sized()).isPresent();
      if (corners && !halves.goesOn(before, after)) {
        findings.add(
            problem("seam-broken", seam, before, halves)
                .with("next", after.piece())
                .with("next_copy", after.copy())
                .with("next_edge", after.edge())
                .build());
      }
    }
  }
}
