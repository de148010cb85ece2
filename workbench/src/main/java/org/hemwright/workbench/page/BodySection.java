package org.hemwright.workbench.page;

import java.util.List;
import org.hemwright.checks.BodyTable;
import org.hemwright.paper.markup.Markup;
import org.hemwright.workbench.report.BodyColumns;

/**
 * How the garment goes round the body: each thing in the base size, and every size to open beneath.
 */
final class BodySection {
  private final BodyTable table;
  private final BodyColumns columns;
  private final String base;

  BodySection(Report report) {
    this.table = report.body();
    this.columns = BodyColumns.of(table, report.run().pattern().details().units());
    String drafted = report.run().pattern().base().name();
    this.base = table.sizes().contains(drafted) ? drafted : table.sizes().get(0);
  }

  /** Whether there is anything to show. */
  boolean any() {
    return !columns.tables().isEmpty();
  }

  void section(Markup page, boolean inches) {
    if (!any()) {
      return;
    }
    page.open("section", "id", "body", "aria-labelledby", "body-title");
    page.element("h2", BodyColumns.TITLE, "id", "body-title");
    page.element(
        "p",
        "Lengths in %s. %s"
            .formatted(inches ? "inches" : "centimetres", BodyColumns.key(table.comfort())));
    page.open("div", "class", "bodies");
    columns.tables().forEach(each -> one(page, each));
    page.close("div").close("section");
  }

  private void one(Markup page, BodyColumns.Titled titled) {
    page.open("div", "class", "body");
    page.element("h3", titled.title());
    int at = table.sizes().indexOf(base);
    page.open("dl");
    for (BodyColumns.Column column : titled.columns()) {
      String cell = column.cells().get(at);
      if (!cell.isBlank()) {
        page.open("div").element("dt", column.heading()).element("dd", cell).close("div");
      }
    }
    page.close("dl");
    page.element("p", "Size " + base, "class", "where");
    sizes(page, titled);
    page.close("div");
  }

  private void sizes(Markup page, BodyColumns.Titled titled) {
    page.open("details").element("summary", "Every size");
    page.open("div", "class", "wide").open("table");
    page.element("caption", titled.title());
    page.open("thead").open("tr").element("th", "size", "scope", "col");
    titled.columns().forEach(column -> page.element("th", column.heading(), "scope", "col"));
    page.close("tr").close("thead").open("tbody");
    List<String> sizes = table.sizes();
    for (int i = 0; i < sizes.size(); i++) {
      int row = i;
      if (titled.columns().stream().anyMatch(column -> !column.cells().get(row).isBlank())) {
        page.open("tr").element("th", sizes.get(i), "scope", "row");
        titled.columns().forEach(column -> page.element("td", column.cells().get(row)));
        page.close("tr");
      }
    }
    page.close("tbody").close("table").close("div").close("details");
  }
}
