package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;

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

  private static final double LEAST_WIDTH = 1e-100;
  private static final double MOST_WIDTH = 1e100;

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
      Wording wording = Wording.of(Laying.messages());
      throw new IllegalArgumentException(
          faults.stream()
              .map(fault -> wording.message(fault.finding()))
              .collect(Collectors.joining(" ")));
    }
  }

  /**
   * Something that keeps shapes from being laid.
   *
   * @param shape the place in the list of the shape that it is about, or −1 where it is about the
   *     strip or about all shapes together
   * @param finding what is wrong; {@link Laying#messages} has its sentence and what would mend it
   */
  public record Fault(int shape, Finding finding) {}

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
    if (!(stripWidth >= LEAST_WIDTH && stripWidth <= MOST_WIDTH)) {
      return List.of(new Fault(-1, wrong(stripWidth)));
    }
    if (shapes.isEmpty()) {
      return List.of(new Fault(-1, strip("lay-nothing").build()));
    }
    List<Fault> faults = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    long copies = 0;
    double row = 0;
    for (int i = 0; i < shapes.size(); i++) {
      LooseShape shape = shapes.get(i);
      if (!ids.add(shape.id())) {
        faults.add(new Fault(i, Finding.fail("lay-id-twice", shape.id()).build()));
      }
      for (Finding finding : ShapeFaults.ofSize(shape, stripWidth)) {
        faults.add(new Fault(i, finding));
      }
      copies += shape.demand();
      row += shape.demand() * reach(shape);
    }
    if (copies > MOST_COPIES) {
      Finding finding =
          strip("lay-copies")
              .with("count", Argument.of(copies))
              .with("most", Argument.of(MOST_COPIES))
              .build();
      faults.add(new Fault(-1, finding));
    }
    if (faults.isEmpty() && row > MOST_WIDTHS * stripWidth) {
      Finding finding = strip("lay-row").with("most", Argument.of((long) MOST_WIDTHS)).build();
      faults.add(new Fault(-1, finding));
    }
    if (faults.isEmpty()) {
      StripGrid grid = StripGrid.of(stripWidth, shapes);
      for (int i = 0; i < shapes.size(); i++) {
        for (Finding finding : ShapeFaults.of(shapes.get(i), stripWidth, grid)) {
          faults.add(new Fault(i, finding));
        }
      }
    }
    return faults;
  }

  private static Finding wrong(double stripWidth) {
    Argument width = Argument.of(Double.toString(stripWidth));
    if (stripWidth > MOST_WIDTH) {
      Argument most = Argument.of(Double.toString(MOST_WIDTH));
      return strip("lay-width-much").with("width", width).with("most", most).build();
    }
    if (stripWidth > 0) {
      Argument least = Argument.of(Double.toString(LEAST_WIDTH));
      return strip("lay-width-little").with("width", width).with("least", least).build();
    }
    return strip("lay-width").with("width", width).build();
  }

  private static Finding.Builder strip(String code) {
    return Finding.fail(code, "strip");
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
