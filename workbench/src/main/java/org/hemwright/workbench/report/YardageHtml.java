package org.hemwright.workbench.report;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.cloth.yardage.YardageGroup;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.words.ClothWords;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;

/**
 * How much cloth to buy, as an HTML page of its own: no scripts, nothing from elsewhere, a table
 * for each view and cloth with headings that a screen reader can follow.
 */
public final class YardageHtml {
  private static final String STYLE =
      """
      body { font: 16px/1.4 sans-serif; color: #1c1b19; background: #fff; margin: 2em; }
      table { border-collapse: collapse; margin: 0 0 2em; }
      caption { text-align: left; font-weight: 600; padding: 0 0 .4em; }
      th, td { text-align: right; padding: .25em .9em .25em 0; border-bottom: 1px solid #bbb; }
      th:first-child { text-align: left; }
      td { font-variant-numeric: tabular-nums; }
      .wide { overflow-x: auto; }
      p.proof { font-weight: 700; text-align: right; }
      """;

  private YardageHtml() {}

  /**
   * The page.
   *
   * @param proof the word that marks it, if anything does
   */
  public static String of(SizeRun run, YardageTable table, Optional<String> proof) {
    ClothWords words = new ClothWords(run, false);
    Details details = run.pattern().details();
    boolean british = details.spelling() == Details.Spelling.BRITISH;
    String title = details.title() + (british ? ": cloth to buy" : ": fabric to buy");
    Markup page = new Markup();
    page.written("<!doctype html>\n")
        .open("html", "lang", british ? "en-GB" : "en-US")
        .open("head");
    page.open("meta", "charset", "utf-8");
    page.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.open("link", "rel", "icon", "href", "data:,");
    page.element("title", title).open("style").written(STYLE).close("style").close("head");
    page.open("body");
    proof.ifPresent(word -> page.element("p", word, "class", "proof"));
    page.element("h1", title);
    YardageGroup.of(table).forEach((heading, groups) -> table(page, words, heading, groups));
    return page.close("body").close("html").whole();
  }

  private static void table(
      Markup page, ClothWords words, YardageGroup.Heading heading, List<YardageGroup> groups) {
    page.open("div", "class", "wide").open("table");
    page.element("caption", words.heading(heading.view(), heading.fabric(), heading.nap()));
    page.open("thead").open("tr").element("th", "Size", "scope", "col");
    for (double width : groups.get(0).widths()) {
      page.element("th", words.length(width), "scope", "col");
    }
    page.close("tr").close("thead").open("tbody");
    for (YardageGroup group : groups) {
      page.open("tr").element("th", ClothWords.sizes(group.sizes()), "scope", "row");
      for (int i = 0; i < group.widths().size(); i++) {
        page.element("td", words.buy(group.buy(i)));
      }
      page.close("tr");
    }
    page.close("tbody").close("table").close("div");
    for (int i = 0; i < groups.get(0).widths().size(); i++) {
      Map<String, List<String>> sizes = words.variants(groups, i);
      if (!sizes.isEmpty()) {
        double width = groups.get(0).widths().get(i);
        page.element("p", words.length(width) + ": " + words.cutApart(sizes));
      }
    }
  }
}
