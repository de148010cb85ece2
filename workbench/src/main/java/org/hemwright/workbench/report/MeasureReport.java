package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.hemwright.checks.BodyTable;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.notion.Notions;

/**
 * What a pattern measures, as {@code measure --json} gives it: {@code {"sizes", "pieces":[{"name",
 * "area_mm2":{size:n}, "edges":[{"name", "length_mm":{size:n}}]}], "seams", "girths", "elastics",
 * "body", "notions"}}: how it goes round the body, and what is bought beside the cloth.
 */
public final class MeasureReport {
  private MeasureReport() {}

  /** The report. */
  public static String json(Measurements measured, BodyTable body, List<Notions> notions) {
    return JsonText.of(
        json -> {
          json.writeStartObject();
          JsonText.strings(json, "sizes", measured.sizes());
          writePieces(json, measured.pieces());
          writeSeams(json, measured.seams());
          writeGirths(json, measured.girths());
          writeElastics(json, measured.elastics());
          BodyJson.write(json, body);
          NotionsJson.write(json, notions);
          json.writeEndObject();
        });
  }

  private static void writePieces(JsonGenerator json, List<Measurements.OfPiece> pieces)
      throws IOException {
    json.writeArrayFieldStart("pieces");
    for (Measurements.OfPiece piece : pieces) {
      json.writeStartObject();
      json.writeStringField("name", piece.name());
      bySize(json, "area_mm2", piece.area());
      json.writeArrayFieldStart("edges");
      for (Measurements.OfEdge edge : piece.edges()) {
        json.writeStartObject();
        json.writeStringField("name", edge.name());
        bySize(json, "length_mm", edge.length());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void writeSeams(JsonGenerator json, List<Measurements.OfSeam> seams)
      throws IOException {
    json.writeArrayFieldStart("seams");
    for (Measurements.OfSeam seam : seams) {
      json.writeStartObject();
      json.writeStringField("name", seam.name());
      json.writeNumberField("joins", seam.joins());
      json.writeArrayFieldStart("layers");
      for (Measurements.OfLayer layer : seam.layers()) {
        json.writeStartObject();
        json.writeStringField("name", layer.name());
        bySize(json, "length_mm", layer.length());
        bySize(json, "difference_mm", layer.difference());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void writeGirths(JsonGenerator json, List<Measurements.OfLevel> girths)
      throws IOException {
    json.writeArrayFieldStart("girths");
    for (Measurements.OfLevel level : girths) {
      json.writeStartObject();
      json.writeStringField("view", level.view());
      json.writeStringField("level", level.level());
      JsonText.strings(json, "pieces", level.pieces());
      bySize(json, "girth_mm", level.girth());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void writeElastics(JsonGenerator json, List<Measurements.OfElastic> elastics)
      throws IOException {
    json.writeArrayFieldStart("elastics");
    for (Measurements.OfElastic elastic : elastics) {
      json.writeStartObject();
      json.writeStringField("name", elastic.name());
      json.writeStringField("piece", elastic.piece());
      bySize(json, "width_mm", elastic.width());
      bySize(json, "finished_mm", elastic.finished());
      bySize(json, "cut_mm", elastic.cut());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void bySize(JsonGenerator json, String field, Map<String, Double> values)
      throws IOException {
    json.writeObjectFieldStart(field);
    for (Map.Entry<String, Double> value : values.entrySet()) {
      JsonText.number(json, value.getKey(), value.getValue());
    }
    json.writeEndObject();
  }
}
