package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.hemwright.checks.BodyTable;

/**
 * How the garment goes round the body, as JSON: {@code "body":{"comfort", "girths":[...],
 * "openings":[...], "elastics":[...], "rises":[...]}}. Values stand by size, lengths in millimetres
 * ({@code _mm}), stretch and its use as shares; a size of which the chart or the cloth says nothing
 * is left out.
 */
final class BodyJson {
  private BodyJson() {}

  static void write(JsonGenerator json, BodyTable table) throws IOException {
    json.writeObjectFieldStart("body");
    JsonText.number(json, "comfort", table.comfort());
    json.writeArrayFieldStart("girths");
    for (BodyTable.Line<BodyTable.Girth> line : table.girths()) {
      json.writeStartObject();
      json.writeStringField("view", line.view());
      json.writeStringField("level", line.name());
      fit(json, line, BodyTable.Girth::fit);
      json.writeEndObject();
    }
    json.writeEndArray();
    openings(json, table);
    elastics(json, table);
    json.writeArrayFieldStart("rises");
    for (BodyTable.Line<BodyTable.Rise> line : table.rises()) {
      json.writeStartObject();
      json.writeStringField("piece", line.name());
      fit(json, line, BodyTable.Rise::fit);
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static <T> void fit(
      JsonGenerator json, BodyTable.Line<T> line, Function<T, BodyTable.Fit> fit)
      throws IOException {
    json.writeObjectFieldStart("cloth_lies");
    for (Map.Entry<String, T> size : line.bySize().entrySet()) {
      json.writeStringField(
          size.getKey(), fit.apply(size.getValue()).way().name().toLowerCase(Locale.ROOT));
    }
    json.writeEndObject();
    bySize(json, "body_mm", line, value -> fit.apply(value).body());
    bySize(json, "finished_mm", line, value -> OptionalDouble.of(fit.apply(value).finished()));
    bySize(json, "ease_mm", line, value -> fit.apply(value).ease());
    bySize(json, "stretch", line, value -> OptionalDouble.of(fit.apply(value).stretch()));
    bySize(json, "stretch_needed", line, value -> fit.apply(value).needed());
    bySize(json, "stretch_used", line, value -> fit.apply(value).used());
  }

  private static void openings(JsonGenerator json, BodyTable table) throws IOException {
    json.writeArrayFieldStart("openings");
    for (BodyTable.Line<BodyTable.Opening> line : table.openings()) {
      json.writeStartObject();
      json.writeStringField("view", line.view());
      json.writeStringField("opening", line.name());
      json.writeStringField("over", line.bySize().values().iterator().next().over());
      bySize(json, "body_mm", line, BodyTable.Opening::body);
      bySize(json, "length_mm", line, opening -> OptionalDouble.of(opening.length()));
      bySize(json, "slit_mm", line, opening -> OptionalDouble.of(opening.slit()));
      texts(json, "stiffest", line, BodyTable.Opening::stiffest);
      texts(json, "stiffest_kind", line, BodyTable.Opening::kind);
      bySize(json, "stretch", line, opening -> OptionalDouble.of(opening.stretch()));
      bySize(json, "reach_mm", line, opening -> OptionalDouble.of(opening.reach()));
      bySize(json, "spare_mm", line, BodyTable.Opening::spare);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void elastics(JsonGenerator json, BodyTable table) throws IOException {
    json.writeArrayFieldStart("elastics");
    for (BodyTable.Line<BodyTable.Held> line : table.elastics()) {
      BodyTable.Held any = line.bySize().values().iterator().next();
      json.writeStartObject();
      json.writeStringField("name", line.name());
      json.writeStringField("round", any.round());
      json.writeStringField("over", any.over());
      bySize(json, "width_mm", line, held -> OptionalDouble.of(held.width()));
      bySize(json, "casing_mm", line, BodyTable.Held::casing);
      bySize(json, "cut_mm", line, held -> OptionalDouble.of(held.cut()));
      bySize(json, "finished_mm", line, held -> OptionalDouble.of(held.finished()));
      bySize(json, "stretched_mm", line, held -> OptionalDouble.of(held.stretched()));
      bySize(json, "holds_mm", line, BodyTable.Held::held);
      bySize(json, "passes_mm", line, BodyTable.Held::passed);
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static <T> void bySize(
      JsonGenerator json, String field, BodyTable.Line<T> line, Function<T, OptionalDouble> value)
      throws IOException {
    json.writeObjectFieldStart(field);
    for (Map.Entry<String, T> size : line.bySize().entrySet()) {
      OptionalDouble own = value.apply(size.getValue());
      if (own.isPresent()) {
        JsonText.number(json, size.getKey(), own.getAsDouble());
      }
    }
    json.writeEndObject();
  }

  private static <T> void texts(
      JsonGenerator json, String field, BodyTable.Line<T> line, Function<T, String> value)
      throws IOException {
    json.writeObjectFieldStart(field);
    for (Map.Entry<String, T> size : line.bySize().entrySet()) {
      json.writeStringField(size.getKey(), value.apply(size.getValue()));
    }
    json.writeEndObject();
  }
}
