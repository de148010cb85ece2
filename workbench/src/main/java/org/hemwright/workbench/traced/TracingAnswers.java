package org.hemwright.workbench.traced;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the designer says of a drawing.
 *
 * @param file its name in the pattern folder
 * @param roles by name of a part, what it is
 * @param scale how long the scale line is, as she types it: {@code 10 cm}
 * @param start the corner where the first edge starts: {@code top left} and its like, or a dot's
 *     name
 * @param clockwise whether edges are named clockwise
 * @param corners by how many degrees a line turns at a corner
 * @param less the allowance that the line has, as she types it; empty for none
 * @param edges what she says of each edge, in order; edges beyond them get names of their own
 * @param card what the piece says of itself
 */
public record TracingAnswers(
    String file,
    Map<String, PartRole> roles,
    String scale,
    String start,
    boolean clockwise,
    double corners,
    String less,
    List<EdgeAnswer> edges,
    Card card) {
  public TracingAnswers {
    roles = Collections.unmodifiableMap(new LinkedHashMap<>(roles));
    edges = List.copyOf(edges);
    if (!(corners > 0 && corners < 180)) {
      throw new IllegalArgumentException("a corner turns by more than nothing and less than half");
    }
  }

  /**
   * What she says of an edge.
   *
   * @param name its name; empty for the usual one
   * @param less the allowance that it has, where that is another than the usual one; may be empty
   * @param leftOut whether it is only the end of an allowance, and no edge
   */
  public record EdgeAnswer(String name, String less, boolean leftOut) {}

  /**
   * What the piece says of itself.
   *
   * @param name in the document
   * @param title what people call it
   * @param number on the paper
   * @param count how many are cut
   * @param fabric of which fabric
   * @param mirrored whether the second is cut mirrored
   * @param fold the edge that lies on the fold; may be empty
   * @param allowance what is added to it, as she types it; empty for none
   * @param size the size that was drawn, where it is not the base size; may be empty
   * @param instead the piece of the document whose place it takes, edges of the same names and all
   */
  public record Card(
      String name,
      String title,
      int number,
      int count,
      String fabric,
      boolean mirrored,
      String fold,
      String allowance,
      String size,
      Optional<String> instead) {}

  /** The first part that is this. */
  Optional<String> part(PartRole role) {
    return parts(role).stream().findFirst();
  }

  /** The parts that are this, in the order of the drawing. */
  List<String> parts(PartRole role) {
    return roles.entrySet().stream()
        .filter(each -> each.getValue() == role)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** The part that is the outline: the stitch line, where there is one. */
  public Optional<String> outline() {
    return part(PartRole.STITCH_LINE).or(() -> part(PartRole.CUT_LINE));
  }

  /** Whether the outline has its allowance. */
  public boolean withAllowance() {
    return part(PartRole.STITCH_LINE).isEmpty() && part(PartRole.CUT_LINE).isPresent();
  }

  /** Her names for the edges, and names of their own where she has none. */
  List<String> edgeNames(int count) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Optional<EdgeAnswer> said = i < edges.size() ? Optional.of(edges.get(i)) : Optional.empty();
      boolean leftOut = withAllowance() && said.isPresent() && said.get().leftOut();
      String name = said.map(EdgeAnswer::name).map(String::strip).orElse("");
      names.add(leftOut ? "" : name.isEmpty() ? "edge_" + (i + 1) : name.replaceAll("\\s+", "_"));
    }
    return names;
  }
}
