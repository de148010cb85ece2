package org.hemwright.workbench.report;

import java.util.List;
import java.util.Map;
import org.hemwright.cloth.yardage.YardageGroup;
import org.hemwright.cloth.yardage.YardageTable;
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
      """;

  private YardageHtml() {}

  /** The page. */
  public static String of(SizeRun run, YardageTable table) {
    ClothWords words = new ClothWords(run, false);
    Details details = run.pattern().details();
    boolean british = details.spelling() == Details.Spelling.BRITISH;
    String title = details.title() + (british ? ": cloth to buy" : ": fabric to buy");
    StringBuilder page = new StringBuilder();
    page.append("<!doctype html>\n<html lang=\"")
        .append(british ? "en-GB" : "en-US")
        .append("\">\n<head>\n<meta charset=\"utf-8\">\n<title>")
        .append(escaped(title))
        .append("</title>\n<style>\n")
        .append(STYLE)
        .append("</style>\n</head>\n<body>\n<h1>")
        .append(escaped(title))
        .append("</h1>\n");
    YardageGroup.of(table).forEach((heading, groups) -> table(page, words, heading, groups));
    return page.append("</body>\n</html>\n").toString();
  }

  private static void table(
      StringBuilder page,
      ClothWords words,
      YardageGroup.Heading heading,
      List<YardageGroup> groups) {
    page.append("<table>\n<caption>")
        .append(escaped(words.heading(heading.view(), heading.fabric(), heading.nap())))
        .append("</caption>\n<thead><tr><th scope=\"col\">Size</th>");
    for (double width : groups.get(0).widths()) {
      page.append("<th scope=\"col\">").append(escaped(words.length(width))).append("</th>");
    }
    page.append("</tr></thead>\n<tbody>\n");
    for (YardageGroup group : groups) {
      page.append("<tr><th scope=\"row\">")
          .append(escaped(ClothWords.sizes(group.sizes())))
          .append("</th>");
      for (int i = 0; i < group.widths().size(); i++) {
        page.append("<td>").append(escaped(words.buy(group.buy(i)))).append("</td>");
      }
      page.append("</tr>\n");
    }
    page.append("</tbody>\n</table>\n");
    for (int i = 0; i < groups.get(0).widths().size(); i++) {
      Map<String, List<String>> sizes = words.variants(groups, i);
      if (!sizes.isEmpty()) {
        page.append("<p>")
            .append(
                escaped(words.length(groups.get(0).widths().get(i)) + ": " + words.cutApart(sizes)))
            .append("</p>\n");
      }
    }
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
