package org.hemwright.workbench.page;

import java.util.List;
import org.hemwright.paper.markup.Markup;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.sample.SampleAnswer;
import org.hemwright.pattern.sample.SampleEntry;
import org.hemwright.workbench.report.SampleWords;

/** What sewn samples showed, and whether the document has changed there since. */
final class SampleSection {
  private final List<SampleAnswer> answers;
  private final LengthFormat lengths;

  SampleSection(List<SampleAnswer> answers, LengthFormat lengths) {
    this.answers = answers;
    this.lengths = lengths;
  }

  void section(Markup page) {
    if (answers.isEmpty()) {
      return;
    }
    page.open("section", "id", "samples", "aria-labelledby", "samples-title");
    page.element("h2", "Samples", "id", "samples-title");
    page.open("div", "class", "wide").open("table", "class", "words");
    page.element("caption", "What was pinned out and let out, and what has changed there since");
    page.open("thead").open("tr");
    for (String heading : List.of("fitting", "size", "fabric", "where", "noted", "since")) {
      page.element("th", heading, "scope", "col");
    }
    page.close("tr").close("thead").open("tbody");
    answers.forEach(answer -> row(page, answer));
    page.close("tbody").close("table").close("div").close("section");
  }

  private void row(Markup page, SampleAnswer answer) {
    SampleEntry entry = answer.entry();
    page.open("tr").element("th", entry.date().toString(), "scope", "row");
    page.element("td", entry.size());
    page.element("td", entry.fabric());
    page.open("td").element("code", entry.where()).close("td");
    String note = entry.note().isBlank() ? "" : ". " + entry.note();
    page.element("td", SampleWords.asked(entry, lengths) + note);
    page.element("td", SampleWords.since(answer, lengths));
    page.close("tr");
  }
}
