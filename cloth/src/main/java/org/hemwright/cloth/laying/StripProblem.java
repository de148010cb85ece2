package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is to be laid, and on what: the question that {@link Laying} answers.
 *
 * @param name what the caller calls it
 * @param stripWidth the fixed width of the strip, across it (y), positive
 * @param shapes what is to be laid, at least one shape, each id once
 */
public record StripProblem(String name, double stripWidth, List<LooseShape> shapes) {

  /** The most copies, over all shapes, that one strip takes. */
  public static final int MOST_COPIES = 2_000;

  /** The most corners that one outline may have. */
  public static final int MOST_CORNERS = 1_000;

  /** Coordinates, and all copies laid in a row, stay below this many strip widths. */
  public static final double MOST_WIDTHS = 0x1p16;

  /**
   * Checks the problem.
   *
   * @throws IllegalArgumentException naming every fault, where one of them is that a shape fits the
   *     strip in no turn
   */
  public StripProblem {
    shapes = List.copyOf(shapes);
    List<Fault> faults = faults(stripWidth, shapes);
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(
          faults.stream().map(Fault::message).collect(Collectors.joining("; ")));
    }
  }

  /**
   * Something that keeps shapes from being laid.
   *
   * @param shape the place in the list of the shape that it is about, or −1 where it is about the
   *     strip
   * @param message what is wrong, with the values, and what would mend it
   */
  public record Fault(int shape, String message) {}

  /** How many copies there are over all shapes. */
  public int copies() {
    int copies = 0;
    for (LooseShape shape : shapes) {
      copies += shape.demand();
    }
    return copies;
  }

  /** The area of all copies together, in the problem's unit squared. */
  public double totalArea() {
    double area = 0;
    for (LooseShape shape : shapes) {
      area += shape.demand() * shape.area();
    }
    return area;
  }

  /**
   * Everything that keeps these shapes from being laid, in the order of the shapes; empty when
   * nothing does.
   */
  public static List<Fault> faults(double stripWidth, List<LooseShape> shapes) {
    if (!(stripWidth > 0) || stripWidth < 1e-100 || stripWidth > 1e100) {
      return List.of(new Fault(-1, "the strip's width is " + stripWidth + "; it must be above 0"));
    }
    if (shapes.isEmpty()) {
      return List.of(new Fault(-1, "there is no shape to lay; give at least one"));
    }
    List<Fault> faults = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    long copies = 0;
    double row = 0;
    for (int i = 0; i < shapes.size(); i++) {
      LooseShape shape = shapes.get(i);
      if (!ids.add(shape.id())) {
        faults.add(new Fault(i, "two shapes have the id " + shape.id() + "; give each its own"));
      }
      for (String message : sizeFaults(stripWidth, shape)) {
        faults.add(new Fault(i, message));
      }
      copies += shape.demand();
      row += shape.demand() * reach(shape);
    }
    if (copies > MOST_COPIES) {
      faults.add(
          new Fault(
              -1,
              "there are " + copies + " copies to lay; at most " + MOST_COPIES + " go on a strip"));
    }
    if (faults.isEmpty() && row > MOST_WIDTHS * stripWidth) {
      faults.add(
          new Fault(
              -1,
              "laid in a row the shapes are more than "
                  + (long) MOST_WIDTHS
                  + " times as long as the strip is wide; check the units"));
    }
    if (faults.isEmpty()) {
      StripGrid grid = StripGrid.of(stripWidth, shapes);
      for (int i = 0; i < shapes.size(); i++) {
        for (String message : ShapeFaults.of(shapes.get(i), stripWidth, grid)) {
          faults.add(new Fault(i, message));
        }
      }
    }
    return faults;
  }

  private static List<String> sizeFaults(double stripWidth, LooseShape shape) {
    if (shape.outline().size() > MOST_CORNERS) {
      return List.of(
          "shape "
              + shape.id()
              + " has "
              + shape.outline().size()
              + " corners; simplify it to "
              + MOST_CORNERS
              + " or fewer");
    }
    for (Spot corner : shape.outline()) {
      if (Math.max(Math.abs(corner.x()), Math.abs(corner.y())) > MOST_WIDTHS * stripWidth) {
        return List.of(
            "shape "
                + shape.id()
                + " has a corner at "
                + corner.x()
                + ", "
                + corner.y()
                + ", far outside any strip "
                + stripWidth
                + " wide; check the units");
      }
    }
    return List.of();
  }

  /** An upper bound of the shape's length in any turn. */
  private static double reach(LooseShape shape) {
    double minX = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (Spot corner : shape.outline()) {
      minX = Math.min(minX, corner.x());
      maxX = Math.max(maxX, corner.x());
      minY = Math.min(minY, corner.y());
      maxY = Math.max(maxY, corner.y());
    }
    return (maxX - minX) + (maxY - minY);
  }
}
