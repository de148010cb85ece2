package org.hemwright.workbench.page;

import java.util.List;
import java.util.stream.Collectors;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.plot.CoveragePlot;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.pattern.body.Coverage;
import org.hemwright.workbench.report.CoverageWords;

/** Whom the size chart serves: a picture, the figures, and what they rest on. */
final class CoverageSection {
  private final Report report;

  CoverageSection(Report report) {
    this.report = report;
  }

  void section(Markup page) {
    page.open("section", "id", "chart", "aria-labelledby", "chart-title");
    page.element("h2", "Whom the size chart serves", "id", "chart-title");
    int index = 0;
    for (Coverage.Answer answer : report.coverage()) {
      page.open("p").prose(CoverageWords.of(answer, report.wording().sizes())).close("p");
      if (answer.coverage().isPresent()) {
        figure(page, answer.coverage().get(), "c" + ++index + "-");
      }
    }
    page.close("section");
  }

  private void figure(Markup page, Coverage coverage, String prefix) {
    boolean inches = report.run().pattern().details().units() == Details.Units.INCHES;
    String dimensions =
        coverage.dimensions().stream()
            .map(dimension -> dimension.column().replace('_', ' '))
            .collect(Collectors.joining(" and "));
    String who = coverage.survey().sex() == BodySurvey.Sex.WOMEN ? "women" : "men";
    page.open("figure", "class", "coverage");
    String label =
        "The sizes over the surveyed %s by %s: %s of them have a size."
            .formatted(who, dimensions, CoverageWords.share(coverage.share()));
    page.written(SvgWriter.inline(prefix, label, CoveragePlot.of(coverage, inches), ""));
    page.element("figcaption", key(coverage));
    page.close("figure");
    table(page, coverage, who);
    page.element("p", CoverageWords.basis(coverage), "class", "basis");
  }

  private static String key(Coverage coverage) {
    return coverage.dimensions().size() == 1
        ? "The curve shows how the surveyed bodies spread, the tinted parts what each size reaches."
        : "Each box is what a size reaches, half a step to either side. Half of the surveyed bodies"
            + " lie within the inner ring, 95 in 100 within the broken one.";
  }

  private static void table(Markup page, Coverage coverage, String who) {
    page.open("details").element("summary", "The figures");
    page.open("div", "class", "wide").open("table");
    page.element("caption", "Share of the surveyed " + who + " that each size serves");
    page.open("thead").open("tr");
    for (String heading : List.of("size", "share")) {
      page.element("th", heading, "scope", "col");
    }
    page.close("tr").close("thead").open("tbody");
    for (Coverage.OfSize size : coverage.sizes()) {
      page.open("tr").element("th", size.name(), "scope", "row");
      page.element("td", size.held() ? CoverageWords.share(size.share()) : "no data");
      page.close("tr");
    }
    page.close("tbody").close("table").close("div").close("details");
  }
}
