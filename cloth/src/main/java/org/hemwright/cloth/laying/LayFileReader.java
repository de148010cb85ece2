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
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Reads a {@link LayFile}, once through from top to bottom, and gathers problems with their places.
 */
final class LayFileReader {

  private final String fileName;
  private final String text;
  private final List<String> problems = new ArrayList<>();
  private final List<LooseShape> shapes = new ArrayList<>();
  private final List<JsonLocation> places = new ArrayList<>();
  private final Set<String> textIds = new HashSet<>();
  private String name = "";
  private double stripWidth = Double.NaN;
  private double relaxedStripWidth = Double.NaN;

  LayFileReader(String fileName, String text) {
    this.fileName = fileName;
    this.text = text;
  }

  LayFile read() throws LayFileRefused {
    JsonFactory factory =
        JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
    try (JsonParser json = factory.createParser(text)) {
      json.nextToken();
      if (json.currentToken() == JsonToken.START_OBJECT) {
        readFile(json);
        if (json.nextToken() != null) {
          problem(json, "there is more after the end of the object; remove it");
        }
      } else {
        problem(json, "the file must be one JSON object with stripWidth and items");
      }
    } catch (JsonProcessingException e) {
      problem(
          e.getLocation(),
          "this is not JSON (" + plain(e.getOriginalMessage()) + "); mend it here");
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory does not fail", e);
    }
    double width = Double.isNaN(relaxedStripWidth) ? stripWidth : relaxedStripWidth;
    if (problems.isEmpty()) {
      for (StripProblem.Fault fault : StripProblem.faults(width, shapes)) {
        problem(fault.shape() < 0 ? null : places.get(fault.shape()), fault.message());
      }
    }
    if (!problems.isEmpty()) {
      throw new LayFileRefused(problems);
    }
    return new LayFile(new StripProblem(name, width, shapes), textIds);
  }

  private void readFile(JsonParser json) throws IOException {
    boolean itemsSeen = false;
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String field = json.currentName();
      json.nextToken();
      switch (field) {
        case "name" -> name = json.currentToken().isScalarValue() ? json.getText() : skipped(json);
        case "stripWidth" -> stripWidth = number(json, "stripWidth");
        case "relaxedStripWidth" -> relaxedStripWidth = number(json, "relaxedStripWidth");
        case "items" -> {
          itemsSeen = true;
          readItems(json);
        }
        default -> json.skipChildren();
      }
    }
    if (Double.isNaN(stripWidth) && Double.isNaN(relaxedStripWidth) && problems.isEmpty()) {
      problem(json, "stripWidth is missing; give the strip's width");
    }
    if (!itemsSeen) {
      problem(json, "items is missing; give the shapes to lay");
    }
  }

  private static String skipped(JsonParser json) throws IOException {
    json.skipChildren();
    return "";
  }

  private void readItems(JsonParser json) throws IOException {
    if (json.currentToken() != JsonToken.START_ARRAY) {
      wrong(json, "items must be a list of shapes");
      return;
    }
    while (json.nextToken() != JsonToken.END_ARRAY) {
      JsonLocation place = json.currentTokenLocation();
      if (json.currentToken() == JsonToken.START_OBJECT) {
        readItem(json, place);
      } else {
        wrong(json, "each of the items must be an object with id, demand and shape");
      }
    }
  }

  private void readItem(JsonParser json, JsonLocation place) throws IOException {
    int before = problems.size();
    String id = "";
    int demand = 1;
    List<Turn> turns = List.of(Turn.AS_DRAWN);
    List<Spot> outline = List.of();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String field = json.currentName();
      json.nextToken();
      switch (field) {
        case "id" -> id = readId(json);
        case "demand" -> demand = readDemand(json);
        case "allowedRotationsDegrees" -> turns = readTurns(json);
        case "shape" -> outline = readOutline(json);
        default -> json.skipChildren();
      }
    }
    if (problems.size() > before) {
      return;
    }
    if (id.isEmpty()) {
      problem(place, "this shape has no id; give it one");
    } else if (outline.size() < 3) {
      problem(
          place, "shape " + id + " has " + outline.size() + " corners; it needs at least three");
    } else {
      shapes.add(new LooseShape(id, demand, turns, outline));
      places.add(place);
    }
  }

  private String readId(JsonParser json) throws IOException {
    if (json.currentToken() == JsonToken.VALUE_STRING && !json.getText().isEmpty()) {
      String id = json.getText();
      textIds.add(id);
      return id;
    }
    if (json.currentToken() == JsonToken.VALUE_NUMBER_INT) {
      return json.getText();
    }
    wrong(json, "an id must be a whole number or a text that is not empty");
    return "";
  }

  private int readDemand(JsonParser json) throws IOException {
    double demand = number(json, "demand");
    if (Double.isNaN(demand)) {
      return 1;
    }
    if (demand != Math.rint(demand) || demand < 1 || demand > StripProblem.MOST_COPIES) {
      problem(
          json,
          "demand is "
              + json.getText()
              + "; it must be a whole number from 1 to "
              + StripProblem.MOST_COPIES);
      return 1;
    }
    return (int) demand;
  }

  private List<Turn> readTurns(JsonParser json) throws IOException {
    List<Turn> turns = new ArrayList<>();
    if (json.currentToken() != JsonToken.START_ARRAY) {
      wrong(json, "allowedRotationsDegrees must be a list of numbers");
      return turns;
    }
    JsonLocation place = json.currentTokenLocation();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      double degrees = number(json, "a rotation");
      if (!Double.isNaN(degrees) && !turns.contains(Turn.of(degrees))) {
        turns.add(Turn.of(degrees));
      }
    }
    if (turns.isEmpty()) {
      problem(place, "allowedRotationsDegrees names no rotation; give at least 0");
    }
    return turns;
  }

  private List<Spot> readOutline(JsonParser json) throws IOException {
    List<Spot> outline = new ArrayList<>();
    if (json.currentToken() != JsonToken.START_ARRAY) {
      wrong(json, "shape must be a list of [x, y] corners");
      return outline;
    }
    while (json.nextToken() != JsonToken.END_ARRAY) {
      if (json.currentToken() != JsonToken.START_ARRAY) {
        wrong(json, "each corner of a shape must be a list of two numbers");
        continue;
      }
      JsonLocation place = json.currentTokenLocation();
      List<Double> pair = new ArrayList<>();
      while (json.nextToken() != JsonToken.END_ARRAY) {
        pair.add(number(json, "a coordinate"));
      }
      if (pair.size() != 2) {
        problem(place, "this corner has " + pair.size() + " numbers; it needs two");
      } else if (!pair.contains(Double.NaN)) {
        outline.add(new Spot(pair.get(0), pair.get(1)));
      }
    }
    return outline;
  }

  /** The number at hand, or NaN after a problem was noted. */
  private double number(JsonParser json, String what) throws IOException {
    if (json.currentToken() == null || !json.currentToken().isNumeric()) {
      wrong(json, what + " must be a number");
      return Double.NaN;
    }
    double value = json.getDoubleValue();
    if (!Double.isFinite(value)) {
      problem(json, what + " is larger than any number this can hold; check it");
      return Double.NaN;
    }
    return value;
  }

  private void wrong(JsonParser json, String message) throws IOException {
    problem(json, message);
    json.skipChildren();
  }

  private void problem(JsonParser json, String message) {
    problem(json.currentTokenLocation(), message);
  }

  private void problem(@Nullable JsonLocation place, String message) {
    int line = place == null ? 1 : Math.max(1, place.getLineNr());
    int column = place == null ? 1 : Math.max(1, place.getColumnNr());
    problems.add(fileName + ":" + line + ":" + column + ": " + message);
  }

  private static String plain(String message) {
    return message.lines().findFirst().orElse("").strip();
  }
}
