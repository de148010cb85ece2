package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.pattern.traced.OutlineTracing;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedLine;
import org.hemwright.pattern.traced.TracingProblem;

/**
 * The parts of a drawing that can be called by a name: lines, layers and groups.
 *
 * @param parts in the order of the file; of several names for the same lines the first stays
 */
public record DrawnParts(List<Part> parts) {
  public DrawnParts {
    parts = List.copyOf(parts);
  }

  /**
   * One part.
   *
   * @param name what the document calls it
   * @param lines the places of its lines in the drawing, from 0
   * @param round whether its lines make one closed line
   * @param proposed what its name suggests that it is
   */
  public record Part(String name, List<Integer> lines, boolean round, PartRole proposed) {
    public Part {
      lines = List.copyOf(lines);
    }
  }

  /** The parts of a drawing; lines without any name are called by their place in the file. */
  public static DrawnParts of(TracedDrawing drawing) {
    List<Part> parts = new ArrayList<>();
    Set<List<Integer>> known = new HashSet<>();
    for (String name : drawing.names()) {
      List<Integer> lines = new ArrayList<>();
      for (int i = 0; i < drawing.lines().size(); i++) {
        if (drawing.lines().get(i).isCalled(name)) {
          lines.add(i);
        }
      }
      if (known.add(lines)) {
        parts.add(part(drawing, name, lines));
      }
    }
    for (int i = 0; i < drawing.lines().size(); i++) {
      TracedLine line = drawing.lines().get(i);
      if (line.names().isEmpty() && known.add(List.of(i))) {
        int place = i;
        drawing.nameOf(i).ifPresent(name -> parts.add(part(drawing, name, List.of(place))));
      }
    }
    return new DrawnParts(parts);
  }

  /** A part of one line alone, by a name that means no other. */
  static Part part(TracedDrawing drawing, String name, List<Integer> lines) {
    boolean round = isRound(drawing, name);
    return new Part(name, lines, round, PartRole.proposed(name, round));
  }

  private static boolean isRound(TracedDrawing drawing, String name) {
    try {
      return OutlineTracing.round(drawing, name).isClosed();
    } catch (TracingProblem open) {
      return false;
    }
  }
}
