package org.hemwright.draft.plan.name;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.draft.syntax.Name;
import org.hemwright.draft.syntax.NumberRule.SizeWord;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.body.SizeRange;

/** Sizes as the document names them, found in the chart. */
public final class SizeNames {
  private final SizeChart chart;
  private final Problems problems;

  /** Names of this chart. */
  public SizeNames(SizeChart chart, Problems problems) {
    this.chart = chart;
    this.problems = problems;
  }

  /** The size of that name; where the chart has none, it is told. */
  public Optional<Size> find(SizeWord word) {
    Optional<Size> size = chart.size(word.name());
    if (size.isEmpty()) {
      List<String> known = chart.sizes().stream().map(Size::name).toList();
      Unknown.tell(problems, new Name(word.name(), word.span()), "size-of-chart", known);
    }
    return size;
  }

  /** The sizes between two names; where they do not run upward, it is told. */
  public Optional<SizeRange> find(Statement.Sizes sizes) {
    Optional<Size> from = find(sizes.from());
    Optional<Size> to = find(sizes.to());
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (from.get().position() > to.get().position()) {
      problems.add(
          problems
              .at(sizes.span(), "sizes-downward")
              .with("from", from.get().name())
              .with("to", to.get().name())
              .with("chart", chart.file()));
      return Optional.empty();
    }
    return Optional.of(new SizeRange(from.get(), to.get()));
  }

  /** All sizes. */
  public SizeRange all() {
    return new SizeRange(chart.sizes().get(0), chart.sizes().get(chart.sizes().size() - 1));
  }

  /** The chart. */
  public SizeChart chart() {
    return chart;
  }
}
