package org.hemwright.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Box;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.ChildSize;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Seam;

/**
 * Children's sleepwear fits closely or is made of cloth that resists flame, but for an infant's
 * that is short enough (handbook section 7, "Safety texts"): a caution that defers to local rules.
 */
record ChildSleepwearCheck(ChildLimits limits) implements EachSizeCheck {
  @Override
  public String id() {
    return "child-sleepwear";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    Optional<ChildSize> child = Children.of(sized, pattern);
    List<Finding> findings = new ArrayList<>();
    if (child.isEmpty()
        || !pattern.making().sleepwear()
        || !child.get().isUpTo(limits.sleeper(), limits.sleeperTall())) {
      return findings;
    }
    boolean infant = child.get().isUpTo(limits.infant(), limits.infantTall());
    for (View view : pattern.views()) {
      List<Garment> garments = garments(view, sized);
      double most = garments.size() > 1 ? limits.eachOfTwo() : limits.onePiece();
      double longest = garments.stream().mapToDouble(Garment::length).max().orElse(0);
      if (!infant) {
        findings.add(
            Finding.warn("sleepwear-fit", "view " + view.name())
                .with("view", view.name())
                .at(view.origin())
                .build());
      } else if (longest > most) {
        findings.add(
            Finding.warn("sleepwear-infant", "view " + view.name())
                .with("view", view.name())
                .with("length", Argument.mm(longest))
                .with("most", Argument.mm(most))
                .values(longest, most, "mm")
                .at(view.origin())
                .build());
      }
    }
    return findings;
  }

  /**
   * What hangs together: a top, or the trousers that go with it.
   *
   * @param length of its longest piece, upright as drawn (mm): what is sewn on below is not added
   */
  private record Garment(Set<String> pieces, double length) {}

  private static List<Garment> garments(View view, SizedPattern sized) {
    List<Set<String>> groups = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      if (view.pieces().contains(piece.name())) {
        groups.add(new HashSet<>(Set.of(piece.name())));
      }
    }
    for (Seam seam : sized.seams()) {
      Set<String> joined = new HashSet<>();
      SewnLoop.places(seam).forEach(place -> joined.add(place.piece()));
      List<Set<String>> met =
          groups.stream().filter(group -> group.stream().anyMatch(joined::contains)).toList();
      if (met.size() > 1) {
        groups.removeAll(met);
        Set<String> all = new HashSet<>();
        met.forEach(all::addAll);
        groups.add(all);
      }
    }
    return groups.stream().map(group -> new Garment(group, length(group, sized))).toList();
  }

  private static double length(Set<String> group, SizedPattern sized) {
    return group.stream()
        .flatMap(name -> sized.piece(name).stream())
        .map(piece -> piece.stitchLine().bounds())
        .mapToDouble(Box::height)
        .max()
        .orElse(0);
  }
}
