package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.OpenedPiece;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.NotchPlace;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.split.PieceParts;

/**
 * Two notches that come together when a seam is sewn, and so lie on the same place of a stripe or
 * check.
 *
 * @param notch their name
 * @param one on the first layer of the seam
 * @param other on another layer
 */
public record MatchedPair(String notch, End one, End other) {
  /**
   * One of the two.
   *
   * @param piece the piece's name
   * @param copy the name of its copy; blank where it is any
   * @param mirrored whether it is on a copy that is cut as the mirror image of the drawing
   * @param at where it lies at the stitch line, in the drawing's plane; beyond the fold where it is
   *     on that half
   */
  public record End(String piece, String copy, boolean mirrored, Point at) {
    /** On any copy that is cut so. */
    public End(String piece, boolean mirrored, Point at) {
      this(piece, "", mirrored, at);
    }
  }

  /**
   * The pairs that a pattern's seams bring together in one size, in the order of the seams. Where a
   * layer has several notches of one name, the first goes with the first as the needle meets them;
   * where the other layer has not as many, none of them is a pair. A placement line bears no
   * notches: there a pair lies as far along the seam as the notch of the other layer.
   *
   * @param notches the names that are to match
   */
  public static List<MatchedPair> of(SizedPattern sized, List<String> notches) {
    List<MatchedPair> pairs = new ArrayList<>();
    for (Seam seam : sized.seams()) {
      for (Seam.Join join : seam.joins()) {
        for (String notch : notches) {
          Seam.Layer base = join.layers().get(0);
          for (Seam.Layer layer : join.layers().subList(1, join.layers().size())) {
            List<End> first = ends(sized, base, layer, notch);
            List<End> others = ends(sized, layer, base, notch);
            for (int i = 0; i < first.size() && first.size() == others.size(); i++) {
              pairs.add(new MatchedPair(notch, first.get(i), others.get(i)));
            }
          }
        }
      }
    }
    return pairs;
  }

  private static List<End> ends(
      SizedPattern sized, Seam.Layer layer, Seam.Layer other, String notch) {
    boolean onLine =
        layer.run().stream()
            .allMatch(
                place ->
                    sized
                        .piece(place.piece())
                        .filter(piece -> piece.edge(place.edge()).isEmpty())
                        .isPresent());
    return onLine ? onLine(sized, layer, other, notch) : ends(sized, layer, notch);
  }

  /** Where the notches of another layer come to lie on a layer of placement lines. */
  private static List<End> onLine(
      SizedPattern sized, Seam.Layer layer, Seam.Layer other, String notch) {
    List<End> ends = new ArrayList<>();
    for (LayerWalk.Stop stop : LayerWalk.of(other, sized).stops()) {
      if (stop.isNotch() && stop.name().filter(notch::equals).isPresent()) {
        LayerWalk.spot(layer, sized, stop.distance())
            .ifPresent(
                spot ->
                    sized
                        .piece(spot.place().piece())
                        .ifPresent(
                            piece ->
                                addHalves(
                                    piece,
                                    spot.place(),
                                    isMirrored(piece, spot.place()),
                                    spot.point(),
                                    ends)));
      }
    }
    return ends;
  }

  private static List<End> ends(SizedPattern sized, Seam.Layer layer, String notch) {
    List<End> ends = new ArrayList<>();
    for (EdgePlace place : layer.run()) {
      sized.piece(place.piece()).ifPresent(piece -> ends.addAll(ends(piece, place, notch)));
    }
    return ends;
  }

  /** The notches of a name on one stretch of an edge, as the needle meets them. */
  private static List<End> ends(Piece piece, EdgePlace place, String name) {
    Optional<Edge> edge = piece.edge(place.edge());
    if (edge.isEmpty()) {
      return List.of();
    }
    double from = along(piece, edge.get(), place.from(), 0);
    double to = along(piece, edge.get(), place.to(), edge.get().path().length());
    boolean mirroredCopy = isMirrored(piece, place);
    Comparator<Notch> order =
        Comparator.comparingDouble(notch -> NotchPlace.along(edge.get(), notch));
    List<End> ends = new ArrayList<>();
    piece.notches().stream()
        .filter(notch -> notch.edge().equals(place.edge()))
        .filter(notch -> notch.name().filter(name::equals).isPresent())
        .filter(notch -> isWithin(NotchPlace.along(edge.get(), notch), from, to))
        .sorted(place.reversed() ? order.reversed() : order)
        .forEach(notch -> addHalves(piece, place, mirroredCopy, at(edge.get(), notch), ends));
    return ends;
  }

  private static boolean isMirrored(Piece piece, EdgePlace place) {
    return piece.card().copies().stream()
        .filter(copy -> copy.name().equals(place.copy()))
        .anyMatch(Copy::mirrored);
  }

  private static double along(Piece piece, Edge edge, Optional<String> notch, double otherwise) {
    return notch
        .map(name -> NotchPlace.along(piece, edge, name).orElse(otherwise))
        .orElse(otherwise);
  }

  private static boolean isWithin(double at, double from, double to) {
    return at >= Math.min(from, to) - Tolerance.DRAWN_LENGTH
        && at <= Math.max(from, to) + Tolerance.DRAWN_LENGTH;
  }

  private static Point at(Edge edge, Notch notch) {
    return edge.path().at(Math.min(notch.distance(), edge.path().length())).point();
  }

  private static void addHalves(
      Piece piece, EdgePlace place, boolean mirrored, Point at, List<End> into) {
    Optional<Motion> fold = OpenedPiece.of(piece).mirror();
    boolean whole = place.half() == EdgePlace.Half.WHOLE;
    if (fold.isEmpty() || place.half() != EdgePlace.Half.MIRRORED) {
      into.add(new End(piece.name(), place.copy(), mirrored, at));
    }
    if (fold.isPresent() && (whole || place.half() == EdgePlace.Half.MIRRORED)) {
      Point image = fold.get().apply(at);
      if (!whole || !image.isAt(at)) {
        into.add(new End(piece.name(), place.copy(), mirrored, image));
      }
    }
  }

  /**
   * The pairs that hold where a piece is cut in parts: each end also on the part that has its
   * notch, and the parts one with another and, where the whole is matched at all, with the whole,
   * so that the cloth goes on over their seams as if it had not been cut.
   */
  public static List<MatchedPair> withParts(List<MatchedPair> pairs, List<PieceParts> splits) {
    List<MatchedPair> all = new ArrayList<>(pairs);
    for (PieceParts split : splits) {
      for (MatchedPair pair : pairs) {
        List<End> ones = onParts(pair.one, pair.notch, split);
        List<End> others = onParts(pair.other, pair.notch, split);
        ones.forEach(one -> all.add(new MatchedPair(pair.notch, one, pair.other)));
        others.forEach(other -> all.add(new MatchedPair(pair.notch, pair.one, other)));
        for (End one : ones) {
          others.forEach(other -> all.add(new MatchedPair(pair.notch, one, other)));
        }
      }
      addJoins(split, all);
      String whole = split.whole().name();
      if (pairs.stream().anyMatch(pair -> pair.isOn(whole))) {
        addWhole(split, all);
      }
    }
    return all;
  }

  private boolean isOn(String piece) {
    return one.piece.equals(piece) || other.piece.equals(piece);
  }

  /** An end on the parts that have its notch in the same place. */
  private static List<End> onParts(End end, String notch, PieceParts split) {
    if (!end.piece.equals(split.whole().name())) {
      return List.of();
    }
    List<End> ends = new ArrayList<>();
    Optional<Motion> fold = OpenedPiece.of(split.whole()).mirror();
    for (Piece part : split.parts()) {
      boolean halved = fold.isPresent() && part.foldEdge().isEmpty();
      if (hasNotch(part, notch, end.at)) {
        ends.add(new End(part.name(), end.copy, end.mirrored, end.at));
      } else if (fold.isPresent() && hasNotch(part, notch, fold.get().apply(end.at))) {
        Point drawn = fold.get().apply(end.at);
        ends.add(
            halved
                ? new End(part.name(), end.copy, !end.mirrored, drawn)
                : new End(part.name(), end.copy, end.mirrored, end.at));
      }
    }
    return ends;
  }

  private static boolean hasNotch(Piece part, String name, Point at) {
    return part.notches().stream()
        .filter(notch -> notch.name().filter(name::equals).isPresent())
        .anyMatch(
            notch ->
                part.edge(notch.edge())
                    .filter(edge -> at(edge, notch).distanceTo(at) <= Tolerance.DRAWN_LENGTH)
                    .isPresent());
  }

  /** From the drawn half of a piece to its other half, where its fold runs along the grain. */
  private static Optional<Motion> otherHalf(Piece whole) {
    Vector grain = whole.grain().map(own -> own.direction()).orElse(new Vector(0, 1));
    Point from = whole.stackPoint();
    return OpenedPiece.of(whole)
        .mirror()
        .filter(
            mirror ->
                mirror.apply(from.plus(grain)).minus(mirror.apply(from)).minus(grain).length()
                    <= Tolerance.SAME_DIRECTION);
  }

  /** A place of a part on the half beyond the fold: on itself, or on its mirrored copy. */
  private static End onOtherHalf(Piece part, Point at, Motion mirror) {
    return part.foldEdge().isPresent()
        ? new End(part.name(), false, mirror.apply(at))
        : new End(part.name(), true, at);
  }

  private static void addJoins(PieceParts split, List<MatchedPair> into) {
    for (PieceParts.Join join : split.joins()) {
      Piece first = split.parts().get(join.first());
      Piece second = split.parts().get(join.second());
      Point at = first.edge(join.seam()).orElseThrow().path().start();
      boolean acrossFold = join.first() == join.second();
      into.add(
          new MatchedPair(
              join.seam(),
              new End(first.name(), false, at),
              new End(second.name(), acrossFold, at)));
      if (!acrossFold) {
        otherHalf(split.whole())
            .ifPresent(
                mirror ->
                    into.add(
                        new MatchedPair(
                            join.seam(),
                            onOtherHalf(first, at, mirror),
                            onOtherHalf(second, at, mirror))));
      }
    }
  }

  private static void addWhole(PieceParts split, List<MatchedPair> into) {
    for (Piece part : split.parts()) {
      Point at = part.edges().get(0).path().start();
      into.add(
          new MatchedPair(
              split.split().name(),
              new End(split.whole().name(), false, at),
              new End(part.name(), false, at)));
    }
  }
}
