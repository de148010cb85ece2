package org.hemwright.cloth.laying;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Set;
import org.hemwright.pattern.finding.Finding;

/**
 * A file of loose shapes, and the answer written for it.
 *
 * <p>In: {@code {name, stripWidth, items:[{id, demand, allowedRotationsDegrees, shape}]}}, where
 * {@code shape} is a list of [x, y] corners; {@code relaxedStripWidth} takes the place of {@code
 * stripWidth} where it is given; an id is a whole number or a text. A shape without {@code demand}
 * is laid once, one without rotations as drawn. {@code holes}, a list in a shape, are filled, and
 * that is told; other fields are passed over.
 *
 * <p>Out: {@code {name, stripWidth, length, density, placements:[{id, rotationDegrees, x, y}]}} and
 * what it took.
 *
 * @param problem what is to be laid
 * @param textIds the ids that the file gives as texts; the others are numbers and are written as
 *     numbers
 * @param notes what is to be told of the shapes beside their layout: whose holes are filled
 */
public record LayFile(StripProblem problem, Set<String> textIds, List<Finding> notes) {

  public LayFile {
    textIds = Set.copyOf(textIds);
    notes = List.copyOf(notes);
  }

  /**
   * Reads a file of loose shapes.
   *
   * @param fileName what the file is called in problems
   * @param text what it holds
   * @throws LayFileRefused with every problem found
   */
  public static LayFile read(String fileName, String text) throws LayFileRefused {
    return new LayFileReader(fileName, text).read();
  }

  /** The answer as JSON text, ending in a line feed. */
  public String write(LayResult result) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text).useDefaultPrettyPrinter()) {
      Layout layout = result.layout();
      json.writeStartObject();
      json.writeStringField("name", problem.name());
      json.writeNumberField("stripWidth", problem.stripWidth());
      json.writeNumberField("length", layout.length());
      json.writeNumberField("density", layout.density(problem));
      json.writeBooleanField("complete", result.complete());
      json.writeNumberField("work", result.work());
      json.writeArrayFieldStart("placements");
      for (Placement placement : layout.placements()) {
        json.writeStartObject();
        if (textIds.contains(placement.id())) {
          json.writeStringField("id", placement.id());
        } else {
          json.writeFieldName("id");
          json.writeNumber(placement.id());
        }
        json.writeNumberField("rotationDegrees", placement.turn().degrees());
        json.writeNumberField("x", placement.x());
        json.writeNumberField("y", placement.y());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory does not fail", e);
    }
    return text + "\n";
  }
}
