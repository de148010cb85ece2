package org.hemwright.cloth.laying;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.jspecify.annotations.Nullable;

/**
 * A JSON text read once through from top to bottom, which gathers what is wrong with it, each
 * problem with its place. Whatever is not as it should be is noted and passed over.
 */
final class LayJson {

  /** What is done with each entry of an object or list; the parser stands at its value. */
  interface Entry {
    void read(String field) throws IOException;
  }

  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  /** An id longer than this is none. */
  private static final int LONGEST_ID = 200;

  private final String fileName;
  private final String text;
  private final List<Finding> problems = new ArrayList<>();
  private final JsonParser json;

  LayJson(String fileName, String text) {
    this.fileName = fileName;
    this.text = text;
    try {
      json = FACTORY.createParser(text);
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory does not fail", e);
    }
  }

  /**
   * Reads the whole text, which must be one object.
   *
   * @param fields what the object needs, in words
   */
  void readObject(String fields, Entry entry) {
    try {
      json.nextToken();
      if (json.currentToken() == JsonToken.START_OBJECT) {
        entries(entry);
        if (json.nextToken() != null) {
          problem(here(), "lay-more");
        }
      } else {
        add(problemAt(here(), "lay-not-object").with("fields", fields));
      }
    } catch (JsonProcessingException e) {
      add(JsonSlip.in(text).map(this::told).orElseGet(() -> tooMuch(e)));
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory does not fail", e);
    }
  }

  private Finding.Builder told(JsonSlip slip) {
    JsonSlip.At at = JsonSlip.At.of(text, slip.place());
    Finding.Builder problem = problemAt(new Origin(fileName, at.line(), at.column()), slip.code());
    slip.words().forEach(problem::with);
    return problem;
  }

  /** JSON it is, and the parser refuses it: a name, number or nesting beyond its limits. */
  private Finding.Builder tooMuch(JsonProcessingException refused) {
    return problemAt(origin(refused.getLocation()), "lay-json-much");
  }

  /** Reads the entries of the object at hand. */
  void entries(Entry entry) throws IOException {
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String field = json.currentName();
      json.nextToken();
      entry.read(field);
    }
  }

  /**
   * Reads the entries of the list at hand.
   *
   * @param what what it is a list of, in words
   */
  void list(String field, String what, Entry entry) throws IOException {
    if (json.currentToken() != JsonToken.START_ARRAY) {
      add(problemAt(here(), "lay-list").with("field", field).with("what", what));
      skip();
      return;
    }
    while (json.nextToken() != JsonToken.END_ARRAY) {
      entry.read(field);
    }
  }

  boolean atObject() {
    return json.currentToken() == JsonToken.START_OBJECT;
  }

  boolean atList() {
    return json.currentToken() == JsonToken.START_ARRAY;
  }

  /** Notes that the entry at hand is not what it should be, and passes it over. */
  void wrongEntry(String what, String better) throws IOException {
    add(problemAt(here(), "lay-entry").with("what", what).with("better", better));
    skip();
  }

  /** Passes over the value at hand. */
  void skip() throws IOException {
    json.skipChildren();
  }

  /** The value at hand as it is written, if it is a single one; otherwise empty. */
  String scalar() throws IOException {
    if (json.currentToken().isScalarValue()) {
      return json.getText();
    }
    skip();
    return "";
  }

  /** The number at hand, or NaN after a problem was noted. */
  double number(String field) throws IOException {
    if (json.currentToken() == null || !json.currentToken().isNumeric()) {
      add(problemAt(here(), "lay-number").with("field", field));
      skip();
      return Double.NaN;
    }
    double value = json.getDoubleValue();
    if (!Double.isFinite(value)) {
      add(problemAt(here(), "lay-number-large").with("field", field));
      return Double.NaN;
    }
    return value;
  }

  /** The id at hand, or empty after a problem was noted. */
  String id() throws IOException {
    boolean known =
        json.currentToken() == JsonToken.VALUE_STRING
            || json.currentToken() == JsonToken.VALUE_NUMBER_INT;
    String id = known ? json.getText() : "";
    if (id.isEmpty() || id.length() > LONGEST_ID || id.chars().anyMatch(Character::isISOControl)) {
      problem(here(), "lay-id");
      skip();
      return "";
    }
    return id;
  }

  /** Whether the value at hand is written as a text. */
  boolean atText() {
    return json.currentToken() == JsonToken.VALUE_STRING;
  }

  /** Where the value at hand begins. */
  Origin here() {
    return origin(json.currentTokenLocation());
  }

  /** The text's beginning. */
  Origin start() {
    return new Origin(fileName, 1, 1);
  }

  /** Some failures of the parser know no place; they are told at the start. */
  private Origin origin(@Nullable JsonLocation place) {
    return place == null
        ? start()
        : new Origin(fileName, Math.max(1, place.getLineNr()), Math.max(1, place.getColumnNr()));
  }

  /** Starts a problem. */
  Finding.Builder problemAt(Origin place, String code) {
    return Finding.fail(code, fileName).at(place);
  }

  /** Notes a problem. */
  void add(Finding.Builder problem) {
    problems.add(problem.build());
  }

  private void problem(Origin place, String code) {
    add(problemAt(place, code));
  }

  /** Notes that a field is missing. */
  void missing(String field, String what) {
    add(problemAt(here(), "lay-field-missing").with("field", field).with("what", what));
  }

  /** Notes a problem that was found elsewhere. */
  void add(Finding found, Origin place) {
    Finding.Builder problem = Finding.fail(found.code(), found.subject()).at(place);
    found.arguments().forEach(problem::with);
    add(problem);
  }

  /** How many problems were noted so far. */
  int problemCount() {
    return problems.size();
  }

  /** The problems, in the order in which they were noted. */
  List<Finding> problems() {
    return problems;
  }
}
