package org.hemwright.bench;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.plan.Planned;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.exchange.chart.ChartReader;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.workbench.folder.FolderReading;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.folder.PatternFolder;

/**
 * One of the examples, read.
 *
 * @param text the document
 * @param chart its sizes
 * @param twenty the first twenty of them, or all where there are fewer
 */
record Example(String text, SizeChart chart, List<Size> twenty) {
  static Example named(String name) {
    List<Finding> problems = new ArrayList<>();
    FolderReading folder = new FolderReading(new PackedFolder(name), problems);
    String text = folder.document().orElseThrow();
    SizeChart chart =
        folder
            .bytes("sizes.csv", new Origin(PatternFolder.DOCUMENT, 1, 1))
            .flatMap(bytes -> ChartReader.read("sizes.csv", bytes).chart())
            .orElseThrow();
    if (!problems.isEmpty()) {
      throw new IllegalStateException(name + " has problems: " + problems);
    }
    int count = Math.min(20, chart.sizes().size());
    return new Example(text, chart, chart.sizes().subList(0, count));
  }

  Document document() {
    return DocumentReader.read(PatternFolder.DOCUMENT, text);
  }

  Plan plan() {
    Planned planned = Plan.of(document(), chart);
    if (!planned.findings().isEmpty()) {
      throw new IllegalStateException("the example has problems: " + planned.findings());
    }
    return planned.plan();
  }
}
