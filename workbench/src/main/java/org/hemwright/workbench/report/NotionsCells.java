package org.hemwright.workbench.report;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.hemwright.pattern.notion.Notions;
import org.hemwright.pattern.notion.ThreadNeed;

/** What is bought beside the cloth in one size, as cells under their headings. */
final class NotionsCells {
  private static final double METRE = 1000;
  private static final double YARD = 914.4;

  private NotionsCells() {}

  static Map<String, String> of(Notions notions, boolean inches) {
    Map<String, String> cells = new LinkedHashMap<>();
    String unit = inches ? "yd" : "m";
    for (ThreadNeed need : notions.thread()) {
      double scale = inches ? YARD : METRE;
      String machine = need.machine() == ThreadNeed.Machine.SEWING ? "thread" : "overlock thread";
      cells.put(
          machine + " " + unit,
          number(Math.floor(need.thread().least() / scale), 0)
              + "-"
              + number(Math.ceil(need.thread().most() / scale), 0));
      cells.put(
          need.machine() == ThreadNeed.Machine.SEWING
              ? "spools of " + number(need.spool() / METRE, 0) + " m"
              : "cones of " + number(need.spool() / METRE, 0) + " m",
          String.valueOf(need.spools()));
    }
    for (Notions.ElasticNeed need : notions.elastics()) {
      cells.put(need.name() + " cut", length(need.cut(), inches));
    }
    for (Notions.CordNeed need : notions.cords()) {
      cells.put(need.name(), length(need.length(), inches));
    }
    for (Notions.ZipNeed need : notions.zips()) {
      cells.put(
          "zip for " + need.opening(),
          need.length().isPresent() ? length(need.length().getAsDouble(), inches) : "none");
    }
    for (Notions.TapeNeed need : notions.tapes()) {
      cells.merge("tape", length(need.length(), inches), (one, two) -> one + ", " + two);
    }
    for (Notions.FasteningNeed need : notions.fastenings()) {
      String kind = need.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
      cells.put(kind + " " + length(need.size(), inches), String.valueOf(need.count()));
    }
    return cells;
  }

  private static String length(double mm, boolean inches) {
    return inches ? number(mm / 25.4, 2) : number(mm / 10, 1);
  }

  private static String number(double value, int places) {
    return String.format(Locale.ROOT, "%." + places + "f", value);
  }
}
