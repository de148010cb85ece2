package org.hemwright.draft.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.RulePlace;
import org.hemwright.pattern.traced.RuleTable;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedInputs;
import org.hemwright.pattern.traced.TracedLine;

/** Drawings and rule tables as a folder might hold them, about a square of 10 cm called box. */
final class TracedSketch {
  static final TracedInputs INPUTS = inputs();

  private TracedSketch() {}

  private static TracedInputs inputs() {
    TreeMap<String, Optional<TracedDrawing>> drawings = new TreeMap<>();
    List<TracedLine> lines = new ArrayList<>();
    lines.add(line("box", square(0, 0, 100)));
    lines.add(line("cut", square(-10, -10, 120)));
    lines.add(line("open", Path.polyline(List.of(at(0, 0), at(100, 0), at(100, 100), at(0, 90)))));
    lines.add(line("round", CircularArc.about(at(50, 50), at(100, 50), 2 * Math.PI)));
    lines.add(line("pair", square(0, 0, 100)));
    lines.add(line("pair", square(0, 0, 90)));
    lines.add(line("dot", Path.straight(at(99, 40), at(101, 40))));
    lines.add(line("start dot", Path.straight(at(-1, 0), at(1, 0))));
    lines.add(line("far dot", Path.straight(at(119, 40), at(121, 40))));
    lines.add(line("dots", Path.straight(at(99, 40), at(101, 40))));
    lines.add(line("dots", Path.straight(at(99, 60), at(101, 60))));
    lines.add(line("ticks", Path.straight(at(100, 25), at(96, 25))));
    lines.add(line("ticks", Path.straight(at(40, 0), at(40, 4))));
    lines.add(line("grain", Path.straight(at(50, 10), at(50, 90))));
    lines.add(line("ruler", Path.straight(at(0, 120), at(50, 120))));
    drawings.put(
        "traced/box.svg", Optional.of(new TracedDrawing("traced/box.svg", lines, true, List.of())));
    drawings.put(
        "traced/unsaid.svg",
        Optional.of(new TracedDrawing("traced/unsaid.svg", lines, false, List.of())));
    List<TracedLine> bigger = List.of(line("box", square(0, 0, 140)));
    drawings.put(
        "traced/big.svg",
        Optional.of(new TracedDrawing("traced/big.svg", bigger, true, List.of())));
    TracedLine bare = new TracedLine(List.of(), square(0, 0, 9), new Origin("bare.svg", 1, 1));
    drawings.put(
        "traced/bare.svg",
        Optional.of(new TracedDrawing("traced/bare.svg", List.of(bare), true, List.of())));
    TreeMap<String, Optional<RuleTable>> tables = new TreeMap<>();
    tables.put(
        "other.csv", Optional.of(new RuleTable("other.csv", List.of(rule("front", "side")))));
    tables.put("edge.csv", Optional.of(new RuleTable("edge.csv", List.of(rule("sheet", "sole")))));
    RuleTable.Rule leap =
        new RuleTable.Rule(
            "sheet",
            "side",
            new RulePlace.End(false),
            false,
            List.of(new RuleTable.Step("8", "12", 5)),
            new Origin("leap.csv", 2, 1));
    tables.put("leap.csv", Optional.of(new RuleTable("leap.csv", List.of(leap))));
    return new TracedInputs(drawings, tables);
  }

  private static RuleTable.Rule rule(String piece, String edge) {
    return new RuleTable.Rule(
        piece,
        edge,
        new RulePlace.End(false),
        false,
        List.of(new RuleTable.Step("14", "16", 5)),
        new Origin("edge.csv", 2, 1));
  }

  private static TracedLine line(String name, Path path) {
    return new TracedLine(List.of(name, "layer"), path, new Origin("traced/box.svg", 1, 1));
  }

  private static Point at(double x, double y) {
    return new Point(x, y);
  }

  private static Path square(double x, double y, double side) {
    return Path.polyline(
        List.of(at(x, y), at(x + side, y), at(x + side, y + side), at(x, y + side), at(x, y)));
  }
}
