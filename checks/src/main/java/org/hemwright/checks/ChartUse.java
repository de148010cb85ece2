package org.hemwright.checks;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.SizeChart;

/** Which columns of the chart the document or a check takes: the others no piece uses. */
record ChartUse(SizeRun run, CheckSettings settings) {
  private static final String RISE = "body_rise";

  /** The columns that nothing takes; none where it is not known what the document takes. */
  List<SizeChart.Column> unused() {
    Set<String> used = new LinkedHashSet<>(run.pattern().measured());
    if (used.isEmpty()) {
      return List.of();
    }
    for (SizedPattern sized : run.sizes()) {
      for (View view : run.pattern().views()) {
        LevelRound.of(view, sized, run.pattern()).forEach(level -> used.add(level.level()));
        OpeningRound.of(view, sized, run.pattern(), settings)
            .forEach(opening -> used.add(opening.over()));
      }
      for (HeldElastic elastic : HeldElastic.of(sized, run.pattern(), settings)) {
        used.add(elastic.round());
        used.add(elastic.over());
      }
      if (!used.contains(RISE) && !GarmentRise.of(sized).isEmpty()) {
        used.add(RISE);
      }
    }
    return run.pattern().chart().columns().stream()
        .filter(column -> !used.contains(column.name()))
        .toList();
  }
}
