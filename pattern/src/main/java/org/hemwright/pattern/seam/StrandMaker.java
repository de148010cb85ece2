package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Strings the edges of a layer together, by the seams that are known so far. */
final class StrandMaker {
  /** Longer runs are not tried in all ways. */
  private static final int MOST_TURNED = 10;

  private final JoinedEnds joined;

  StrandMaker(JoinedEnds joined) {
    this.joined = joined;
  }

  /**
   * What came of stringing a layer.
   *
   * @param strands empty where the layer does not hold together
   * @param brokenAfter the index of the term after which it breaks, or −1
   */
  record Strung(List<Strand> strands, int brokenAfter) {
    Strung {
      strands = List.copyOf(strands);
    }
  }

  /** All the ways to walk a layer, one for each set of parts that it can take. */
  Strung string(List<Sought> layer) {
    if (layer.stream().anyMatch(sought -> sought.term().every())) {
      return new Strung(pooled(layer), -1);
    }
    if (layer.size() == 1) {
      return new Strung(layer.get(0).alone(joined), -1);
    }
    return run(layer);
  }

  /** {@code front.armhole then back.armhole}: each edge starts where the one before it ends. */
  private Strung run(List<Sought> layer) {
    List<Strand> strands = new ArrayList<>();
    int broken = -1;
    for (CutPart first : layer.get(0).parts()) {
      boolean goesOn = true;
      List<EdgePlace> places = new ArrayList<>();
      List<CutPart> parts = new ArrayList<>();
      CutPart part = first;
      for (int i = 0; goesOn && i < layer.size(); i++) {
        places.add(layer.get(i).place(part));
        parts.add(part);
        if (i + 1 < layer.size()) {
          Optional<CutPart> next = next(layer.get(i), part, layer.get(i + 1));
          if (next.isEmpty() && !isForOneHalf(layer.get(i), layer.get(i + 1))) {
            return new Strung(List.of(), i);
          }
          goesOn = next.isPresent();
          broken = goesOn ? broken : i;
          part = next.orElse(part);
        }
      }
      if (!goesOn) {
        continue;
      }
      Sought last = layer.get(layer.size() - 1);
      boolean ring =
          layer.get(0).startsAtCorner()
              && last.endsAtCorner()
              && Sought.closes(joined, last.start(part).otherEnd(), layer.get(0).start(first))
                  .isPresent();
      strands.add(new Strand(places, parts, layer.get(0).start(first).hand(), ring));
    }
    return new Strung(strands, strands.isEmpty() ? broken : -1);
  }

  /** Whether only one half of a piece can go on to another: to a left that has no right. */
  private static boolean isForOneHalf(Sought here, Sought after) {
    return after.parts().size() < here.parts().size()
        && here.parts().stream().allMatch(part -> part.half() != EdgePlace.Half.WHOLE);
  }

  /**
   * The ways to turn edges of a run against their drawing so that it holds together. Where there is
   * one only, the order of the edges says all; two edges that meet at both ends have two.
   */
  List<List<Sought>> turnedToHold(List<Sought> layer) {
    int count = layer.size();
    List<List<Sought>> ways = new ArrayList<>();
    for (int mask = 1; count <= MOST_TURNED && mask < 1 << count; mask++) {
      List<Sought> tried = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        boolean turn = (mask >> i & 1) == 1;
        tried.add(turn ? layer.get(i).turned() : layer.get(i));
      }
      if (string(tried).brokenAfter() < 0) {
        ways.add(tried);
      }
    }
    return ways;
  }

  private Optional<CutPart> next(Sought here, CutPart part, Sought after) {
    if (!here.endsAtCorner() || !after.startsAtCorner()) {
      return Optional.empty();
    }
    return joined
        .round(
            here.start(part).otherEnd(),
            end -> after.has(end) && end.equals(after.start(end.part())))
        .map(EdgeEnd::part);
  }

  /** {@code every panel.waist}: all parts, end to end as far as they go, in either sense. */
  private List<Strand> pooled(List<Sought> layer) {
    List<Strand> strands = new ArrayList<>();
    Set<EdgeEnd> used = new HashSet<>();
    for (Sought sought : layer) {
      if (sought.placed() || !sought.whole()) {
        strands.addAll(sought.alone(joined));
        continue;
      }
      for (CutPart part : sought.parts()) {
        EdgeEnd start = sought.start(part);
        if (!used.contains(start)) {
          strands.add(chain(start, layer, used));
        }
      }
    }
    return strands;
  }

  private Strand chain(EdgeEnd start, List<Sought> layer, Set<EdgeEnd> used) {
    List<EdgeEnd> starts = new ArrayList<>();
    boolean ring = walk(start, layer, starts, used);
    if (!ring) {
      List<EdgeEnd> before = new ArrayList<>();
      walk(start.otherEnd(), layer, before, used);
      Collections.reverse(before);
      before.remove(before.size() - 1);
      starts.addAll(0, before.stream().map(EdgeEnd::otherEnd).toList());
    }
    return new Strand(
        starts.stream().map(EdgeEnd::place).toList(),
        starts.stream().map(EdgeEnd::part).toList(),
        start.hand(),
        ring);
  }

  /** Walks on from a start; whether the walk comes back to it. */
  private boolean walk(EdgeEnd start, List<Sought> layer, List<EdgeEnd> starts, Set<EdgeEnd> used) {
    Set<EdgeEnd> walked = new HashSet<>();
    Optional<EdgeEnd> here = Optional.of(start);
    while (here.isPresent() && walked.add(here.get())) {
      starts.add(here.get());
      used.add(here.get());
      used.add(here.get().otherEnd());
      here =
          joined.round(
              here.get().otherEnd(),
              end -> layer.stream().anyMatch(sought -> sought.whole() && sought.has(end)));
    }
    return here.isPresent() && here.get().equals(start);
  }
}
