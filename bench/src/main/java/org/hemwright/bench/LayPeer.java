package org.hemwright.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hemwright.cloth.laying.Layout;
import org.hemwright.cloth.laying.LayoutChecker;
import org.hemwright.cloth.laying.LooseShape;
import org.hemwright.cloth.laying.Placement;
import org.hemwright.cloth.laying.Spot;
import org.hemwright.cloth.laying.StripProblem;
import org.hemwright.cloth.laying.Turn;

/**
 * The packaged library libnest2d laying the same shapes: two of its processes side by side with
 * different seeds, the better of their layouts.
 */
final class LayPeer {
  /** The best of both layouts, and whether our checker accepts it. */
  private record Answer(double density, int passes, boolean accepted) {}

  private LayPeer() {}

  static String row(Path program, StripProblem problem, double seconds)
      throws IOException, InterruptedException {
    List<Process> running = new ArrayList<>();
    for (int seed = 1; seed <= 2; seed++) {
      Process process =
          new ProcessBuilder(program.toString(), Double.toString(seconds), Integer.toString(seed))
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      try (OutputStream shapes = process.getOutputStream()) {
        shapes.write(text(problem).getBytes(StandardCharsets.US_ASCII));
      }
      running.add(process);
    }
    Answer best = new Answer(0, 0, true);
    int passes = 0;
    for (Process process : running) {
      JsonNode json = new ObjectMapper().readTree(process.getInputStream());
      if (process.waitFor() != 0) {
        return "none found | |";
      }
      Answer answer = answer(problem, json);
      passes += answer.passes;
      best = answer.density > best.density ? answer : best;
    }
    return String.format(
        Locale.ROOT,
        "%.2f %%%s | %d |",
        100 * best.density,
        best.accepted ? "" : " (with overlap)",
        passes);
  }

  private static String text(StripProblem problem) {
    StringBuilder text = new StringBuilder();
    text.append(problem.stripWidth()).append(' ').append(problem.shapes().size()).append('\n');
    for (LooseShape shape : problem.shapes()) {
      text.append(shape.demand()).append(' ').append(shape.turns().size());
      for (Turn turn : shape.turns()) {
        text.append(' ').append(turn.degrees());
      }
      text.append(' ').append(shape.outline().size());
      for (Spot corner : shape.outline()) {
        text.append(' ').append(corner.x()).append(' ').append(corner.y());
      }
      text.append('\n');
    }
    return text.toString();
  }

  private static Answer answer(StripProblem problem, JsonNode json) {
    List<Placement> placements = new ArrayList<>();
    for (JsonNode laid : json.get("placements")) {
      LooseShape shape = problem.shapes().get(laid.get("shape").intValue());
      placements.add(
          new Placement(
              shape.id(),
              Turn.of(laid.get("rotationDegrees").doubleValue()),
              laid.get("x").doubleValue(),
              laid.get("y").doubleValue()));
    }
    Layout layout = new Layout(json.get("length").doubleValue(), placements);
    return new Answer(
        layout.density(problem),
        json.get("passes").intValue(),
        new LayoutChecker(problem).accepts(layout));
  }
}
