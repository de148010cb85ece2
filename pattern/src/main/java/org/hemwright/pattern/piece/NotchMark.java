package org.hemwright.pattern.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/**
 * A notch as it stands on the cut line, square to the stitch line (handbook section 1, Notches).
 *
 * @param notch the notch, at the stitch line
 * @param ticks its marks, in the direction of the outline: one, or two for a double notch
 */
public record NotchMark(Notch notch, List<Tick> ticks) {
  public NotchMark {
    ticks = List.copyOf(ticks);
    if (ticks.isEmpty()) {
      throw new IllegalArgumentException("a notch has a mark");
    }
  }

  /**
   * One mark.
   *
   * @param at on the cut line
   * @param inward unit, toward the stitch line
   * @param depth how far the mark may be cut in (mm): at most half of the allowance there, so 0
   *     where there is none and nothing may be cut
   */
  public record Tick(Point at, Vector inward, double depth) {
    /** Where the mark ends. */
    public Point tip() {
      return at.plus(inward.times(depth));
    }

    /** The mark carried by a motion. */
    public Tick moved(Motion motion) {
      return new Tick(motion.apply(at), motion.apply(inward), depth);
    }
  }

  /**
   * The marks of all notches of a piece, in the order of its notches. The two marks of a double
   * notch stand either side of its place, moved along where they would run past a corner; of one at
   * the fold only the mark on the drawn half is here.
   */
  public static List<NotchMark> on(Piece piece, CutLine cutLine, NotchSize size) {
    List<NotchMark> marks = new ArrayList<>();
    for (Notch notch : piece.notches()) {
      for (int i = 0; i < piece.edges().size(); i++) {
        Edge edge = piece.edges().get(i);
        if (edge.name().equals(notch.edge())) {
          List<Tick> ticks = new ArrayList<>();
          for (double place : places(piece, notch, edge.path().length(), size.spacing())) {
            PathPlace at = edge.path().at(place);
            Path outline = cutLine.outline().path();
            ticks.add(tick(edge, at, cutLine.edges().get(i), outline, size.depth()));
          }
          marks.add(new NotchMark(notch, ticks));
        }
      }
    }
    return List.copyOf(marks);
  }

  private static double[] places(Piece piece, Notch notch, double length, double spacing) {
    double place = Math.min(length, notch.distance());
    if (notch.kind() == Notch.Kind.SINGLE) {
      return new double[] {place};
    }
    double half = Math.min(spacing, length) / 2;
    if (OpenedPiece.of(piece).isOnFold(notch)) {
      return new double[] {place < length / 2 ? half : length - half};
    }
    double middle = Math.max(half, Math.min(length - half, place));
    return new double[] {middle - half, middle + half};
  }

  private static Tick tick(
      Edge edge, PathPlace place, Path stretch, Path outline, double usualDepth) {
    double width = edge.allowance().width();
    Vector outward = place.left().negated();
    Point at = onCutLine(place.point(), outward, width, stretch, outline);
    double room = at.distanceTo(place.point());
    return new Tick(at, outward.negated(), Math.min(usualDepth, Math.min(width, room) / 2));
  }

  /**
   * Straight out from the stitch line to the cut line. Where the cut line is trimmed it is met
   * sooner.
   */
  private static Point onCutLine(
      Point from, Vector outward, double width, Path stretch, Path outline) {
    if (width <= Tolerance.SAME_POINT) {
      return from;
    }
    Point straightOut = from.plus(outward.times(width));
    Point nearest = stretch.nearest(straightOut).point();
    if (nearest.distanceTo(straightOut) <= Tolerance.OFFSET) {
      return nearest;
    }
    Optional<Meeting> first =
        Path.straight(from, from.plus(outward.times(2 * width))).meetings(outline).stream()
            .filter(meeting -> meeting.distanceOnThis() > Tolerance.SAME_POINT)
            .min(Comparator.comparingDouble(Meeting::distanceOnThis));
    return first.map(Meeting::point).orElse(nearest);
  }

  /** The notch carried by a mirroring to the other half of an opened piece. */
  NotchMark mirrored(Motion mirror, Notch carried) {
    return new NotchMark(carried, mirrored(mirror));
  }

  /** A notch on the fold, which has its marks on both halves of the opened piece. */
  NotchMark onBothHalves(Motion mirror) {
    List<Tick> both = new ArrayList<>(ticks);
    for (Tick tick : mirrored(mirror)) {
      if (ticks.stream().noneMatch(known -> known.at().isAt(tick.at()))) {
        both.add(tick);
      }
    }
    return new NotchMark(notch, both);
  }

  private List<Tick> mirrored(Motion mirror) {
    List<Tick> images = new ArrayList<>();
    for (Tick tick : ticks) {
      images.add(0, tick.moved(mirror));
    }
    return images;
  }
}
