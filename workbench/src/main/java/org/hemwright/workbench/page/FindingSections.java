package org.hemwright.workbench.page;

import java.util.List;
import java.util.Optional;
import org.hemwright.paper.markup.Markup;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;

/** What was found, one after the other; and what of it is accepted, with the designer's reasons. */
final class FindingSections {
  private final List<Numbered> findings;
  private final List<Finding> problems;
  private final Wording wording;
  private final SourceLines lines;

  FindingSections(
      List<Numbered> findings, List<Finding> problems, Wording wording, SourceLines lines) {
    this.findings = findings;
    this.problems = problems;
    this.wording = wording;
    this.lines = lines;
  }

  void open(Markup page) {
    page.open("section", "id", "findings", "aria-labelledby", "findings-title");
    page.element("h2", "Findings", "id", "findings-title");
    List<Numbered> open =
        findings.stream().filter(each -> each.finding().status() != Status.ACCEPTED).toList();
    if (open.isEmpty()) {
      page.element("p", "Nothing to mend, and nothing that is worth a look.", "class", "well");
    } else {
      page.open("ol", "class", "findings");
      open.forEach(each -> finding(page, each));
      page.close("ol");
    }
    if (!problems.isEmpty()) {
      page.element("h3", "In the files");
      page.open("ul", "class", "findings");
      for (Finding problem : problems) {
        page.open("li", "class", problem.status() == Status.FAIL ? "fail" : "look");
        sentences(page, problem);
        page.close("li");
      }
      page.close("ul");
    }
    page.close("section");
  }

  void accepted(Markup page) {
    List<Numbered> accepted =
        findings.stream().filter(each -> each.finding().status() == Status.ACCEPTED).toList();
    if (accepted.isEmpty()) {
      return;
    }
    page.open("section", "id", "accepted", "aria-labelledby", "accepted-title");
    page.element("h2", "Accepted", "id", "accepted-title");
    page.element("p", "Findings that are judged in the document and kept, with the reason given.");
    page.open("ol", "class", "findings");
    accepted.forEach(each -> finding(page, each));
    page.close("ol").close("section");
  }

  private void finding(Markup page, Numbered each) {
    page.open("li", "id", each.id(), "class", each.kind(), "value", "" + each.number());
    page.open("h3");
    if (each.isPinned()) {
      page.element(
          "a",
          "" + each.number(),
          "href",
          "#" + each.pin(),
          "class",
          "number",
          "title",
          "Show on the piece");
    } else {
      page.element("span", "" + each.number(), "class", "number");
    }
    page.text(" ").element("span", each.kindInWords(), "class", "kind");
    page.text(" ").element("span", each.finding().subject(), "class", "subject");
    page.close("h3");
    sentences(page, each.finding());
    each.finding()
        .reason()
        .ifPresent(
            reason ->
                page.open("p", "class", "reason")
                    .element("strong", "Accepted because ")
                    .text("“" + reason + "”")
                    .close("p"));
    page.open("p", "class", "where");
    page.text("Check ").element("code", each.check());
    page.text(", " + wording.sizes().of(each.finding().sizes()));
    page.close("p");
    page.close("li");
  }

  private void sentences(Markup page, Finding finding) {
    page.open("p").prose(wording.message(finding).strip()).close("p");
    String mend = wording.mend(finding).strip();
    if (!mend.isEmpty() && finding.status() != Status.ACCEPTED) {
      page.open("p", "class", "mend").prose(mend).close("p");
    }
    Optional<Origin> origin = finding.origin();
    if (origin.isPresent()) {
      page.open("p", "class", "line");
      page.text(origin.get().file() + ", line " + origin.get().line());
      lines.at(origin.get()).ifPresent(line -> page.open("br").element("code", line));
      page.close("p");
    }
  }
}
