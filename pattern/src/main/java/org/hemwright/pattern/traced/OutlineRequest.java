package org.hemwright.pattern.traced;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.Argument;

/**
 * What the designer says of an outline in her drawing.
 *
 * @param line the name of the line or layer that is the outline
 * @param start the corner where the first edge starts
 * @param clockwise whether the edges are named clockwise, as the piece lies on the drawing
 * @param sharpest corners are where the line turns by this much or more (radians)
 * @param edges in order
 */
public record OutlineRequest(
    String line, Start start, boolean clockwise, double sharpest, List<EdgeRequest> edges) {
  /** What counts as a corner where nothing else is said, as a person reads it (degrees). */
  public static final double USUAL_CORNER_DEGREES = 12;

  /** The same (radians). */
  public static final double USUAL_CORNER = StrictMath.toRadians(USUAL_CORNER_DEGREES);

  public OutlineRequest {
    edges = List.copyOf(edges);
    if (edges.size() < 2) {
      throw new IllegalArgumentException("an outline has two edges at least");
    }
  }

  /** The same of another line. */
  public OutlineRequest of(String other) {
    return new OutlineRequest(other, start, clockwise, sharpest, edges);
  }

  /** Where the first edge starts. */
  public sealed interface Start {
    /** The corner that lies farthest to one side and up or down, both counted alike. */
    record Farthest(boolean top, boolean left) implements Start {}

    /** The corner beside a dot. */
    record Dot(String name) implements Start {}
  }

  /**
   * One edge.
   *
   * @param name empty where the stretch is left out, as the end of an allowance is, and its
   *     neighbours run on until they meet
   * @param until the dot where it ends; without one it ends at the next corner
   * @param allowance what is taken off inside the line (mm), 0 for a line without allowance
   */
  public record EdgeRequest(String name, Optional<String> until, double allowance) {
    public EdgeRequest {
      if (!(allowance >= 0)) {
        throw new TracingProblem("traced-allowance-negative")
            .with("edge", name)
            .with("allowance", Argument.mm(allowance));
      }
    }

    /** Whether it is no edge of the piece. */
    public boolean isLeftOut() {
      return name.isEmpty();
    }
  }
}
