package org.hemwright.pattern.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.quantity.Quantity;

/**
 * Makes sentences of changes, one for each group of sizes in which it is the same to a tenth of a
 * millimetre; where that would be many, one for all that grew and one for all that shrank.
 *
 * @param wording with {@link Comparison#messages()} among its sentences, for the new chart
 */
public record ChangeWords(Wording wording) {
  private static final int MOST_GROUPS = 3;
  private static final double TENTHS = 10;

  /** Whether a length grew is said of a body, an edge, or a width in a word of its own. */
  private static String more(Changed changed, boolean grew) {
    return switch (changed) {
      case MEASUREMENT -> grew ? "larger" : "smaller";
      case EDGE_ALLOWANCE, ELASTIC_WIDTH -> grew ? "wider" : "narrower";
      case INTAKE_TAKES -> grew ? "more" : "less";
      default -> grew ? "longer" : "shorter";
    };
  }

  /** The sentences for one change, at least one. */
  public List<String> of(Change change) {
    if (change.values().isEmpty()) {
      return List.of(sentence(change, change.sizes(), List.of()));
    }
    List<String> sentences = new ArrayList<>();
    for (List<String> sizes : groups(change)) {
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

  private static List<List<String>> groups(Change change) {
    Map<Long, List<String>> alike = new LinkedHashMap<>();
    Map<Boolean, List<String>> sense = new LinkedHashMap<>();
    change
        .values()
        .forEach(
            (size, values) -> {
              double by = by(change.changed(), values);
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
    return wording.message(told.build());
  }

  private static Argument range(
      List<Change.Values> values, ToDoubleFunction<Change.Values> length) {
    double least = values.stream().mapToDouble(length).min().orElseThrow();
    double most = values.stream().mapToDouble(length).max().orElseThrow();
    return new Argument.Range(Quantity.length(least), Quantity.length(most));
  }
}
