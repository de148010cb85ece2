package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hemwright.geometry.Point;
import org.hemwright.paper.reprint.Reprint;
import org.hemwright.paper.tile.PageName;
import org.hemwright.pattern.compare.Change;
import org.hemwright.pattern.compare.ChangeWords;
import org.hemwright.pattern.compare.Laying;
import org.hemwright.pattern.compare.PieceMatch;
import org.hemwright.workbench.compare.Compared;

/**
 * What changed between two versions, as {@code compare --json} gives it: {@code {"changes":
 * [{"what", "subject", "piece", "sizes", "by_size":{size:{"was_mm", "is_mm", "apart_mm", "x_mm",
 * "y_mm"}}, "note", "message"}], "pieces":[{"name", "was_called", "laid_by", "edge"}],
 * "print_again":[{"file", "paper", "of", "pages":[{"name", "number", "kind", "group", "sizes"}],
 * "words_only":[…], "gone":[…]}]}}. Lengths are millimetres; a note is told and changes nothing for
 * the maker.
 */
public final class CompareReport {
  private CompareReport() {}

  /** The report. */
  public static String json(Compared compared, ChangeWords words) {
    return JsonText.of(
        json -> {
          json.writeStartObject();
          json.writeStringField("old_version", compared.old().pattern().details().version());
          json.writeStringField("new_version", compared.now().pattern().details().version());
          json.writeBooleanField("same", compared.comparison().nothingChanged());
          json.writeArrayFieldStart("changes");
          for (Change change : compared.comparison().changes()) {
            write(json, change, words);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("pieces");
          for (PieceMatch match : compared.comparison().pieces()) {
            write(json, match);
          }
          json.writeEndArray();
          json.writeArrayFieldStart("print_again");
          for (Reprint file : compared.reprints()) {
            write(json, file);
          }
          json.writeEndArray();
          json.writeEndObject();
        });
  }

  private static void write(JsonGenerator json, Change change, ChangeWords words)
      throws IOException {
    json.writeStartObject();
    json.writeStringField("what", change.changed().code());
    json.writeStringField("subject", change.subject());
    json.writeFieldName("piece");
    if (change.piece().isPresent()) {
      json.writeString(change.piece().get());
    } else {
      json.writeNull();
    }
    JsonText.strings(json, "sizes", change.sizes());
    json.writeObjectFieldStart("by_size");
    for (Map.Entry<String, Change.Values> each : change.values().entrySet()) {
      Change.Values values = each.getValue();
      json.writeObjectFieldStart(each.getKey());
      JsonText.number(json, "was_mm", values.was());
      JsonText.number(json, "is_mm", values.is());
      JsonText.number(json, "apart_mm", values.apart());
      if (values.at().isPresent()) {
        Point at = values.at().get();
        JsonText.number(json, "x_mm", at.x());
        JsonText.number(json, "y_mm", at.y());
      }
      json.writeEndObject();
    }
    json.writeEndObject();
    json.writeBooleanField("note", change.changed().isNote());
    json.writeStringField("message", String.join(" ", words.of(change)));
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, PieceMatch match) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", match.name());
    json.writeStringField("was_called", match.oldName());
    json.writeStringField("laid_by", match.laying().kind().name().toLowerCase(Locale.ROOT));
    if (match.laying().kind() == Laying.Kind.EDGE) {
      json.writeStringField("edge", match.laying().edge());
    }
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, Reprint file) throws IOException {
    json.writeStartObject();
    json.writeStringField("file", file.file());
    json.writeStringField("paper", file.paper());
    json.writeNumberField("of", file.of());
    pages(json, "pages", file.pages());
    pages(json, "words_only", file.wordsOnly());
    json.writeArrayFieldStart("gone");
    for (Reprint.Gone gone : file.gone()) {
      json.writeStartObject();
      page(json, gone.name(), gone.number());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void pages(JsonGenerator json, String field, List<Reprint.Page> pages)
      throws IOException {
    json.writeArrayFieldStart(field);
    for (Reprint.Page page : pages) {
      json.writeStartObject();
      page(json, page.name(), page.number());
      JsonText.strings(json, "sizes", page.sizes());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void page(JsonGenerator json, PageName name, int number) throws IOException {
    json.writeStringField("name", name.tile());
    json.writeNumberField("number", number);
    json.writeStringField("kind", name.kind().name().toLowerCase(Locale.ROOT));
    JsonText.strings(json, "group", name.sizes());
  }
}
