package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.quantity.Quantity;

/** Collects what is to be said about one piece while its cut line is drawn. */
final class AllowanceFindings {
  private final Piece piece;
  private final List<Finding> found = new ArrayList<>();

  AllowanceFindings(Piece piece) {
    this.piece = piece;
  }

  List<Finding> all() {
    return List.copyOf(found);
  }

  boolean anyFails() {
    return found.stream().anyMatch(finding -> finding.status() == Status.FAIL);
  }

  private Finding.Builder fail(String code, Edge edge, Point at) {
    return Finding.fail(code, piece.name() + "." + edge.name())
        .at(Place.on(edge.origin(), piece.name(), at))
        .with("piece", piece.name())
        .with("edge", edge.name());
  }

  private Finding.Builder warn(String code, Edge edge, Point at) {
    return Finding.warn(code, piece.name() + "." + edge.name())
        .at(Place.on(edge.origin(), piece.name(), at))
        .with("piece", piece.name())
        .with("edge", edge.name());
  }

  /** The allowances that meet at a corner take more room than the shorter of its edges has. */
  void withoutRoom(Edge one, Edge other, Point corner) {
    boolean oneIsShorter = one.path().length() <= other.path().length();
    Edge edge = oneIsShorter ? one : other;
    Edge neighbour = oneIsShorter ? other : one;
    found.add(
        fail("allowance-without-room", edge, corner)
            .with("neighbour", neighbour.name())
            .with("width", Argument.mm(Math.max(widthOf(edge), widthOf(neighbour))))
            .with("length", Argument.mm(edge.path().length()))
            .build());
  }

  /** The cut line of the whole piece crosses itself. */
  void crosses(Edge edge, Point at) {
    found.add(fail("cut-line-crosses", edge, at).build());
  }

  /** An inward curve is tighter than the allowance is wide; the cut line is trimmed there. */
  void tighterThanAllowance(Edge edge, double radius, Point at) {
    found.add(
        warn("allowance-wider-than-curve", edge, at)
            .values(radius, widthOf(edge), "mm")
            .with("radius", Argument.mm(radius))
            .with("width", Argument.mm(widthOf(edge)))
            .build());
  }

  /** An inward curve is so tight, so close to a corner, that trimming leaves a hook. */
  void tooTightForAllowance(Edge edge, double radius, Point at) {
    found.add(
        fail("allowance-too-wide-for-curve", edge, at)
            .values(radius, widthOf(edge), "mm")
            .with("radius", Argument.mm(radius))
            .with("width", Argument.mm(widthOf(edge)))
            .build());
  }

  /** A hem reaches deeper into the piece than the edge beside it is long. */
  void hemTooDeep(Edge hem, Edge neighbour, double depth) {
    found.add(
        warn("hem-deeper-than-side", hem, hem.path().start())
            .with("neighbour", neighbour.name())
            .with("depth", Argument.mm(depth))
            .with("length", Argument.mm(neighbour.path().length()))
            .build());
  }

  /** The edge beside a hem never gets as deep into the piece as the hem is to be turned. */
  void hemWithoutSide(Edge hem, Edge neighbour, double depth) {
    found.add(
        fail("hem-without-side", hem, hem.path().start())
            .with("neighbour", neighbour.name())
            .with("depth", Argument.mm(depth))
            .build());
  }

  /** A hem bends more sharply than it is deep. */
  void hemTooCurved(Edge hem, double depth) {
    found.add(
        fail("hem-too-curved", hem, hem.path().start()).with("depth", Argument.mm(depth)).build());
  }

  /** A turn-under would run past the fold of its hem. */
  void turnUnderTooDeep(Edge hem, double depth, double under) {
    found.add(
        fail("turn-under-deeper-than-hem", hem, hem.path().start())
            .values(under, depth, "mm")
            .with("under", Argument.mm(under))
            .with("depth", Argument.mm(depth))
            .build());
  }

  /** A corner's finish names an edge that does not meet there. */
  void stranger(Edge before, Edge after, String named, Point corner) {
    found.add(
        fail("corner-edge-elsewhere", after, corner)
            .with("before", before.name())
            .with("named", named)
            .build());
  }

  /** A finish that needs an outward corner stands at an internal one, where it is trimmed. */
  void internal(Edge edge, Edge neighbour, String finish, Point corner) {
    found.add(
        warn("corner-finish-internal", edge, corner)
            .with("neighbour", neighbour.name())
            .with("finish", finish)
            .build());
  }

  /** A finish that needs a corner stands where the stitch line hardly turns. */
  void tooFlat(Edge edge, Edge neighbour, String finish, double turn, Point corner) {
    found.add(
        warn("corner-too-flat", edge, corner)
            .with("neighbour", neighbour.name())
            .with("finish", finish)
            .with("turn", Argument.of(Quantity.angle(turn)))
            .build());
  }

  /** A line that geometry cannot draw. */
  void cannotDraw(Edge edge, GeometryProblem problem) {
    found.add(
        fail("allowance-cannot-be-drawn", edge, edge.path().start())
            .with("reason", problem.reason())
            .build());
  }

  private static double widthOf(Edge edge) {
    return edge.allowance().width();
  }
}
