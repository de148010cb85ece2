package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.traced.OutlineTracing;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracingProblem;

/**
 * Where the edges of an outline end: its corners, and the dots on it.
 *
 * @param ends from the start round, the start first
 * @param round the outline, run in the designer's sense
 * @param start how far along it the first edge starts (mm)
 */
public record OutlineEnds(List<End> ends, Path round, double start) {
  public OutlineEnds {
    ends = List.copyOf(ends);
  }

  /**
   * One end.
   *
   * @param at on the drawing
   * @param way how far round from the start (mm)
   * @param dot the dot that makes it one; absent where the line turns
   */
  public record End(Point at, double way, Optional<String> dot) {}

  /** A place on the line before it is known where the first edge starts. */
  private record Found(double distance, Optional<String> dot) {}

  /**
   * The ends of the outline that she named.
   *
   * @throws TracingProblem where there is no such outline, or it has no corner
   */
  public static OutlineEnds of(TracedDrawing drawing, TracingAnswers answers) {
    String name = answers.outline().orElseThrow();
    Path closed = OutlineTracing.round(drawing, name);
    boolean left = Outline.of(closed).isCounterClockwise();
    Path round = left == answers.clockwise() ? closed.reversed() : closed;
    List<Found> found = new ArrayList<>();
    for (double corner : OutlineTracing.corners(round, StrictMath.toRadians(answers.corners()))) {
      found.add(new Found(corner, Optional.empty()));
    }
    dots(drawing, answers, round, found);
    if (found.isEmpty()) {
      throw new TracingProblem("traced-no-corner").with("name", name);
    }
    double start = start(answers, round, found);
    List<End> ends = new ArrayList<>();
    for (Found each : found) {
      double way = each.distance() - start;
      ends.add(
          new End(
              round.at(each.distance()).point(), way < 0 ? way + round.length() : way, each.dot()));
    }
    ends.sort(Comparator.comparingDouble(End::way));
    return new OutlineEnds(ends, round, start);
  }

  /** Which edge a place lies on, from 0; absent where it lies on none, or at an end. */
  Optional<Integer> edgeAt(Point at) {
    PathPlace place = round.nearest(at);
    if (place.point().distanceTo(at) > OutlineTracing.DOT_ON_LINE) {
      return Optional.empty();
    }
    double way = place.distance() - start;
    way = way < 0 ? way + round.length() : way;
    int edge = 0;
    for (int i = 0; i < ends.size(); i++) {
      if (StrictMath.abs(ends.get(i).way() - way) <= OutlineTracing.DOT_ON_LINE) {
        return Optional.empty();
      }
      edge = ends.get(i).way() < way ? i : edge;
    }
    return Optional.of(edge);
  }

  private static void dots(
      TracedDrawing drawing, TracingAnswers answers, Path round, List<Found> found) {
    for (String part : answers.parts(PartRole.CORNERS)) {
      for (int i = 0; i < drawing.lines().size(); i++) {
        if (!drawing.called(part).contains(drawing.lines().get(i))) {
          continue;
        }
        Point middle = drawing.lines().get(i).middle();
        PathPlace place = round.nearest(middle);
        Optional<String> own = drawing.nameOf(i);
        boolean near = place.point().distanceTo(middle) <= OutlineTracing.DOT_ON_LINE;
        boolean taken =
            found.stream()
                .anyMatch(
                    each ->
                        round.at(each.distance()).point().distanceTo(place.point())
                            <= OutlineTracing.DOT_ON_LINE);
        if (near && !taken && own.isPresent()) {
          found.add(new Found(place.distance(), own));
        }
      }
    }
  }

  private static double start(TracingAnswers answers, Path round, List<Found> found) {
    for (Found each : found) {
      if (each.dot().equals(Optional.of(answers.start()))) {
        return each.distance();
      }
    }
    double across = answers.start().endsWith("right") ? 1 : -1;
    double up = answers.start().startsWith("bottom") ? -1 : 1;
    // The language takes the farthest corner, never a dot.
    return found.stream()
        .filter(each -> each.dot().isEmpty())
        .max(
            Comparator.comparingDouble(
                (Found each) -> {
                  Point point = round.at(each.distance()).point();
                  return across * point.x() + up * point.y();
                }))
        .map(Found::distance)
        .orElse(found.get(0).distance());
  }
}
