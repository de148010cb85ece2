package org.hemwright.checks;

import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;

/** One question asked of every size of a run. */
final class BySize {
  private BySize() {}

  /**
   * Asks every size, side by side where there are free cores, and tells each cause once. What is
   * told and in which order does not depend on the cores.
   *
   * @param question what it found in the size of that place in the run; the size is filled in
   */
  static List<Finding> findings(SizeRun run, IntFunction<List<Finding>> question) {
    List<Finding> all =
        IntStream.range(0, run.sizes().size())
            .parallel()
            .boxed()
            .flatMap(
                index -> {
                  List<String> size = List.of(run.sizes().get(index).size().name());
                  return question.apply(index).stream().map(finding -> finding.in(size));
                })
            .toList();
    if (all.isEmpty()) {
      return all;
    }
    return new FindingOrder(run.pattern().chart().sizes().stream().map(Size::name).toList())
        .of(all);
  }
}
