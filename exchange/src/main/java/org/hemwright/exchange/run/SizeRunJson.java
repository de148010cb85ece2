package org.hemwright.exchange.run;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.DateTimeException;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.Origin;

/**
 * Writes and reads a run as JSON. {@code read(write(run))} equals the run; the same run gives the
 * same bytes.
 */
public final class SizeRunJson {
  /** The number of the form that is written; every form up to it is read. */
  public static final int FORM = 1;

  private static final String FORM_FIELD = "size_run";
  private static final String RUN_FIELD = "run";
  private static final ObjectMapper READER = new ObjectMapper();
  private static final JsonFactory WRITER = new JsonFactory();

  private SizeRunJson() {}

  /** The sentences for every finding of a kept run. */
  public static Messages messages() {
    return Messages.beside(SizeRunJson.class, "run.properties");
  }

  /** A run with its form's number, in UTF-8. */
  public static byte[] write(SizeRun run) {
    return bytes(run, true);
  }

  /**
   * What a run comes to, whatever the lines of the document that say so: two texts that differ in
   * comments and blank lines alone have equal content.
   */
  public static byte[] content(SizeRun run) {
    return bytes(run, false);
  }

  private static byte[] bytes(SizeRun run, boolean origins) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JsonGenerator json = WRITER.createGenerator(out)) {
      json.writeStartObject();
      json.writeNumberField(FORM_FIELD, FORM);
      json.writeFieldName(RUN_FIELD);
      new ValueWriter(json, origins).write(SizeRun.class, run);
      json.writeEndObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return out.toByteArray();
  }

  /**
   * Reads a run.
   *
   * @param file the name that places in findings carry
   */
  public static ReadRun read(String file, byte[] content) {
    Origin start = new Origin(file, 1, 1);
    try {
      JsonNode whole = READER.readTree(content);
      JsonNode form = whole.path(FORM_FIELD);
      if (form.isInt() && form.intValue() > FORM) {
        return unread(
            Finding.fail("run-newer", file)
                .with("form", Argument.of(form.intValue()))
                .with("known", Argument.of(FORM))
                .at(start)
                .build());
      }
      if (form.isInt() && form.intValue() == FORM) {
        Object run = ValueReader.read(SizeRun.class, whole.path(RUN_FIELD), "");
        return new ReadRun(Optional.of((SizeRun) run), List.of());
      }
    } catch (ValueReader.Unreadable odd) {
      String where = odd.getMessage();
      return unread(
          Finding.fail("run-odd", file)
              .with("where", where == null ? "" : where)
              .at(start)
              .build());
    } catch (IOException | IllegalArgumentException | DateTimeException | GeometryProblem broken) {
      return unread(Finding.fail("run-broken", file).at(start).build());
    }
    return unread(Finding.fail("run-broken", file).at(start).build());
  }

  private static ReadRun unread(Finding finding) {
    return new ReadRun(Optional.empty(), List.of(finding));
  }
}
