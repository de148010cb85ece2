package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Wording;

/**
 * A finding as JSON: {@code id, status, subject, sizes, found, expected, unit, message, place,
 * mend}.
 */
final class FindingJson {
  private final Wording wording;

  FindingJson(Wording wording) {
    this.wording = wording;
  }

  void write(JsonGenerator json, String field, List<Finding> findings) throws IOException {
    json.writeArrayFieldStart(field);
    for (Finding finding : findings) {
      write(json, finding.code(), finding);
    }
    json.writeEndArray();
  }

  void write(JsonGenerator json, String id, Finding finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", id);
    json.writeStringField("status", finding.status().name().toLowerCase(Locale.ROOT));
    json.writeStringField("subject", finding.subject());
    json.writeArrayFieldStart("sizes");
    for (String size : finding.sizes()) {
      json.writeString(size);
    }
    json.writeEndArray();
    JsonText.number(json, "found", finding.found());
    JsonText.number(json, "expected", finding.expected());
    json.writeStringField("unit", finding.unit());
    json.writeStringField("message", wording.message(finding));
    writePlace(json, finding);
    json.writeStringField("mend", wording.mend(finding));
    if (finding.reason().isPresent()) {
      json.writeStringField("because", finding.reason().get());
    }
    json.writeEndObject();
  }

  private static void writePlace(JsonGenerator json, Finding finding) throws IOException {
    if (finding.places().isEmpty()) {
      json.writeNullField("place");
      return;
    }
    Place place = finding.places().get(0);
    Optional<Origin> origin = place.origin();
    json.writeObjectFieldStart("place");
    if (origin.isPresent()) {
      json.writeStringField("file", origin.get().file());
      json.writeNumberField("line", origin.get().line());
      json.writeNumberField("column", origin.get().column());
    }
    if (place.piece().isPresent()) {
      json.writeStringField("piece", place.piece().get());
    }
    if (place.point().isPresent()) {
      JsonText.number(json, "x_mm", place.point().get().x());
      JsonText.number(json, "y_mm", place.point().get().y());
    }
    json.writeEndObject();
  }
}
