package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.finding.Wording;
import org.hemwright.workbench.advise.Advice;

/** An answer to a maker, as a reply that the designer can send and as {@code advise --json}. */
public final class AdviceReport {
  private AdviceReport() {}

  /** The reply, a paragraph of sentences each on a line of its own. */
  public static String reply(Advice advice, Details details, Wording wording) {
    StringBuilder reply = new StringBuilder("Hello,\n\n");
    advice.said().forEach(each -> reply.append(wording.message(each)).append('\n'));
    reply.append("\nHappy sewing\n").append(details.by()).append('\n');
    return reply.toString();
  }

  /** The answer with its numbers and the reply. */
  public static String json(Advice advice, Details details, Wording wording) {
    return JsonText.of(
        json -> {
          json.writeStartObject();
          json.writeStringField("pattern", details.title());
          json.writeStringField("version", details.version());
          json.writeStringField("size", advice.size());
          json.writeStringField("by", advice.by());
          json.writeArrayFieldStart("between");
          for (String size : advice.between().orElse(List.of())) {
            json.writeString(size);
          }
          json.writeEndArray();
          json.writeBooleanField("beyond", advice.beyond());
          json.writeArrayFieldStart("measures");
          for (Map.Entry<String, Advice.Measured> each : advice.measures().entrySet()) {
            json.writeStartObject();
            json.writeStringField("name", each.getKey());
            json.writeNumberField("yours_mm", each.getValue().yours());
            number(json, "size_mm", each.getValue().drawn());
            json.writeStringField("nearest", each.getValue().nearest());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeArrayFieldStart("fit");
          for (Advice.Fit fit : advice.fits()) {
            json.writeStartObject();
            json.writeStringField("level", fit.level());
            json.writeNumberField("yours_mm", fit.yours());
            json.writeNumberField("finished_mm", fit.finished());
            json.writeNumberField("ease_mm", fit.finished() - fit.yours());
            json.writeNumberField("stretch_needed", fit.needed());
            json.writeNumberField("stretch_of_cloth", fit.stretch());
            json.writeBooleanField("comfortable", fit.comfortable());
            json.writeEndObject();
          }
          json.writeEndArray();
          json.writeStringField("reply", reply(advice, details, wording));
          json.writeEndObject();
        });
  }

  private static void number(JsonGenerator json, String name, double value) throws IOException {
    if (Double.isNaN(value)) {
      json.writeNullField(name);
    } else {
      json.writeNumberField(name, value);
    }
  }
}
