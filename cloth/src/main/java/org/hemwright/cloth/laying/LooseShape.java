package org.hemwright.cloth.laying;

import java.util.List;
import java.util.Optional;

/**
 * One kind of shape to be laid, as often as it is demanded.
 *
 * @param id its name, different from every other shape's in the problem
 * @param demand how many copies, at least 1
 * @param turns the ways it may lie, at least one, none twice
 * @param outline its corners in order, either way round, the first not repeated; a simple polygon
 * @param lanes the parts of the strip's width it is held to; empty: anywhere
 * @param bars the places along the strip that its origin is held to; absent: any
 */
public record LooseShape(
    String id,
    int demand,
    List<Turn> turns,
    List<Spot> outline,
    List<Lane> lanes,
    Optional<Bars> bars) {

  public LooseShape {
    turns = List.copyOf(turns);
    outline = List.copyOf(outline);
    lanes = List.copyOf(lanes);
    if (id.isEmpty()) {
      throw new IllegalArgumentException("a shape needs an id");
    }
    if (demand < 1) {
      throw new IllegalArgumentException(
          "shape " + id + " is wanted " + demand + " times; at least once");
    }
    if (turns.isEmpty() || turns.stream().distinct().count() < turns.size()) {
      throw new IllegalArgumentException(
          "shape " + id + " needs at least one turn, and none twice");
    }
    if (outline.size() < 3) {
      throw new IllegalArgumentException("shape " + id + " needs at least three corners");
    }
  }

  /** A shape that may lie anywhere on the strip. */
  public LooseShape(String id, int demand, List<Turn> turns, List<Spot> outline) {
    this(id, demand, turns, outline, List.of());
  }

  /** A shape that may lie anywhere along its lanes. */
  public LooseShape(String id, int demand, List<Turn> turns, List<Spot> outline, List<Lane> lanes) {
    this(id, demand, turns, outline, lanes, Optional.empty());
  }

  /** The area of one copy, in the problem's unit squared; positive. */
  public double area() {
    Spot first = outline.get(0);
    double twice = 0;
    for (int i = 1; i + 1 < outline.size(); i++) {
      Spot a = outline.get(i);
      Spot b = outline.get(i + 1);
      twice +=
          (a.x() - first.x()) * (b.y() - first.y()) - (b.x() - first.x()) * (a.y() - first.y());
    }
    return Math.abs(twice) / 2;
  }
}
