package org.hemwright.pattern.compare;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.quantity.Quantity;

/**
 * Makes sentences of changes, one for each group of sizes in which it is the same to a tenth of a
 * millimetre; where that would be many, one for all that grew and one for all that shrank.
 *
 * @param wording with {@link Comparison#messages()} among its sentences, for the new chart
 * @param brief for makers: what nobody cuts by hand is left out, sizes that differ by no more than
 *     that share a sentence, and lengths of an edge that differ from size to size are not told
 */
public record ChangeWords(Wording wording, boolean brief) {
  private static final int MOST_GROUPS = 3;
  private static final double TENTHS = 10;

  /** Every change to the tenth of a millimetre, as a designer reads it. */
  public ChangeWords(Wording wording) {
    this(wording, false);
  }

  /** Whether a length grew is said of a body, an edge, or a width in a word of its own. */
  private static String more(Changed changed, boolean grew) {
    return switch (changed) {
      case MEASUREMENT -> grew ? "larger" : "smaller";
      case EDGE_ALLOWANCE, ELASTIC_WIDTH -> grew ? "wider" : "narrower";
      case INTAKE_TAKES -> grew ? "more" : "less";
      default -> grew ? "longer" : "shorter";
    };
  }

  /** The sentences for one change, at least one; none where it is too small for the brief. */
  public List<String> of(Change change) {
    if (change.values().isEmpty()) {
      return List.of(sentence(change, change.sizes(), List.of()));
    }
    List<String> sentences = new ArrayList<>();
    Map<String, Change.Values> told = told(change);
    for (List<String> sizes : groups(change.changed(), told)) {
      sentences.add(
          sentence(change, sizes, sizes.stream().map(size -> value(change, size)).toList()));
    }
    return sentences;
  }

  private static Change.Values value(Change change, String size) {
    Change.Values values = change.values().get(size);
    if (values == null) {
      throw new IllegalArgumentException("the change has no value in size " + size);
    }
    return values;
  }

  private Map<String, Change.Values> told(Change change) {
    if (!brief) {
      return change.values();
    }
    Map<String, Change.Values> told = new LinkedHashMap<>(change.values());
    told.values().removeIf(values -> values.apart() < Tolerance.CUT_BY_HAND);
    return told;
  }

  private List<List<String>> groups(Changed changed, Map<String, Change.Values> told) {
    if (brief && !told.isEmpty()) {
      DoubleSummaryStatistics all =
          told.values().stream().mapToDouble(values -> by(changed, values)).summaryStatistics();
      if (all.getMax() - all.getMin() < Tolerance.CUT_BY_HAND) {
        return List.of(List.copyOf(told.keySet()));
      }
    }
    Map<Long, List<String>> alike = new LinkedHashMap<>();
    Map<Boolean, List<String>> sense = new LinkedHashMap<>();
    told.forEach(
        (size, values) -> {
          double by = by(changed, values);
          alike.computeIfAbsent(Math.round(by * TENTHS), key -> new ArrayList<>()).add(size);
          sense.computeIfAbsent(by > 0, key -> new ArrayList<>()).add(size);
        });
    return List.copyOf((alike.size() <= MOST_GROUPS ? alike : sense).values());
  }

  /** Signed where lengths are compared; places only lie apart. */
  private static double by(Changed changed, Change.Values values) {
    return switch (changed) {
      case CUT_LINE, EDGE_COURSE, NOTCH_MOVED, MARK_MOVED -> values.apart();
      default -> values.is() - values.was();
    };
  }

  private String sentence(Change change, List<String> sizes, List<Change.Values> values) {
    Finding.Builder told = Finding.ok(change.changed().code(), change.subject()).sizes(sizes);
    change.was().ifPresent(was -> told.with("was", was));
    change.is().ifPresent(is -> told.with("is", is));
    if (!values.isEmpty()) {
      told.with("was", range(values, Change.Values::was));
      told.with("is", range(values, Change.Values::is));
      told.with("apart", range(values, Change.Values::apart));
      told.with("by", range(values, each -> Math.abs(each.is() - each.was())));
      boolean grew = values.get(0).is() > values.get(0).was();
      told.with("more", new Argument.Term(more(change.changed(), grew)));
    }
    if (brief && (values.isEmpty() || severalLengths(values))) {
      told.with("brief", Argument.of(""));
    }
    return wording.message(told.build());
  }

  private static boolean severalLengths(List<Change.Values> values) {
    DoubleSummaryStatistics was =
        values.stream().mapToDouble(Change.Values::was).summaryStatistics();
    return was.getMax() - was.getMin() >= Tolerance.CUT_BY_HAND;
  }

  private static Argument range(
      List<Change.Values> values, ToDoubleFunction<Change.Values> length) {
    double least = values.stream().mapToDouble(length).min().orElseThrow();
    double most = values.stream().mapToDouble(length).max().orElseThrow();
    return new Argument.Range(Quantity.length(least), Quantity.length(most));
  }
}
