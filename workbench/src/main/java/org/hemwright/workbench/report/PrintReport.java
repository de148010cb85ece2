package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.paper.PrintedFile;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;

/** What was printed or published, as {@code publish --json} and {@code paper --json} give it. */
public final class PrintReport {
  private PrintReport() {}

  /**
   * The report.
   *
   * @param folder where the files stand; absent where publishing was refused
   * @param files what was made
   * @param findings what the checks said
   */
  public static String json(
      Optional<String> folder, List<PrintedFile> files, List<Finding> findings, Wording wording) {
    return json(folder, files, findings, wording, Map.of());
  }

  /**
   * The same with something more to say.
   *
   * @param also members of the answer with their texts, in order; null is written where there is
   *     none
   */
  public static String json(
      Optional<String> folder,
      List<PrintedFile> files,
      List<Finding> findings,
      Wording wording,
      Map<String, Optional<String>> also) {
    FindingJson told = new FindingJson(wording);
    return JsonText.of(
        json -> {
          json.writeStartObject();
          json.writeBooleanField("published", folder.isPresent());
          write(json, "folder", folder);
          for (Map.Entry<String, Optional<String>> each : also.entrySet()) {
            write(json, each.getKey(), each.getValue());
          }
          json.writeArrayFieldStart("files");
          for (PrintedFile file : files) {
            write(json, file);
          }
          json.writeEndArray();
          told.write(json, "findings", findings);
          json.writeEndObject();
        });
  }

  private static void write(JsonGenerator json, String name, Optional<String> text)
      throws IOException {
    json.writeFieldName(name);
    if (text.isPresent()) {
      json.writeString(text.get());
    } else {
      json.writeNull();
    }
  }

  private static void write(JsonGenerator json, PrintedFile file) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", file.name());
    json.writeNumberField("bytes", file.bytes().length);
    json.writeNumberField("pages", file.pages());
    json.writeArrayFieldStart("groups");
    for (PrintedFile.GroupPages group : file.groups()) {
      json.writeStartObject();
      json.writeArrayFieldStart("sizes");
      for (String size : group.sizes()) {
        json.writeString(size);
      }
      json.writeEndArray();
      json.writeNumberField("pages", group.pages());
      json.writeFieldName("pages_of_size");
      write(json, group.pagesOfSize());
      json.writeObjectFieldStart("pages_of_view");
      for (Map.Entry<String, Map<String, Integer>> view : group.pagesOfView().entrySet()) {
        json.writeFieldName(view.getKey());
        write(json, view.getValue());
      }
      json.writeEndObject();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, Map<String, Integer> pagesOfSize)
      throws IOException {
    json.writeStartObject();
    for (Map.Entry<String, Integer> size : pagesOfSize.entrySet()) {
      json.writeNumberField(size.getKey(), size.getValue());
    }
    json.writeEndObject();
  }
}
