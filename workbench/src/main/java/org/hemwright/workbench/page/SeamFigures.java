package org.hemwright.workbench.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.plot.SeamPlot;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.seam.Seam;

/** For every seam a plot of its difference over the sizes, and the figures beneath it. */
final class SeamFigures {
  private final Report report;

  SeamFigures(Report report) {
    this.report = report;
  }

  /** One layer of a seam against its first, in one size (mm). */
  private record Walked(
      String first, String second, double firstLength, double secondLength, Seam.Ease ease) {
    double least() {
      return ease.share() ? ease.least() * secondLength : ease.least();
    }

    double most() {
      return ease.share() ? ease.most() * secondLength : ease.most();
    }

    double difference() {
      return firstLength - secondLength;
    }
  }

  void section(Markup page) {
    Map<String, Map<String, Walked>> seams = seams();
    if (seams.isEmpty()) {
      return;
    }
    page.open("section", "id", "seams", "aria-labelledby", "seams-title");
    page.element("h2", "Seams over the sizes", "id", "seams-title");
    page.element(
        "p",
        ("How much longer the first layer of each seam is than what is meant: as long as the other,"
                + " or by its declared ease. In the inner band nothing is said; beyond %s mm of it is"
                + " worth a look (a triangle), beyond %s mm fails (a square).")
            .formatted(DecimalText.of(report.seamWarn(), 1), DecimalText.of(report.seamFail(), 1)));
    page.open("div", "class", "seams");
    int index = 0;
    for (Map.Entry<String, Map<String, Walked>> seam : seams.entrySet()) {
      figure(page, seam.getKey(), seam.getValue(), "s" + ++index + "-");
    }
    page.close("div").close("section");
  }

  /** Every layer after the first, of the first join of every seam, by name and size. */
  private Map<String, Map<String, Walked>> seams() {
    Map<String, Map<String, Walked>> seams = new LinkedHashMap<>();
    for (SizedPattern sized : report.run().sizes()) {
      for (Seam seam : sized.seams()) {
        Seam.Join join = seam.joins().get(0);
        double first = LayerWalk.of(join.layers().get(0), sized).length();
        for (int i = 1; i < join.layers().size(); i++) {
          String name =
              join.layers().size() == 2 ? seam.name() : seam.name() + ", layer " + (i + 1);
          Walked walked =
              new Walked(
                  join.layers().get(0).text(),
                  join.layers().get(i).text(),
                  first,
                  LayerWalk.of(join.layers().get(i), sized).length(),
                  seam.ease());
          seams
              .computeIfAbsent(name, key -> new LinkedHashMap<>())
              .put(sized.size().name(), walked);
        }
      }
    }
    return seams;
  }

  private void figure(Markup page, String name, Map<String, Walked> sizes, String prefix) {
    Walked any = sizes.values().iterator().next();
    List<SeamPlot.At> curve = new ArrayList<>();
    int fails = 0;
    int looks = 0;
    for (Map.Entry<String, Walked> each : sizes.entrySet()) {
      Walked walked = each.getValue();
      double middle = (walked.least() + walked.most()) / 2;
      double meant = (walked.most() - walked.least()) / 2;
      double beyond = walked.difference() - middle;
      double out = Math.abs(beyond) - meant;
      fails += out > report.seamFail() ? 1 : 0;
      looks += out > report.seamWarn() && out <= report.seamFail() ? 1 : 0;
      curve.add(new SeamPlot.At(each.getKey(), beyond, meant));
    }
    page.open("figure", "class", "seam");
    page.open("figcaption");
    page.element("h3", name.replace('_', ' '));
    page.element("p", any.first() + " with " + any.second() + ease(any.ease()));
    page.close("figcaption");
    String label =
        "Seam %s over %d %s: %s"
            .formatted(
                name,
                sizes.size(),
                sizes.size() == 1 ? "size" : "sizes",
                fails + looks == 0
                    ? "it matches in all of them."
                    : fails
                        + " to mend, "
                        + looks
                        + " worth a look; the table below has the figures.");
    page.written(
        SvgWriter.inline(
            prefix, label, SeamPlot.of(curve, report.seamWarn(), report.seamFail()), ""));
    table(page, name, sizes, any);
    page.close("figure");
  }

  private String ease(Seam.Ease ease) {
    if (ease.equals(Seam.Ease.NONE)) {
      return "";
    }
    Argument range =
        ease.share()
            ? new Argument.Text(
                DecimalText.of(ease.least() * 100, 1)
                    + " to "
                    + DecimalText.of(ease.most() * 100, 1)
                    + "%")
            : new Argument.Text(
                DecimalText.of(ease.least(), 1) + " to " + DecimalText.of(ease.most(), 1) + " mm");
    return ", ease " + ((Argument.Text) range).text();
  }

  private static void table(Markup page, String name, Map<String, Walked> sizes, Walked any) {
    page.open("details").element("summary", "The figures");
    page.open("div", "class", "wide").open("table");
    page.element("caption", "Seam " + name.replace('_', ' ') + ", lengths in millimetres");
    page.open("thead").open("tr");
    for (String heading :
        List.of("size", any.first(), any.second(), "difference", "meant least", "meant most")) {
      page.element("th", heading, "scope", "col");
    }
    page.close("tr").close("thead").open("tbody");
    sizes.forEach(
        (size, walked) -> {
          page.open("tr").element("th", size, "scope", "row");
          for (double value :
              new double[] {
                walked.firstLength(),
                walked.secondLength(),
                walked.difference(),
                walked.least(),
                walked.most()
              }) {
            page.element("td", DecimalText.of(value, 2));
          }
          page.close("tr");
        });
    page.close("tbody").close("table").close("div").close("details");
  }

  /** Whether there is anything to show. */
  Optional<String> link() {
    return seams().isEmpty() ? Optional.empty() : Optional.of("seams");
  }
}
