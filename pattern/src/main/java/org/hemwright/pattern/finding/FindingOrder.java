package org.hemwright.pattern.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.quantity.Quantity;

/**
 * Findings as a reader wants them: one for one cause, sizes grouped, in the order of the text.
 *
 * <p>Findings are of one cause when code, subject, origin and all arguments but measured values and
 * counts are the same. Of several the worst is told (by status, then by how far found and expected
 * lie apart), with all their sizes; values that differ from size to size become ranges.
 *
 * @param chart the names of all sizes, in the chart's order
 */
public record FindingOrder(List<String> chart) {
  public FindingOrder {
    chart = List.copyOf(chart);
  }

  /** One finding for one cause, those with a place in a text first, in its order. */
  public List<Finding> of(Collection<Finding> findings) {
    Map<Cause, List<Finding>> causes = new LinkedHashMap<>();
    for (Finding finding : findings) {
      causes.computeIfAbsent(Cause.of(finding), cause -> new ArrayList<>()).add(finding);
    }
    List<Finding> told = new ArrayList<>();
    causes.values().forEach(group -> told.add(merged(group)));
    told.sort(
        Comparator.comparing(FindingOrder::place)
            .thenComparing(FindingOrder::severity, Comparator.reverseOrder()));
    return List.copyOf(told);
  }

  private record Cause(
      String code, String subject, Optional<Origin> origin, Map<String, Argument> words) {
    static Cause of(Finding finding) {
      Map<String, Argument> words = new LinkedHashMap<>();
      finding
          .arguments()
          .forEach(
              (name, argument) -> {
                boolean varies =
                    argument instanceof Argument.Measured
                        || argument instanceof Argument.Range
                        || argument instanceof Argument.Count;
                if (!varies) {
                  words.put(name, argument);
                }
              });
      return new Cause(finding.code(), finding.subject(), finding.origin(), words);
    }
  }

  /** Without a place in a text comes last: {@code \uffff} sorts after every file's name. */
  private static Origin place(Finding finding) {
    return finding.origin().orElse(new Origin("\uffff", 1, 1));
  }

  private static int severity(Finding finding) {
    return switch (finding.status()) {
      case OK -> 0;
      case ACCEPTED -> 1;
      case WARN -> 2;
      case FAIL -> 3;
    };
  }

  private static double apart(Finding finding) {
    OptionalDouble found = finding.found();
    return found.isPresent()
        ? Math.abs(found.getAsDouble() - finding.expected().orElse(0))
        : Double.NEGATIVE_INFINITY;
  }

  private Finding merged(List<Finding> group) {
    Finding worst = group.get(0);
    for (Finding finding : group) {
      int byStatus = Integer.compare(severity(finding), severity(worst));
      if (byStatus > 0 || (byStatus == 0 && apart(finding) > apart(worst))) {
        worst = finding;
      }
    }
    Map<String, Argument> arguments = new LinkedHashMap<>();
    worst.arguments().forEach((name, own) -> arguments.put(name, ranged(name, own, group)));
    return new Finding(
        worst.code(),
        worst.status(),
        worst.subject(),
        sizes(group),
        arguments,
        worst.found(),
        worst.expected(),
        worst.unit(),
        worst.places(),
        worst.edit());
  }

  /** The sizes of all, in the chart's order; none where one of them holds whatever the size. */
  private List<String> sizes(List<Finding> group) {
    List<String> named = new ArrayList<>();
    for (Finding finding : group) {
      if (finding.sizes().isEmpty()) {
        return List.of();
      }
      finding.sizes().stream().filter(size -> !named.contains(size)).forEach(named::add);
    }
    named.sort(
        Comparator.comparingInt(size -> chart.contains(size) ? chart.indexOf(size) : chart.size()));
    return named;
  }

  private static Argument ranged(String name, Argument own, List<Finding> group) {
    if (!(own instanceof Argument.Measured measured)) {
      return own;
    }
    Quantity least = measured.quantity();
    Quantity most = least;
    for (Finding finding : group) {
      if (finding.arguments().get(name) instanceof Argument.Measured other
          && other.quantity().kind() == least.kind()) {
        least = other.quantity().amount() < least.amount() ? other.quantity() : least;
        most = other.quantity().amount() > most.amount() ? other.quantity() : most;
      }
    }
    return least.amount() == most.amount() ? own : new Argument.Range(least, most);
  }
}
