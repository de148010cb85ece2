package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.hemwright.booklet.post.Feedback;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.pattern.quantity.DecimalText;

/** What testers wrote, beside what the pattern says: for a terminal, and as JSON. */
public final class FeedbackReport {
  private static final double CM = 10;

  private FeedbackReport() {}

  /** For a terminal. */
  public static String text(Feedback feedback) {
    StringBuilder text = new StringBuilder();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("tester", "size", "finished", "measured", "predicted", "difference"));
    for (Feedback.Measured each : feedback.measured()) {
      rows.add(
          List.of(
              each.tester(),
              each.size(),
              each.level().replace('_', ' '),
              cm(each.measured()),
              cm(each.predicted()),
              cm(each.difference())));
    }
    part(text, "Finished girths", rows);
    rows = new ArrayList<>();
    rows.add(List.of("tester", "size", "cloth", "width", "used", "to buy"));
    for (Feedback.Used each : feedback.cloth()) {
      rows.add(
          List.of(
              each.tester(),
              each.size(),
              each.fabric(),
              cm(each.width()),
              cm(each.used()),
              each.predicted().isPresent() ? cm(each.predicted().getAsDouble()) : "not known"));
    }
    part(text, "Cloth", rows);
    rows = new ArrayList<>();
    rows.add(List.of("step", "tester", "size", "what they wrote"));
    for (Map.Entry<String, List<Feedback.Problem>> step : feedback.problems().entrySet()) {
      for (Feedback.Problem problem : step.getValue()) {
        rows.add(List.of(step.getKey(), problem.tester(), problem.size(), problem.words()));
      }
    }
    part(text, "Steps", rows);
    return text.toString();
  }

  private static void part(StringBuilder text, String title, List<List<String>> rows) {
    if (rows.size() < 2) {
      text.append(title).append(": nothing was written\n\n");
      return;
    }
    int[] wide = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < wide.length; i++) {
        wide[i] = Math.max(wide[i], row.get(i).length());
      }
    }
    text.append(title).append('\n');
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < wide.length; i++) {
        line.append("  ").append(row.get(i)).append(" ".repeat(wide[i] - row.get(i).length()));
      }
      text.append(line.toString().stripTrailing()).append('\n');
    }
    text.append('\n');
  }

  private static String cm(double mm) {
    return DecimalText.of(mm / CM, 1) + " cm";
  }

  /** As JSON: lengths in millimetres. */
  public static String json(Feedback feedback, Wording wording) {
    return JsonText.of(json -> write(json, feedback, wording));
  }

  private static void write(JsonGenerator json, Feedback feedback, Wording wording)
      throws IOException {
    json.writeStartObject();
    json.writeArrayFieldStart("measured");
    for (Feedback.Measured each : feedback.measured()) {
      json.writeStartObject();
      json.writeStringField("tester", each.tester());
      json.writeStringField("size", each.size());
      json.writeStringField("level", each.level());
      JsonText.number(json, "measured_mm", each.measured());
      JsonText.number(json, "predicted_mm", each.predicted());
      JsonText.number(json, "difference_mm", each.difference());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cloth");
    for (Feedback.Used each : feedback.cloth()) {
      json.writeStartObject();
      json.writeStringField("tester", each.tester());
      json.writeStringField("size", each.size());
      json.writeStringField("view", each.view());
      json.writeStringField("fabric", each.fabric());
      JsonText.number(json, "width_mm", each.width());
      JsonText.number(json, "used_mm", each.used());
      if (each.predicted().isPresent()) {
        JsonText.number(json, "predicted_mm", each.predicted().getAsDouble());
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeObjectFieldStart("steps");
    for (Map.Entry<String, List<Feedback.Problem>> step : feedback.problems().entrySet()) {
      json.writeArrayFieldStart(step.getKey());
      for (Feedback.Problem problem : step.getValue()) {
        json.writeStartObject();
        json.writeStringField("tester", problem.tester());
        json.writeStringField("size", problem.size());
        json.writeStringField("words", problem.words());
        json.writeEndObject();
      }
      json.writeEndArray();
    }
    json.writeEndObject();
    json.writeArrayFieldStart("problems");
    for (var finding : feedback.findings()) {
      json.writeString(wording.line(finding));
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
