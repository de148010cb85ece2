package org.hemwright.workbench.report;

import java.util.List;
import org.hemwright.workbench.chart.BroughtChart;

/** What a chart's headings are taken for, as a table to look over or for a program. */
public final class ChartReport {
  private ChartReport() {}

  /** For a person, what is missing and what to do next at its end. */
  public static String text(BroughtChart chart) {
    StringBuilder text = new StringBuilder();
    text.append("Sizes: ").append(String.join(", ", chart.sizes())).append("\n\n");
    int wide = 8;
    for (BroughtChart.Column column : chart.columns()) {
      wide = Math.max(wide, column.heading().length());
    }
    String row = "%-" + wide + "s  %-18s %-6s %s%n";
    text.append(row.formatted("heading", "taken for", "unit", "ISO 8559").replace("\r", ""));
    for (BroughtChart.Column column : chart.columns()) {
      String name = column.isKept() ? column.name() : "left out";
      String standard =
          column.standard().orElse(column.isKept() ? "no standard name; your own" : "");
      text.append(
          row.formatted(
                  column.heading(),
                  name + (column.isKept() && column.proposed() ? " ?" : ""),
                  column.unit().orElse("—"),
                  standard)
              .replace("\r", ""));
    }
    for (BroughtChart.Estimate estimate : chart.estimates()) {
      String from = String.join(", ", estimate.from());
      text.append("\n").append(estimate.name()).append(" is missing; ");
      if (estimate.spread().isPresent()) {
        double cm = estimate.spread().getAsDouble() / 10;
        text.append("the survey lets one expect it from ").append(from);
        text.append(String.format(java.util.Locale.ROOT, ", give or take %.1f cm.", cm));
      } else {
        text.append("no survey here has it; our own size run for ").append(estimate.run());
        text.append(" lets one expect it from ").append(from).append(", by how much is not known.");
      }
    }
    list(text, "Missing, with no figures to estimate it from", chart.missing());
    list(text, "Not read as numbers", chart.unread());
    list(text, "Of these the middle is taken", chart.ranges());
    list(text, "Left out", chart.leftOut());
    list(text, "These do not say their unit; give it with --unit", chart.withoutUnit());
    list(text, "Two columns would get this name; tell them apart with --match", chart.twice());
    return text.append('\n').toString().replaceAll("\n+$", "\n");
  }

  private static void list(StringBuilder text, String title, List<String> items) {
    if (!items.isEmpty()) {
      text.append("\n").append(title).append(": ").append(String.join("; ", items)).append(".");
    }
  }

  /** For a program. */
  public static String json(BroughtChart chart) {
    return JsonText.of(
        json -> {
          json.writeStartObject();
          JsonText.strings(json, "sizes", chart.sizes());
          json.writeArrayFieldStart("columns");
          for (BroughtChart.Column column : chart.columns()) {
            json.writeStartObject();
            json.writeStringField("heading", column.heading());
            json.writeStringField("name", column.name());
            json.writeStringField("standard", column.standard().orElse(""));
            json.writeBooleanField("proposed", column.proposed());
            json.writeStringField("unit", column.unit().orElse(""));
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeArrayFieldStart("estimates");
          for (BroughtChart.Estimate estimate : chart.estimates()) {
            json.writeStartObject();
            json.writeStringField("name", estimate.name());
            if (estimate.spread().isPresent()) {
              JsonText.number(json, "spread_mm", estimate.spread().getAsDouble());
            } else {
              json.writeStringField("size_run", estimate.run());
            }
            json.writeEndObject();
          }
          json.writeEndArray();
          JsonText.strings(json, "missing", chart.missing());
          JsonText.strings(json, "without_unit", chart.withoutUnit());
          JsonText.strings(json, "left_out", chart.leftOut());
          JsonText.strings(json, "unread", chart.unread());
          JsonText.strings(json, "ranges", chart.ranges());
          json.writeEndObject();
        });
  }
}
