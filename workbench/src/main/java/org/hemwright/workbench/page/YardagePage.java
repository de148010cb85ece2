package org.hemwright.workbench.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.hemwright.cloth.yardage.LeftOvers;
import org.hemwright.cloth.yardage.Need;
import org.hemwright.cloth.yardage.OwnCloth;
import org.hemwright.cloth.yardage.YardageGroup;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.words.ClothWords;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.workbench.report.YardageNotes;

/**
 * How much cloth to buy, as one page of HTML: a table for each view and cloth, what else is to be
 * known of each width below it, and every size with its exact length and what it leaves.
 */
public final class YardagePage {
  private static final String ROOM = "Which has room for";
  private static final Pattern FRACTION =
      Pattern.compile("(?<![\\d./])((?:\\d+ )?)([1357])/([248])(?![\\d./])");
  private static final String SIGNS = "\u215b\u00bc\u215c\u00bd\u215d\u00be\u215e";

  private final SizeRun run;
  private final OwnCloth own;
  private final ClothWords words;
  private final YardageNotes notes;
  private final Markup page = new Markup();

  private YardagePage(SizeRun run, OwnCloth own, LeftOvers left) {
    this.run = run;
    this.own = own;
    words = new ClothWords(run, false);
    notes = new YardageNotes(run, own, left, words);
  }

  /**
   * The page.
   *
   * @param own a cloth that is there already, or in the shop
   * @param left what is left of the cloth
   * @param findings about the cloth
   * @param proof the word that marks it, if anything does
   */
  public static String html(
      SizeRun run,
      YardageTable table,
      OwnCloth own,
      LeftOvers left,
      List<Finding> findings,
      Wording wording,
      Optional<String> proof) {
    String whole = new YardagePage(run, own, left).whole(table, findings, wording, proof);
    int body = whole.indexOf("<body>");
    return whole.substring(0, body) + fractions(whole.substring(body));
  }

  /** Halves, quarters and eighths as one sign each, which every font has: "1⅞". */
  private static String fractions(String text) {
    return FRACTION
        .matcher(text)
        .replaceAll(
            found -> {
              int eighths = Integer.parseInt(found.group(2)) * 8 / Integer.parseInt(found.group(3));
              return found.group(1).strip() + SIGNS.charAt(eighths - 1);
            });
  }

  private String whole(
      YardageTable table, List<Finding> findings, Wording wording, Optional<String> proof) {
    Details details = run.pattern().details();
    boolean british = details.spelling() == Details.Spelling.BRITISH;
    String title = british ? "Cloth to buy" : "Fabric to buy";
    page.written("<!doctype html>\n").open("html", "lang", british ? "en-GB" : "en-US");
    page.open("head").open("meta", "charset", "utf-8");
    page.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.element("title", details.title() + ": " + title.toLowerCase(Locale.ROOT));
    page.open("link", "rel", "icon", "href", "data:,");
    page.open("style").written(style()).close("style").close("head").open("body");
    page.open("header");
    proof.ifPresent(word -> page.element("p", word, "class", "proof"));
    page.element("p", details.by(), "class", "house");
    page.open("h1").text(details.title() + " ");
    page.element(
        "span", "version " + details.version() + ", " + details.dated(), "class", "version");
    page.close("h1");
    page.element(
        "p",
        title
            + ", up to the next 0.1 m and 1/8 yd, each from the exact length of a laying."
            + " Where sizes stand together, they buy the same.");
    YardageNotes.shrinks(table).ifPresent(said -> page.element("p", said));
    page.close("header").open("main");
    cutFrom(table);
    findings(findings, wording);
    YardageGroup.of(table).forEach((heading, groups) -> section(table, heading, groups));
    page.close("main").open("footer");
    page.element("p", details.by() + ".").close("footer").close("body").close("html");
    return page.whole();
  }

  private void cutFrom(YardageTable table) {
    if (own.length().isEmpty()) {
      return;
    }
    page.open("section");
    page.element("h2", "From a length of " + words.lengthInBoth(own.length().getAsDouble()));
    page.open("ul");
    notes.cutFrom(table).forEach((heading, sizes) -> page.element("li", heading + ": " + sizes));
    page.close("ul").close("section");
  }

  private void findings(List<Finding> findings, Wording wording) {
    if (findings.isEmpty()) {
      return;
    }
    page.open("section").element("h2", "Worth a look").open("ul", "class", "findings");
    for (Finding finding : findings) {
      page.open("li").open("p").prose(wording.message(finding)).close("p");
      String mend = wording.mend(finding);
      if (!mend.isBlank()) {
        page.open("p", "class", "mend").prose(mend).close("p");
      }
      page.close("li");
    }
    page.close("ul").close("section");
  }

  private void section(
      YardageTable table, YardageGroup.Heading heading, List<YardageGroup> groups) {
    page.open("section");
    page.element("h2", words.heading(heading.view(), heading.fabric(), heading.nap()));
    page.open("div", "class", "wide").open("table", "class", "buy");
    page.element("caption", "What to buy");
    page.open("thead").open("tr").element("th", "Size", "scope", "col");
    List<Double> widths = groups.get(0).widths();
    for (double width : widths) {
      page.element("th", words.lengthInBoth(width) + " wide", "scope", "col");
    }
    page.close("tr").close("thead").open("tbody");
    for (YardageGroup group : groups) {
      page.open("tr").element("th", ClothWords.sizes(group.sizes()), "scope", "row");
      for (int i = 0; i < widths.size(); i++) {
        page.open("td").text(words.buy(group.buy(i)));
        OptionalDouble cost =
            group.best().get(i).get(0).map(own::cost).orElse(OptionalDouble.empty());
        if (cost.isPresent()) {
          page.element("span", " for " + ClothWords.money(cost.getAsDouble()), "class", "cost");
        }
        page.close("td");
      }
      page.close("tr");
    }
    page.close("tbody").close("table").close("div");
    for (int i = 0; i < widths.size(); i++) {
      width(table, heading, groups, i);
    }
    page.close("section");
  }

  private void width(
      YardageTable table, YardageGroup.Heading heading, List<YardageGroup> groups, int width) {
    List<String> said = notes.of(groups, width);
    if (said.isEmpty()) {
      return;
    }
    double mm = groups.get(0).widths().get(width);
    page.element("h3", "On " + words.lengthInBoth(mm));
    page.open("ul");
    said.forEach(note -> page.element("li", note));
    page.close("ul");
    List<YardageRow> best =
        table.rows().stream()
            .filter(row -> row.best() && row.width() == mm && row.nap() == heading.nap())
            .filter(row -> row.view().equals(heading.view()))
            .filter(row -> row.fabric().equals(heading.fabric()))
            .toList();
    page.open("details").element("summary", "Each size on " + words.lengthInBoth(mm));
    page.open("div", "class", "wide").open("table", "class", "sizes");
    Map<String, Boolean> columns = new LinkedHashMap<>();
    boolean room = best.stream().anyMatch(row -> !notes.room(row).isEmpty());
    boolean rectangle = best.stream().anyMatch(row -> !notes.rectangle(row).isEmpty());
    columns.put("Size", true);
    columns.put("Fold", true);
    columns.put("Exact length", true);
    columns.put("Cut into pieces", true);
    columns.put("Left over", true);
    columns.put("Largest rectangle left", rectangle);
    columns.put(ROOM, room);
    page.open("thead").open("tr");
    columns.forEach(
        (column, shown) -> {
          if (shown) {
            boolean wordy = column.equals(ROOM);
            page.element("th", column, "scope", "col", "class", wordy ? "room" : "plain");
          }
        });
    page.close("tr").close("thead").open("tbody");
    for (YardageRow row : best) {
      Optional<Need> need = row.need();
      page.open("tr").element("th", row.size().name(), "scope", "row");
      page.element("td", ClothWords.fold(row.fold()));
      page.element("td", need.map(each -> words.lengthInBoth(each.bought())).orElse(""));
      page.element(
          "td", need.map(each -> DecimalText.of(100 * each.density(), 0) + " %").orElse(""));
      page.element("td", need.map(each -> words.area(each.areaLeft())).orElse(""));
      if (rectangle) {
        page.element("td", notes.rectangle(row));
      }
      if (room) {
        page.element("td", String.join("; ", notes.room(row)), "class", "room");
      }
      page.close("tr");
    }
    page.close("tbody").close("table").close("div").close("details");
  }

  private static String style() {
    try (InputStream css = YardagePage.class.getResourceAsStream("yardage.css")) {
      if (css == null) {
        throw new IllegalStateException("yardage.css is not in the program");
      }
      return new String(css.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
