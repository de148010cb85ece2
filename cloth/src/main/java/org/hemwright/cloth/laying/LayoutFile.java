package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Place;

/**
 * A file that says where loose shapes lie, to be checked against the problem.
 *
 * <p>In: {@code {length, placements:[{id, rotationDegrees, x, y}]}}, as {@link LayFile#write} makes
 * it; {@code stripWidth} where the layout was made for another width than the problem's. Published
 * layouts say {@code stripWidthUsed} and {@code reportedLength}, the latter rounded to its last
 * digit. Other fields are passed over.
 *
 * @param stripWidth the width that the file states, in the problem's unit
 * @param layout what it says
 * @param places where each placement stands in the file
 */
public record LayoutFile(OptionalDouble stripWidth, Layout layout, List<Origin> places) {

  public LayoutFile {
    places = List.copyOf(places);
  }

  LayoutFile(double stripWidth, Layout layout, List<Origin> places) {
    this(
        Double.isNaN(stripWidth) ? OptionalDouble.empty() : OptionalDouble.of(stripWidth),
        layout,
        places);
  }

  /**
   * Reads a layout.
   *
   * @param fileName what the file is called in problems
   * @param text what it holds
   * @throws LayFileRefused with every problem found
   */
  public static LayoutFile read(String fileName, String text) throws LayFileRefused {
    return new LayoutReader(fileName, text).read();
  }

  /**
   * What speaks against this layout of a problem's shapes, each finding with its place in this
   * file; empty: {@link LayoutChecker} accepts it.
   */
  public List<Finding> objections(StripProblem problem) {
    double width = stripWidth.orElse(problem.stripWidth());
    List<Finding> findings = new ArrayList<>();
    List<StripProblem.Fault> faults = StripProblem.faults(width, problem.shapes());
    if (!faults.isEmpty()) {
      return faults.stream().map(StripProblem.Fault::finding).toList();
    }
    StripProblem asStated = new StripProblem(problem.name(), width, problem.shapes());
    for (Objection objection : new LayoutChecker(asStated).objections(layout)) {
      Finding finding = objection.finding();
      findings.add(
          objection.placement() < 0 ? finding : at(places.get(objection.placement()), finding));
    }
    return findings;
  }

  private static Finding at(Origin origin, Finding finding) {
    Finding.Builder placed = Finding.fail(finding.code(), finding.subject()).at(Place.in(origin));
    finding.arguments().forEach(placed::with);
    return placed.build();
  }
}
