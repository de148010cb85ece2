package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.hemwright.pattern.piece.Edge;

/** Which ends of edges the seams resolved so far bring together, and what lies round a corner. */
final class JoinedEnds {
  private final CutParts parts;
  private final Map<EdgeEnd, List<EdgeEnd>> together = new LinkedHashMap<>();

  JoinedEnds(CutParts parts) {
    this.parts = parts;
  }

  /** Takes note of one pass of sewing: the layers' starts come together, and their ends. */
  void add(Seam.Join join) {
    for (boolean start : new boolean[] {true, false}) {
      List<Optional<EdgeEnd>> ends =
          join.layers().stream().map(layer -> terminal(layer, start)).toList();
      for (int i = 0; i < ends.size(); i++) {
        for (int j = 0; j < ends.size(); j++) {
          if (i != j && ends.get(i).isPresent() && ends.get(j).isPresent()) {
            together
                .computeIfAbsent(ends.get(i).get(), end -> new ArrayList<>())
                .add(ends.get(j).get());
          }
        }
      }
    }
  }

  /** Where a layer starts or ends, if that is at the corner of a part. */
  private Optional<EdgeEnd> terminal(Seam.Layer layer, boolean start) {
    EdgePlace place = layer.run().get(start ? 0 : layer.run().size() - 1);
    boolean atDrawnStart = start != place.reversed();
    if ((atDrawnStart ? place.from() : place.to()).isPresent()) {
      return Optional.empty();
    }
    Optional<CutPart> part = parts.of(place);
    if (part.isEmpty()) {
      return Optional.empty();
    }
    int index = Sought.edgeIndex(part.get().piece(), place.edge());
    if (index < 0) {
      return Optional.empty();
    }
    Edge edge = part.get().edge(index);
    return Optional.of(new EdgeEnd(part.get(), index, atDrawnStart == edge.reversed()));
  }

  /**
   * The first wanted end met by who walks round the corner from an end, over folds and across seams
   * that begin or end there; absent where an edge that is not sewn comes first.
   */
  Optional<EdgeEnd> round(EdgeEnd from, Predicate<EdgeEnd> wanted) {
    return round(from, wanted, new HashSet<>());
  }

  private Optional<EdgeEnd> round(EdgeEnd from, Predicate<EdgeEnd> wanted, Set<EdgeEnd> seen) {
    EdgeEnd beside = from.besideAtCorner();
    if (!seen.add(beside)) {
      return Optional.empty();
    }
    if (wanted.test(beside)) {
      return Optional.of(beside);
    }
    for (EdgeEnd across : across(beside)) {
      Optional<EdgeEnd> found = round(across, wanted, seen);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private List<EdgeEnd> across(EdgeEnd end) {
    if (end.part().edge(end.edge()).onFold()) {
      return parts
          .otherHalf(end.part())
          .map(half -> List.of(new EdgeEnd(half, end.edge(), end.last())))
          .orElse(List.of());
    }
    return together.getOrDefault(end, List.of());
  }
}
