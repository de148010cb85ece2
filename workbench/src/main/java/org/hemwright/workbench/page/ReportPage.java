package org.hemwright.workbench.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.hemwright.paper.markup.Markup;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.finding.Status;
import org.hemwright.workbench.report.CheckAnswer;

/** The report of the checks as one page of HTML. */
public final class ReportPage {
  /** What its file is called. */
  public static final String FILE = "report.html";

  private final Report report;
  private final List<Numbered> findings;
  private final Markup page = new Markup();

  private ReportPage(Report report) {
    this.report = report;
    this.findings = Numbered.of(report.answers());
  }

  /** The page. */
  public static String html(Report report) {
    return new ReportPage(report).whole();
  }

  private String whole() {
    Details details = report.run().pattern().details();
    page.written("<!doctype html>\n").open("html", "lang", "en").open("head");
    page.open("meta", "charset", "utf-8");
    page.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.element("title", details.title() + " " + details.version() + ": what the checks found");
    page.open("link", "rel", "icon", "href", "data:,");
    page.open("style").written(style()).close("style").close("head").open("body");
    SeamFigures seams = new SeamFigures(report);
    header(details, seams.link().isPresent());
    page.open("main");
    FindingSections words =
        new FindingSections(
            findings, report.problems(), report.wording(), new SourceLines(report.sources()));
    words.open(page);
    new PieceFigures(report.run(), findings).section(page);
    seams.section(page);
    new BodySection(report).section(page, details.units() == Details.Units.INCHES);
    new SampleSection(report.samples(), report.wording().lengths()).section(page);
    new CoverageSection(report).section(page);
    words.accepted(page);
    checks();
    page.close("main");
    page.open("footer");
    page.element("p", "For the designer; makers need none of it. " + details.by() + ".");
    page.close("footer").close("body").close("html");
    return page.whole();
  }

  private void header(Details details, boolean seams) {
    page.open("header");
    report.proof().ifPresent(word -> page.element("p", word, "class", "proof"));
    page.element("p", details.by(), "class", "house");
    page.open("h1").text(details.title() + " ");
    page.element(
        "span", "version " + details.version() + ", " + details.dated(), "class", "version");
    page.close("h1");
    page.open("p", "class", "sum");
    sum(Status.FAIL, "fail", "to mend");
    sum(Status.WARN, "look", "worth a look");
    sum(Status.ACCEPTED, "accepted", "accepted");
    page.close("p");
    int sizes = report.run().sizes().size();
    page.element(
        "p",
        "%d checks in %d %s."
            .formatted(report.answers().size(), sizes, sizes == 1 ? "size" : "sizes"));
    page.open("nav", "aria-label", "On this page").open("ul");
    link("findings", "Findings");
    link("pieces", "Pieces");
    if (seams) {
      link("seams", "Seams over the sizes");
    }
    if (new BodySection(report).any()) {
      link("body", "Round the body");
    }
    if (!report.samples().isEmpty()) {
      link("samples", "Samples");
    }
    link("chart", "Size chart");
    if (count(Status.ACCEPTED) > 0) {
      link("accepted", "Accepted");
    }
    link("checks", "Checks");
    page.close("ul").close("nav").close("header");
  }

  private void sum(Status status, String kind, String words) {
    page.open("span", "class", "count " + kind);
    page.element("strong", Long.toString(count(status))).text(" " + words);
    page.close("span");
    page.text(" ");
  }

  private long count(Status status) {
    return findings.stream().filter(each -> each.finding().status() == status).count();
  }

  private void link(String id, String words) {
    page.open("li").element("a", words, "href", "#" + id).close("li");
  }

  private void checks() {
    page.open("section", "id", "checks", "aria-labelledby", "checks-title");
    page.element("h2", "Every check", "id", "checks-title");
    page.open("div", "class", "wide").open("table", "class", "checks");
    page.element("caption", "What each check said");
    page.open("thead").open("tr");
    page.element("th", "check", "scope", "col").element("th", "answer", "scope", "col");
    page.close("tr").close("thead").open("tbody");
    for (CheckAnswer answer : report.answers()) {
      page.open("tr").element("th", words(answer.id()), "scope", "row");
      page.open("td");
      List<Numbered> own = findings.stream().filter(f -> f.check().equals(answer.id())).toList();
      if (own.isEmpty()) {
        page.text("well");
      }
      for (Numbered each : own) {
        page.element(
            "a",
            each.kindInWords() + " " + each.number(),
            "href",
            "#" + each.id(),
            "class",
            each.kind());
        page.text(" ");
      }
      page.close("td").close("tr");
    }
    page.close("tbody").close("table").close("div").close("section");
  }

  private static String words(String id) {
    String words = id.replace('-', ' ');
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static String style() {
    try (InputStream stream = ReportPage.class.getResourceAsStream("report.css")) {
      if (stream == null) {
        throw new IllegalStateException("report.css does not lie beside " + ReportPage.class);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException trouble) {
      throw new UncheckedIOException("report.css could not be read", trouble);
    }
  }
}
