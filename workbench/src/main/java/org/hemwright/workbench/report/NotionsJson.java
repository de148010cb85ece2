package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.notion.Notions;
import org.hemwright.pattern.notion.ThreadNeed;

/**
 * What is bought beside the cloth, for each view: {@code {"view", "thread":[{"machine",
 * "least_mm":{size:n}, "most_mm", "spools", "spool_mm"}], "elastics":[{"name", "width_mm",
 * "cut_mm"}], "cords", "zips":[{"opening", "reach_mm", "length_mm"}], "tapes",
 * "fastenings":[{"kind", "size_mm", "count":{size:n}}], "interfacings", "needles"}}. A zip that no
 * length on sale reaches has no {@code length_mm} in that size.
 */
final class NotionsJson {
  private NotionsJson() {}

  /** Numbers by size, under the names of their fields. */
  private static final class Row {
    private final Map<String, String> words = new LinkedHashMap<>();
    private final Map<String, Map<String, Double>> numbers = new LinkedHashMap<>();

    Row number(String field, String size, double value) {
      numbers.computeIfAbsent(field, each -> new LinkedHashMap<>()).put(size, value);
      return this;
    }

    Row word(String field, String value) {
      words.put(field, value);
      return this;
    }
  }

  static void write(JsonGenerator json, List<Notions> notions) throws IOException {
    Map<String, List<Notions>> views = new LinkedHashMap<>();
    notions.forEach(
        each -> views.computeIfAbsent(each.view(), view -> new ArrayList<>()).add(each));
    json.writeArrayFieldStart("notions");
    for (Map.Entry<String, List<Notions>> view : views.entrySet()) {
      json.writeStartObject();
      json.writeStringField("view", view.getKey());
      writeView(json, view.getValue());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void writeView(JsonGenerator json, List<Notions> sizes) throws IOException {
    Map<String, Row> thread = new LinkedHashMap<>();
    Map<String, Row> elastics = new LinkedHashMap<>();
    Map<String, Row> cords = new LinkedHashMap<>();
    Map<String, Row> zips = new LinkedHashMap<>();
    Map<String, Row> tapes = new LinkedHashMap<>();
    Map<String, Row> fastenings = new LinkedHashMap<>();
    for (Notions each : sizes) {
      String size = each.size();
      for (ThreadNeed need : each.thread()) {
        row(thread, need.machine().word())
            .word("machine", need.machine().word())
            .number("least_mm", size, need.thread().least())
            .number("most_mm", size, need.thread().most())
            .number("spools", size, need.spools())
            .number("spool_mm", size, need.spool());
      }
      for (Notions.ElasticNeed need : each.elastics()) {
        row(elastics, need.name())
            .word("name", need.name())
            .number("width_mm", size, need.width())
            .number("cut_mm", size, need.cut());
      }
      for (Notions.CordNeed need : each.cords()) {
        row(cords, need.name()).word("name", need.name()).number("length_mm", size, need.length());
      }
      for (Notions.ZipNeed need : each.zips()) {
        Row row =
            row(zips, need.opening())
                .word("opening", need.opening())
                .number("reach_mm", size, need.reach());
        need.length().ifPresent(length -> row.number("length_mm", size, length));
      }
      for (int i = 0; i < each.tapes().size(); i++) {
        row(tapes, String.valueOf(i))
            .number("width_mm", size, each.tapes().get(i).width())
            .number("length_mm", size, each.tapes().get(i).length());
      }
      for (int i = 0; i < each.fastenings().size(); i++) {
        Notions.FasteningNeed need = each.fastenings().get(i);
        row(fastenings, String.valueOf(i))
            .word("kind", need.kind().name().toLowerCase(Locale.ROOT))
            .number("size_mm", size, need.size())
            .number("count", size, need.count());
      }
    }
    rows(json, "thread", thread);
    rows(json, "elastics", elastics);
    rows(json, "cords", cords);
    rows(json, "zips", zips);
    rows(json, "tapes", tapes);
    rows(json, "fastenings", fastenings);
    JsonText.strings(
        json,
        "interfacings",
        sizes.stream().flatMap(n -> n.interfacings().stream()).distinct().toList());
    JsonText.strings(
        json,
        "needles",
        sizes.stream()
            .flatMap(each -> each.needles().stream())
            .map(NotionsJson::needle)
            .distinct()
            .toList());
  }

  /** A needle as its packet says: {@code twin stretch 75/11 to 90/14}. */
  static String needle(Needle needle) {
    String sizes =
        needle.from() == needle.to()
            ? Needle.label(needle.from())
            : Needle.label(needle.from()) + " to " + Needle.label(needle.to());
    return (needle.twin() ? "twin " : "") + needle.point().word() + " " + sizes;
  }

  private static Row row(Map<String, Row> rows, String key) {
    return rows.computeIfAbsent(key, each -> new Row());
  }

  private static void rows(JsonGenerator json, String field, Map<String, Row> rows)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (Row row : rows.values()) {
      json.writeStartObject();
      for (Map.Entry<String, String> word : row.words.entrySet()) {
        json.writeStringField(word.getKey(), word.getValue());
      }
      for (Map.Entry<String, Map<String, Double>> number : row.numbers.entrySet()) {
        json.writeObjectFieldStart(number.getKey());
        for (Map.Entry<String, Double> value : number.getValue().entrySet()) {
          JsonText.number(json, value.getKey(), value.getValue());
        }
        json.writeEndObject();
      }
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
