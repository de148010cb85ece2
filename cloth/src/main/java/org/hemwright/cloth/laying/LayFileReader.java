package org.hemwright.cloth.laying;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/** Reads a {@link LayFile}. */
final class LayFileReader {

  private final LayJson json;
  private final List<LooseShape> shapes = new ArrayList<>();
  private final List<Origin> places = new ArrayList<>();
  private final Set<String> textIds = new HashSet<>();
  private final List<Finding> notes = new ArrayList<>();
  private String name = "";
  private double stripWidth = Double.NaN;
  private double relaxedStripWidth = Double.NaN;
  private boolean widthSeen;
  private boolean itemsSeen;

  /** The item at hand. */
  private String id = "";

  private int demand;
  private List<Turn> turns = List.of();
  private List<Spot> outline = List.of();
  private int holes;
  private Origin holesAt;

  LayFileReader(String fileName, String text) {
    json = new LayJson(fileName, text);
    holesAt = json.start();
  }

  LayFile read() throws LayFileRefused {
    json.readObject("stripWidth and items", this::readField);
    if (json.problems().isEmpty()) {
      if (!widthSeen) {
        json.missing("stripWidth", "the strip's width");
      }
      if (!itemsSeen) {
        json.missing("items", "the shapes to lay");
      }
    }
    double width = Double.isNaN(relaxedStripWidth) ? stripWidth : relaxedStripWidth;
    if (json.problems().isEmpty()) {
      for (StripProblem.Fault fault : StripProblem.faults(width, shapes)) {
        Origin place = fault.shape() < 0 ? json.start() : places.get(fault.shape());
        json.add(fault.finding(), place);
      }
    }
    if (!json.problems().isEmpty()) {
      throw new LayFileRefused(json.problems());
    }
    return new LayFile(new StripProblem(name, width, shapes), textIds, notes);
  }

  private void readField(String field) throws IOException {
    switch (field) {
      case "name" -> name = json.scalar();
      case "stripWidth" -> {
        widthSeen = true;
        stripWidth = json.number(field);
      }
      case "relaxedStripWidth" -> {
        widthSeen = true;
        relaxedStripWidth = json.number(field);
      }
      case "items" -> {
        itemsSeen = true;
        json.list(field, "shapes", this::readItem);
      }
      default -> json.skip();
    }
  }

  private void readItem(String list) throws IOException {
    if (!json.atObject()) {
      json.wrongEntry("shape", "an object with id, demand, allowedRotationsDegrees and shape");
      return;
    }
    Origin place = json.here();
    int before = json.problemCount();
    id = "";
    demand = 1;
    turns = List.of(Turn.AS_DRAWN);
    outline = List.of();
    holes = 0;
    json.entries(this::readItemField);
    if (json.problemCount() > before) {
      return;
    }
    if (id.isEmpty()) {
      json.add(json.problemAt(place, "lay-id-missing"));
    } else if (outline.size() < 3) {
      Finding few =
          Finding.fail("lay-corners-few", id).with("count", Argument.of(outline.size())).build();
      json.add(few, place);
    } else {
      shapes.add(new LooseShape(id, demand, turns, outline));
      places.add(place);
      if (holes > 0) {
        notes.add(
            Finding.warn("lay-holes", id).at(holesAt).with("count", Argument.of(holes)).build());
      }
    }
  }

  private void readItemField(String field) throws IOException {
    switch (field) {
      case "id" -> {
        if (json.atText()) {
          id = json.id();
          textIds.add(id);
        } else {
          id = json.id();
        }
      }
      case "demand" -> demand = readDemand();
      case "allowedRotationsDegrees" -> turns = readTurns();
      case "shape" -> outline = readOutline();
      case "holes" -> {
        holesAt = json.here();
        json.list(
            "holes",
            "holes",
            hole -> {
              holes++;
              json.skip();
            });
      }
      default -> json.skip();
    }
  }

  private int readDemand() throws IOException {
    Origin place = json.here();
    double wanted = json.number("demand");
    if (Double.isNaN(wanted)) {
      return 1;
    }
    if (wanted != Math.rint(wanted) || wanted < 1 || wanted > StripProblem.MOST_COPIES) {
      json.add(
          json.problemAt(place, "lay-demand")
              .with("read", json.scalar())
              .with("most", Argument.of(StripProblem.MOST_COPIES)));
      return 1;
    }
    return (int) wanted;
  }

  private List<Turn> readTurns() throws IOException {
    Origin place = json.here();
    int before = json.problemCount();
    List<Turn> allowed = new ArrayList<>();
    json.list(
        "allowedRotationsDegrees",
        "numbers",
        field -> {
          double degrees = json.number("a rotation");
          if (!Double.isNaN(degrees) && !allowed.contains(Turn.of(degrees))) {
            allowed.add(Turn.of(degrees));
          }
        });
    if (allowed.isEmpty() && json.problemCount() == before) {
      json.add(json.problemAt(place, "lay-no-turn"));
    }
    return allowed;
  }

  private List<Spot> readOutline() throws IOException {
    List<Spot> corners = new ArrayList<>();
    json.list(
        "shape",
        "[x, y] corners",
        field -> {
          if (!json.atList()) {
            json.wrongEntry("corner", "a list of two numbers");
            return;
          }
          Origin place = json.here();
          List<Double> pair = new ArrayList<>();
          json.list("corner", "two numbers", each -> pair.add(json.number("a coordinate")));
          if (pair.size() != 2) {
            json.add(json.problemAt(place, "lay-corner").with("count", Argument.of(pair.size())));
          } else if (!pair.contains(Double.NaN)) {
            corners.add(new Spot(pair.get(0), pair.get(1)));
          }
        });
    return corners;
  }
}
