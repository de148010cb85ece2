package org.hemwright.exchange.chart;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;

/**
 * What a chart file came to.
 *
 * @param chart the sizes and measurements; a cell that could not be read is absent in it. Absent
 *     altogether when not even the sizes could be made out
 * @param findings every problem, in the order of the file
 */
public record ReadChart(Optional<SizeChart> chart, List<Finding> findings) {
  public ReadChart {
    findings = List.copyOf(findings);
  }
}
