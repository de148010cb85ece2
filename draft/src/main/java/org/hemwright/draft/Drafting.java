package org.hemwright.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.draft.plan.DialSettings;
import org.hemwright.draft.plan.Drawn;
import org.hemwright.draft.plan.Plan;
import org.hemwright.draft.plan.Planned;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.TracedInputs;

/**
 * From a document and a chart to every piece in every size.
 *
 * <p>A pure function: the same text and the same chart give the same values on every machine. It
 * never throws because of what the text says; what cannot be is a finding, and the rest is drawn.
 */
public final class Drafting {
  private Drafting() {}

  /** Every size, dials as the document has them. */
  public static Drafted draft(String file, String text, SizeChart chart) {
    return draft(file, text, chart, DialSettings.NONE);
  }

  /** Every size, some dials turned. */
  public static Drafted draft(String file, String text, SizeChart chart, DialSettings dials) {
    return draft(file, text, chart, dials, chart.sizes().stream().map(Size::name).toList());
  }

  /**
   * Some sizes, some dials turned.
   *
   * @param file the document's name, for findings
   * @param text all of it
   * @param chart the body measurements
   * @param dials where dials stand, as far as not where the document has them
   * @param sizes the names of the sizes to draw, in any order
   */
  public static Drafted draft(
      String file, String text, SizeChart chart, DialSettings dials, List<String> sizes) {
    return draft(file, text, new DraftInputs(chart, TracedInputs.NONE), dials, sizes);
  }

  /** Every size, dials as the document has them, with what else the document names. */
  public static Drafted draft(String file, String text, SizeChart chart, TracedInputs traced) {
    List<String> sizes = chart.sizes().stream().map(Size::name).toList();
    return draft(file, text, new DraftInputs(chart, traced), DialSettings.NONE, sizes);
  }

  /**
   * Some sizes, some dials turned, with all that the document names.
   *
   * @param file the document's name, for findings
   * @param text all of it
   * @param inputs the chart and the drawings
   * @param dials where dials stand, as far as not where the document has them
   * @param sizes the names of the sizes to draw, in any order
   */
  public static Drafted draft(
      String file, String text, DraftInputs inputs, DialSettings dials, List<String> sizes) {
    SizeChart chart = inputs.chart();
    Document document = DocumentReader.read(file, text);
    Planned planned = Plan.of(document, chart, inputs.traced());
    List<Finding> findings = new ArrayList<>(document.findings());
    findings.addAll(planned.findings());
    for (String name : sizes) {
      if (chart.size(name).isEmpty()) {
        findings.add(
            Finding.fail("size-not-in-chart", name)
                .with("name", name)
                .with("chart", chart.file())
                .with("known", Argument.of(chart.sizes().stream().map(Size::name).toList()))
                .at(new Origin(chart.file(), 1, 1))
                .build());
      }
    }
    List<Size> drawn = chart.sizes().stream().filter(size -> sizes.contains(size.name())).toList();
    Drawn result = planned.plan().evaluate(drawn, dials).drawn();
    findings.addAll(result.findings());
    List<String> order = chart.sizes().stream().map(Size::name).toList();
    return new Drafted(Optional.of(result.run()), new FindingOrder(order).of(findings));
  }

  /** The sentences of what reading, planning and evaluating a document may find. */
  public static Messages messages() {
    return Messages.beside(Drafting.class, "findings.properties");
  }
}
