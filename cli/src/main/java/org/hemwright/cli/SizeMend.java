package org.hemwright.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.NearName;

/** What to say of a size that the chart does not have. */
final class SizeMend {
  private SizeMend() {}

  /**
   * What is so and what would mend it.
   *
   * @param asked what was asked for
   * @param known the chart's sizes, in order, at least one
   */
  static String of(String asked, List<String> known) {
    String meant = String.join(" or ", near(asked, known));
    return "the chart has no size “%s”; %s"
        .formatted(
            asked,
            meant.isEmpty()
                ? "it has " + String.join(", ", known) + "."
                : "did you mean " + meant + "? It has " + String.join(", ", known) + ".");
  }

  /** The two neighbours of a number; otherwise the name with the fewest slips. */
  private static List<String> near(String asked, List<String> known) {
    Optional<Integer> number = number(asked);
    List<String> numbered = known.stream().filter(name -> number(name).isPresent()).toList();
    if (number.isEmpty() || numbered.isEmpty()) {
      return NearName.to(asked, known).stream().toList();
    }
    int sought = number.get();
    List<String> nearest = new ArrayList<>();
    numbered.stream()
        .filter(name -> number(name).orElse(0) <= sought)
        .max(Comparator.comparing(name -> number(name).orElse(0)))
        .ifPresent(nearest::add);
    numbered.stream()
        .filter(name -> number(name).orElse(0) > sought)
        .min(Comparator.comparing(name -> number(name).orElse(0)))
        .ifPresent(nearest::add);
    return nearest;
  }

  private static Optional<Integer> number(String name) {
    return name.matches("[0-9]{1,4}") ? Optional.of(Integer.parseInt(name)) : Optional.empty();
  }
}
