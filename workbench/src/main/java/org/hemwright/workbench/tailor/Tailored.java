package org.hemwright.workbench.tailor;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hemwright.exchange.run.SizeRunJson;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;

/**
 * A body that takes the place of a size.
 *
 * @param name of the body, which none of the chart's sizes has
 * @param place the size whose place it takes
 * @param measures its own (mm, radians or plain), by the chart's names; others are absent
 */
public record Tailored(String name, String place, Map<String, Double> measures) {
  public Tailored {
    measures = Collections.unmodifiableMap(new LinkedHashMap<>(measures));
    if (name.isBlank()) {
      throw new IllegalArgumentException("a body has a name");
    }
  }

  /**
   * The size that a body is nearest to, by all its measurements alike, as shares of the chart's.
   *
   * @param measures at least one that the chart has
   */
  public static String nearest(SizeChart chart, Map<String, Double> measures) {
    String best = chart.sizes().get(0).name();
    double least = Double.MAX_VALUE;
    for (Size size : chart.sizes()) {
      double off = 0;
      for (Map.Entry<String, Double> each : measures.entrySet()) {
        OptionalDouble drawn = value(chart, each.getKey(), size);
        if (drawn.isPresent() && drawn.getAsDouble() > 0) {
          double share = each.getValue() / drawn.getAsDouble() - 1;
          off += share * share;
        } else {
          off += 1;
        }
      }
      if (off < least) {
        least = off;
        best = size.name();
      }
    }
    return best;
  }

  /** What the chart has in a size. */
  public static OptionalDouble value(SizeChart chart, String measure, Size size) {
    return chart
        .column(measure)
        .map(column -> column.cells().get(size.position()).value())
        .orElse(OptionalDouble.empty());
  }

  /** The chart with the body's measurements in place of the size's; what it lacks is blank. */
  public SizeChart in(SizeChart chart) {
    int row = chart.size(place).orElseThrow().position();
    List<SizeChart.Column> columns = new ArrayList<>();
    for (SizeChart.Column column : chart.columns()) {
      List<SizeChart.Cell> cells = new ArrayList<>(column.cells());
      Double own = measures.get(column.name());
      cells.set(
          row,
          new SizeChart.Cell(
              own == null ? OptionalDouble.empty() : OptionalDouble.of(own),
              cells.get(row).origin()));
      columns.add(
          new SizeChart.Column(
              column.name(), column.heading(), column.kind(), cells, column.origin()));
    }
    return new SizeChart(chart.file(), chart.sizes(), columns);
  }

  /** The run of that chart with the body alone, under its own name wherever a size is named. */
  public SizeRun named(SizeRun run) {
    Size size = run.pattern().chart().size(place).orElseThrow();
    SizeRun alone = new SizeRun(run.pattern(), run.size(place).stream().toList());
    String json = new String(SizeRunJson.write(alone), StandardCharsets.UTF_8);
    String renamed = json.replace(written(size), written(new Size(size.position(), name)));
    return SizeRunJson.read(
            Tailored.class.getSimpleName(), renamed.getBytes(StandardCharsets.UTF_8))
        .run()
        .orElseThrow();
  }

  /**
   * A size as the JSON of a run has it; place and name together stand for nothing else in there.
   */
  private static String written(Size size) {
    String quoted = size.name().replace("\\", "\\\\").replace("\"", "\\\"");
    return "{\"position\":%d,\"name\":\"%s\"}".formatted(size.position(), quoted);
  }
}
