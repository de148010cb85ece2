package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.pattern.body.Coverage;
import org.hemwright.pattern.finding.SizeWords;

/**
 * Whom a size chart serves, as JSON: {@code "coverage":[{"population", "people", "share",
 * "dimensions":[{"column", "share"}], "left_out", "sizes":[{"size", "share"}], "message",
 * "basis"}]}; shares from 0 to 1, null where there is no data, and then {@code "no_data"} says why.
 */
final class CoverageJson {
  private CoverageJson() {}

  static void write(JsonGenerator json, SizeRun run, SizeWords sizes) throws IOException {
    json.writeArrayFieldStart("coverage");
    for (Coverage.Answer answer :
        Coverage.of(run.pattern().chart(), run.pattern().details().wearers())) {
      json.writeStartObject();
      if (answer.coverage().isPresent()) {
        write(json, answer.coverage().get());
      } else {
        json.writeNullField("share");
        json.writeStringField(
            "no_data",
            answer.because().orElseThrow().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      }
      json.writeStringField("message", CoverageWords.of(answer, sizes));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void write(JsonGenerator json, Coverage coverage) throws IOException {
    json.writeStringField(
        "population", coverage.survey().sex() == BodySurvey.Sex.WOMEN ? "women" : "men");
    json.writeNumberField("people", coverage.survey().people());
    JsonText.number(json, "share", coverage.share());
    json.writeArrayFieldStart("dimensions");
    for (Coverage.Dimension dimension : coverage.dimensions()) {
      json.writeStartObject();
      json.writeStringField("column", dimension.column());
      JsonText.number(json, "share", dimension.share());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("left_out");
    for (String column : coverage.leftOut()) {
      json.writeString(column);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("sizes");
    for (Coverage.OfSize size : coverage.sizes()) {
      json.writeStartObject();
      json.writeStringField("size", size.name());
      if (size.held()) {
        JsonText.number(json, "share", size.share());
      } else {
        json.writeNullField("share");
      }
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeStringField("basis", CoverageWords.basis(coverage));
  }
}
