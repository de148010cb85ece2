package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;

/**
 * The edges round a part, counter-clockwise, and the outline that they make.
 *
 * @param edges each beginning where the one before it ends
 * @param outline the edges' paths as one
 */
record PartEdges(List<PartEdge> edges, Outline outline) {
  PartEdges {
    edges = List.copyOf(edges);
  }

  PartEdges(List<PartEdge> edges) {
    this(edges, outline(edges));
  }

  private static Outline outline(List<PartEdge> edges) {
    Path round = edges.get(0).path();
    for (PartEdge edge : edges.subList(1, edges.size())) {
      round = round.then(edge.path());
    }
    return Outline.of(round);
  }

  /**
   * The edges in the same order, beginning with the first of a kind where there is one.
   *
   * @param round edges round a part
   */
  static PartEdges ledBy(Predicate<PartEdge> kind, List<PartEdge> round) {
    List<PartEdge> turned = new ArrayList<>(round);
    for (int i = 0; i < round.size(); i++) {
      if (kind.test(round.get(i))) {
        Collections.rotate(turned, -i);
        break;
      }
    }
    return new PartEdges(turned);
  }

  /** Where a cut begins or ends: on which edge, from 0, and how far along it (mm). */
  record Place(int edge, double at) {}

  /** Whether a point lies on the part or at its edge. */
  boolean holds(Point at) {
    return outline.contains(at)
        || outline.path().nearest(at).point().distanceTo(at) <= Tolerance.DRAWN_LENGTH;
  }

  /** Where a point lies round the part; absent where it lies on no edge. */
  Optional<Place> place(Point point) {
    for (int i = 0; i < edges.size(); i++) {
      Path path = edges.get(i).path();
      var nearest = path.nearest(point);
      if (nearest.point().distanceTo(point) <= Tolerance.DRAWN_LENGTH) {
        boolean atEnd = nearest.distance() >= path.length() - Tolerance.DRAWN_LENGTH;
        if (atEnd) {
          return Optional.of(new Place((i + 1) % edges.size(), 0));
        }
        double at = nearest.distance() <= Tolerance.DRAWN_LENGTH ? 0 : nearest.distance();
        return Optional.of(new Place(i, at));
      }
    }
    return Optional.empty();
  }

  /** Whether a line runs across the part without leaving it between its ends. */
  boolean isCrossedBy(Path line) {
    if (!outline.contains(line.at(line.length() / 2).point())) {
      return false;
    }
    for (Meeting meeting : line.meetings(outline.path())) {
      double at = meeting.distanceOnThis();
      if (at > Tolerance.DRAWN_LENGTH && at < line.length() - Tolerance.DRAWN_LENGTH) {
        return false;
      }
    }
    return true;
  }

  /** The edges from one place on to another. */
  List<PartEdge> between(Place from, Place to) {
    List<PartEdge> between = new ArrayList<>();
    if (from.edge == to.edge && from.at < to.at) {
      between.add(edges.get(from.edge).part(from.at, to.at));
      return between;
    }
    PartEdge first = edges.get(from.edge);
    between.add(first.part(from.at, first.path().length()));
    for (int i = (from.edge + 1) % edges.size(); i != to.edge; i = (i + 1) % edges.size()) {
      between.add(edges.get(i));
    }
    if (to.at > 0) {
      between.add(edges.get(to.edge).part(0, to.at));
    }
    return between;
  }

  /** The edges in order, a second stretch of one edge told from the first by its number. */
  List<PartEdge> numbered() {
    Map<String, Integer> counts = new LinkedHashMap<>();
    List<PartEdge> numbered = new ArrayList<>();
    for (PartEdge edge : edges) {
      String name = edge.edge().name();
      int count = counts.merge(name, 1, Integer::sum);
      numbered.add(count == 1 ? edge : edge.named(name + "_" + count));
    }
    return numbered;
  }
}
