package org.hemwright.cloth.laying;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.finding.Origin;

/** Reads a {@link LayoutFile}. */
final class LayoutReader {

  /** Half of the last digit that published lengths are given in. */
  private static final double HALF_DIGIT = 0.5;

  private final LayJson json;
  private final List<Placement> placements = new ArrayList<>();
  private final List<Origin> places = new ArrayList<>();
  private double length = Double.NaN;
  private double stripWidth = Double.NaN;
  private boolean placementsSeen;
  private boolean lengthSeen;

  /** The placement at hand. */
  private String id = "";

  private Turn turn = Turn.AS_DRAWN;
  private double x;
  private double y;

  LayoutReader(String fileName, String text) {
    json = new LayJson(fileName, text);
  }

  LayoutFile read() throws LayFileRefused {
    json.readObject("length and placements", this::readField);
    if (json.problems().isEmpty()) {
      if (!lengthSeen) {
        json.missing("length", "the length that the layout takes");
      }
      if (!placementsSeen) {
        json.missing("placements", "where the shapes lie");
      }
    }
    if (!json.problems().isEmpty()) {
      throw new LayFileRefused(json.problems());
    }
    return new LayoutFile(stripWidth, new Layout(length, placements), places);
  }

  private void readField(String field) throws IOException {
    switch (field) {
      case "stripWidth", "stripWidthUsed" -> stripWidth = positive(field);
      case "length" -> {
        lengthSeen = true;
        length = positive(field);
      }
      case "reportedLength" -> {
        lengthSeen = true;
        length = positive(field) + rounding(json.scalar());
      }
      case "placements" -> {
        placementsSeen = true;
        json.list(field, "placements", this::readPlacement);
      }
      default -> json.skip();
    }
  }

  private double positive(String field) throws IOException {
    Origin place = json.here();
    double value = json.number(field);
    if (value <= 0) {
      json.add(json.problemAt(place, "lay-positive").with("field", field));
    }
    return value;
  }

  /** By how much a number may be too small because it was rounded to its last digit. */
  private static double rounding(String written) {
    int point = written.indexOf('.');
    boolean plain = point > 0 && written.chars().allMatch(c -> c == '.' || Character.isDigit(c));
    return plain ? HALF_DIGIT * StrictMath.pow(10, point + 1 - written.length()) : 0;
  }

  private void readPlacement(String list) throws IOException {
    if (!json.atObject()) {
      json.wrongEntry("placement", "an object with id, rotationDegrees, x and y");
      return;
    }
    Origin place = json.here();
    int before = json.problemCount();
    id = "";
    turn = Turn.AS_DRAWN;
    x = Double.NaN;
    y = Double.NaN;
    json.entries(this::readPlacementField);
    if (json.problemCount() > before) {
      return;
    }
    if (id.isEmpty()) {
      json.add(json.problemAt(place, "lay-id-missing"));
    } else if (Double.isNaN(x) || Double.isNaN(y)) {
      String lacking = Double.isNaN(x) ? "x" : "y";
      json.add(
          json.problemAt(place, "lay-field-missing")
              .with("field", lacking)
              .with("what", "where the shape's origin lies"));
    } else {
      placements.add(new Placement(id, turn, x, y));
      places.add(place);
    }
  }

  private void readPlacementField(String field) throws IOException {
    switch (field) {
      case "id" -> id = json.id();
      case "rotationDegrees" -> {
        double degrees = json.number(field);
        turn = Double.isNaN(degrees) ? Turn.AS_DRAWN : Turn.of(degrees);
      }
      case "x" -> x = json.number(field);
      case "y" -> y = json.number(field);
      default -> json.skip();
    }
  }
}
