package org.hemwright.workbench.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.hemwright.cloth.rule.Misfit;
import org.hemwright.cloth.yardage.LeftOver;
import org.hemwright.cloth.yardage.LeftOvers;
import org.hemwright.cloth.yardage.Need;
import org.hemwright.cloth.yardage.OwnCloth;
import org.hemwright.cloth.yardage.YardageFindings;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.split.SplitChoice;

/**
 * Every row of a yardage table for a spreadsheet: RFC 4180, with a heading, lines ended by CRLF.
 */
public final class YardageCsv {
  private static final List<String> HEADINGS =
      List.of(
          "view",
          "fabric",
          "nap",
          "size",
          "width (mm)",
          "fold",
          "best",
          "length (mm)",
          "before it shrinks (mm)",
          "density",
          "buy (m)",
          "buy (yd)",
          "does not fit",
          "cut apart",
          "area left (cm\u00b2)",
          "cost",
          "repeat along (mm)",
          "repeat across (mm)",
          "uneven",
          "more for stripes (mm)",
          "left along (mm)",
          "left across (mm)",
          "left takes",
          "what would do",
          "can be cut from the length there is");

  private static final double MM2_PER_CM2 = 100;

  private YardageCsv() {}

  /**
   * The file; costs where a price is said, what is left where that was asked, and what would do
   * where a piece does not fit.
   *
   * @param findings about the cloth, of which those on narrow widths say what would do
   */
  public static String of(
      YardageTable table, OwnCloth own, LeftOvers left, List<Finding> findings, Wording wording) {
    StringBuilder text = new StringBuilder();
    line(text, HEADINGS);
    for (YardageRow row : table.rows()) {
      Optional<Need> need = row.need();
      List<String> cells = new ArrayList<>();
      cells.add(row.view().name());
      cells.add(row.fabric().name());
      cells.add(row.nap() == Fabric.Nap.ONE_WAY ? "one way" : "either way");
      cells.add(row.size().name());
      cells.add(number(row.width(), 2));
      cells.add(row.fold().word());
      cells.add(row.best() ? "yes" : "");
      cells.add(need.map(each -> number(each.length(), 2)).orElse(""));
      cells.add(need.map(each -> number(each.bought(), 2)).orElse(""));
      cells.add(need.map(each -> number(each.density(), 4)).orElse(""));
      cells.add(need.map(each -> number(each.buy().metres(), 1)).orElse(""));
      cells.add(need.map(each -> number(each.buy().yards(), 3)).orElse(""));
      cells.add(String.join("; ", row.misfits().stream().map(misfit -> misfit.piece()).toList()));
      cells.add(variant(row));
      cells.add(need.map(each -> number(each.areaLeft() / MM2_PER_CM2, 0)).orElse(""));
      OptionalDouble cost = own.cost(row);
      cells.add(cost.isPresent() ? number(cost.getAsDouble(), 2) : "");
      Optional<Fabric.Repeat> repeat = row.fabric().repeat();
      cells.add(repeat.map(each -> every(each.along())).orElse(""));
      cells.add(repeat.map(each -> every(each.across())).orElse(""));
      cells.add(repeat.map(each -> String.join(" and ", uneven(each))).orElse(""));
      OptionalDouble stripes = own.extraForStripes(row);
      cells.add(stripes.isPresent() ? number(stripes.getAsDouble(), 0) : "");
      Optional<LeftOver> rest = left.of(row);
      cells.add(rest.map(each -> number(each.along(), 0)).orElse(""));
      cells.add(rest.map(each -> number(each.across(), 0)).orElse(""));
      cells.add(rest.map(YardageCsv::takes).orElse(""));
      cells.add(String.join(" ", mends(row, findings, wording)));
      cells.add(
          own.length().isEmpty() ? "" : row.isCutFrom(own.length().getAsDouble()) ? "yes" : "no");
      line(text, cells);
    }
    return text.toString();
  }

  private static String every(OptionalDouble repeat) {
    return repeat.isPresent() ? number(repeat.getAsDouble(), 2) : "";
  }

  /** Which ways of the cloth its stripes are uneven: along, across, both or none. */
  static List<String> uneven(Fabric.Repeat repeat) {
    List<String> ways = new ArrayList<>();
    if (repeat.unevenAlong()) {
      ways.add("along");
    }
    if (repeat.unevenAcross()) {
      ways.add("across");
    }
    return ways;
  }

  private static List<String> mends(YardageRow row, List<Finding> findings, Wording wording) {
    List<String> narrow = row.misfits().stream().map(Misfit::piece).distinct().toList();
    return findings.stream()
        .filter(finding -> YardageFindings.isOf(finding, row))
        .filter(finding -> narrow.contains(finding.subject()))
        .map(finding -> finding.subject() + ": " + wording.mend(finding))
        .toList();
  }

  private static String takes(LeftOver left) {
    return left.fits().entrySet().stream()
        .map(fits -> fits.getKey() + ": " + String.join(", ", fits.getValue()))
        .collect(Collectors.joining("; "));
  }

  /** Which pieces are cut apart, and how: {@code band.halves}; blank where none is. */
  static String variant(YardageRow row) {
    return String.join(", ", row.variant().stream().map(SplitChoice::text).toList());
  }

  private static String number(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
  }

  private static void line(StringBuilder text, List<String> cells) {
    text.append(String.join(",", cells.stream().map(YardageCsv::quoted).toList())).append("\r\n");
  }

  /** A cell that a spreadsheet would take for a formula is given a quote before it. */
  private static String quoted(String cell) {
    String plain = cell.matches("[=+\\-@\\t].*") ? "'" + cell : cell;
    return plain.matches("[^\",\\r\\n]*") ? plain : '"' + plain.replace("\"", "\"\"") + '"';
  }
}
