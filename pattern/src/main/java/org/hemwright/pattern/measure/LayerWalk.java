package org.hemwright.pattern.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.SewnEdge;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.NotchPlace;
import org.hemwright.pattern.seam.Seam;

/**
 * One layer of a seam walked from its start to its end along the stitch line, darts and pleats
 * closed and gathers drawn up (handbook section 1, "Trueing and walking").
 *
 * @param length the whole (mm)
 * @param stops what is passed on the way, in order, ends left out
 */
public record LayerWalk(double length, List<Stop> stops) {
  public LayerWalk {
    stops = List.copyOf(stops);
  }

  /** What can be passed. */
  public enum Kind {
    /** A single notch. */
    NOTCH,
    /** A double notch. */
    DOUBLE_NOTCH,
    /** Another seam, where the layer goes on to another part. */
    SEAM,
    /** A fold, where it goes on to the other half of the same copy. */
    FOLD,
    /** A corner, where it goes on along another edge of the same part. */
    CORNER
  }

  /**
   * Something passed.
   *
   * @param distance from the layer's start (mm)
   * @param kind what
   * @param name of the notch, where it has one
   * @param place the place in the run that it lies on, or starts
   * @param point on the drawing of that place's piece
   */
  public record Stop(
      double distance, Kind kind, Optional<String> name, EdgePlace place, Point point) {
    /** Whether it is a notch of either kind. */
    public boolean isNotch() {
      return kind == Kind.NOTCH || kind == Kind.DOUBLE_NOTCH;
    }
  }

  /**
   * Where on the drawings a length along the layer falls.
   *
   * @param place the place in the run
   * @param along from the designer's start of that edge (mm)
   * @param point on its piece
   */
  public record Spot(EdgePlace place, double along, Point point) {}

  /** Walks a layer in one size; a place whose piece is missing there has no length. */
  public static LayerWalk of(Seam.Layer layer, SizedPattern sized) {
    List<Stop> stops = new ArrayList<>();
    double walked = 0;
    Optional<EdgePlace> before = Optional.empty();
    for (EdgePlace place : layer.run()) {
      Optional<Stretch> found = Stretch.of(place, sized);
      if (found.isEmpty()) {
        continue;
      }
      Stretch stretch = found.get();
      if (before.isPresent()) {
        stops.add(
            new Stop(
                walked, joint(before.get(), place), Optional.empty(), place, stretch.point(0)));
      }
      for (Notch notch : stretch.notches()) {
        double on = NotchPlace.along(stretch.edge.orElseThrow(), notch);
        double at = stretch.walkedTo(on);
        if (at > Tolerance.DRAWN_LENGTH && at < stretch.length() - Tolerance.DRAWN_LENGTH) {
          Kind kind = notch.kind() == Notch.Kind.DOUBLE ? Kind.DOUBLE_NOTCH : Kind.NOTCH;
          stops.add(new Stop(walked + at, kind, notch.name(), place, stretch.point(at)));
        }
      }
      walked += stretch.length();
      before = Optional.of(place);
    }
    stops.sort(Comparator.comparingDouble(Stop::distance));
    return new LayerWalk(walked, stops);
  }

  /** The whole length of a layer in one size (mm), where what is passed on the way is not asked. */
  public static double length(Seam.Layer layer, SizedPattern sized) {
    double walked = 0;
    for (EdgePlace place : layer.run()) {
      walked += Stretch.of(place, sized).map(Stretch::length).orElse(0.0);
    }
    return walked;
  }

  /** Where a length along a layer (mm, kept within it) falls; absent where no piece is drawn. */
  public static Optional<Spot> spot(Seam.Layer layer, SizedPattern sized, double distance) {
    double left = Math.max(0, distance);
    Optional<Spot> last = Optional.empty();
    for (EdgePlace place : layer.run()) {
      Optional<Stretch> stretch = Stretch.of(place, sized);
      if (stretch.isPresent()) {
        double here = Math.min(left, stretch.get().length());
        last = Optional.of(new Spot(place, stretch.get().along(here), stretch.get().point(here)));
        if (left <= stretch.get().length()) {
          return last;
        }
        left -= stretch.get().length();
      }
    }
    return last;
  }

  private static Kind joint(EdgePlace before, EdgePlace after) {
    boolean sameCopy = before.piece().equals(after.piece()) && before.copy().equals(after.copy());
    if (sameCopy && before.half() == after.half()) {
      return before.edge().equals(after.edge()) ? Kind.SEAM : Kind.CORNER;
    }
    return sameCopy && before.edge().equals(after.edge()) ? Kind.FOLD : Kind.SEAM;
  }

  /**
   * A place with its path, in the designer's direction, and the part of it that is sewn.
   *
   * @param from where it starts, as sewn
   * @param to where it ends, as sewn
   */
  private record Stretch(
      Path path,
      SewnEdge sewn,
      boolean pathReversed,
      double from,
      double to,
      boolean against,
      Optional<Edge> edge,
      Piece piece) {
    static Optional<Stretch> of(EdgePlace place, SizedPattern sized) {
      return sized.piece(place.piece()).flatMap(piece -> of(place, piece));
    }

    private static Optional<Stretch> of(EdgePlace place, Piece piece) {
      Optional<Edge> edge = piece.edge(place.edge());
      if (edge.isEmpty()) {
        return piece.marks(Mark.Placement.class).stream()
            .filter(line -> line.name().equals(place.edge()))
            .map(Mark.Placement::path)
            .findFirst()
            .map(
                line ->
                    new Stretch(
                        line,
                        new SewnEdge(line.length(), List.of()),
                        false,
                        0,
                        line.length(),
                        place.reversed(),
                        Optional.empty(),
                        piece));
      }
      Edge found = edge.get();
      double length = found.path().length();
      SewnEdge sewn = found.reversed() ? piece.sewn(found).reversed() : piece.sewn(found);
      double from =
          place.from().map(name -> NotchPlace.along(piece, found, name).orElse(0)).orElse(0.0);
      double to =
          place.to().map(n -> NotchPlace.along(piece, found, n).orElse(length)).orElse(length);
      return Optional.of(
          new Stretch(
              found.path(),
              sewn,
              found.reversed(),
              sewn.sewnAt(from),
              sewn.sewnAt(to),
              place.reversed(),
              edge,
              piece));
    }

    /** The notches of the edge that no closed dart or pleat hides. */
    List<Notch> notches() {
      return edge.stream()
          .flatMap(
              on ->
                  piece.notches().stream()
                      .filter(notch -> notch.edge().equals(on.name()))
                      .filter(
                          notch ->
                              !sewn.isFolded(NotchPlace.along(on, notch), Tolerance.DRAWN_LENGTH)))
          .toList();
    }

    double length() {
      return to - from;
    }

    /** The length walked when one is {@code along} from the designer's start. */
    double walkedTo(double along) {
      double closed = sewn.sewnAt(along);
      return against ? to - closed : closed - from;
    }

    /** How far from the designer's start one is after a length walked. */
    double along(double walked) {
      return sewn.placeOf(against ? to - walked : from + walked);
    }

    Point point(double walked) {
      double along = along(walked);
      double onPath = pathReversed ? path.length() - along : along;
      return path.at(Math.max(0, Math.min(path.length(), onPath))).point();
    }
  }
}
