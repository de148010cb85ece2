package org.hemwright.workbench.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;

/** Writes one JSON value as text, the same on every system. */
final class JsonText {
  private static final JsonFactory FACTORY = new JsonFactory();
  private static final int DECIMALS = 6;

  private JsonText() {}

  /** Fills in a value. */
  interface Body {
    void writeTo(JsonGenerator json) throws IOException;
  }

  static String of(Body body) {
    StringWriter text = new StringWriter();
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
      body.writeTo(json);
    } catch (IOException impossible) {
      throw new UncheckedIOException("a text in memory was not written", impossible);
    }
    return text.append('\n').toString();
  }

  /** A number, rounded, without an exponent. */
  static void number(JsonGenerator json, String field, double value) throws IOException {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).stripTrailingZeros();
    json.writeFieldName(field);
    json.writeNumber(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
  }

  static void number(JsonGenerator json, String field, OptionalDouble value) throws IOException {
    if (value.isPresent()) {
      number(json, field, value.getAsDouble());
    } else {
      json.writeNullField(field);
    }
  }

  static void strings(JsonGenerator json, String field, List<String> texts) throws IOException {
    json.writeArrayFieldStart(field);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }
}
