package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.sample.SampleAnswer;
import org.hemwright.pattern.sample.SampleEntry;

/**
 * The sample log as JSON: {@code "samples":[{"line", "date", "size", "fabric", "where", "asked_mm",
 * "drafted_mm", "now_mm", "changed_mm", "since", "note", "message"}]}; {@code asked_mm} is less
 * than 0 where something was pinned out, null stands for what the log does not say, and {@code
 * since} is one of {@code not-known, as-it-was, as-asked, less, more, other-way, changed}.
 */
final class SampleJson {
  private SampleJson() {}

  static void write(JsonGenerator json, List<SampleAnswer> answers, LengthFormat lengths)
      throws IOException {
    json.writeArrayFieldStart("samples");
    for (SampleAnswer answer : answers) {
      SampleEntry entry = answer.entry();
      json.writeStartObject();
      json.writeNumberField("line", entry.origin().line());
      json.writeStringField("date", entry.date().toString());
      json.writeStringField("size", entry.size());
      json.writeStringField("fabric", entry.fabric());
      json.writeStringField("where", entry.where());
      JsonText.number(json, "asked_mm", entry.asked());
      JsonText.number(json, "drafted_mm", entry.drafted());
      JsonText.number(json, "now_mm", answer.now());
      JsonText.number(json, "changed_mm", answer.changed());
      json.writeStringField(
          "since", answer.standing().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      json.writeStringField("note", entry.note());
      json.writeStringField(
          "message", SampleWords.noted(entry, lengths) + ". " + SampleWords.since(answer, lengths));
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
