package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.OnPath;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.SewnEdge;
import org.jspecify.annotations.Nullable;

/**
 * Notches that a seam puts on all its layers at once: both partners at equal length from the same
 * end of the seam, or at the same share of it (handbook section 1, Notches).
 */
public record SeamNotchNode(
    String seam,
    List<List<Stop>> layers,
    PlaceForm place,
    Notch.Kind kind,
    Optional<String> name,
    Origin origin)
    implements DrawnNode<EdgeNotches.Several> {
  public SeamNotchNode {
    layers = layers.stream().map(List::copyOf).toList();
  }

  /**
   * One edge of a layer.
   *
   * @param edge the slot of its path, in the designer's direction
   * @param from the slot of the notches at which it starts, or {@link Node#NONE}
   * @param to the slot of the notches at which it ends, or NONE
   * @param reversed whether it is sewn against her direction
   */
  public record Stop(String piece, String edgeName, int edge, int from, int to, boolean reversed) {}

  @Override
  public int[] inputs() {
    return IntStream.concat(
            layers.stream()
                .flatMap(List::stream)
                .flatMapToInt(stop -> IntStream.of(Node.slots(stop.edge, stop.from, stop.to))),
            IntStream.of(place.inputs()))
        .distinct()
        .toArray();
  }

  @Override
  public void check(Typing typing) {
    place.check(typing);
  }

  @Override
  public EdgeNotches.Several value(Values values) {
    List<EdgeNotches> notches = new ArrayList<>();
    List<Walked> first = walked(values, layers.get(0));
    for (List<Stop> layer : layers) {
      List<Walked> walk = walked(values, layer);
      double length = total(walk);
      String edge = layer.get(0).piece + "." + layer.get(0).edgeName;
      for (double distance : places(values, first, length, edge)) {
        notches.add(notch(walk, distance, length));
      }
    }
    return new EdgeNotches.Several(notches);
  }

  /** A stretch of an edge, from one length along it to another, as sewn. */
  private record Walked(Stop stop, SewnEdge sewn, double from, double to) {
    double length() {
      return Math.abs(to - from);
    }

    double at(double walked) {
      return from + Math.signum(to - from) * walked;
    }
  }

  private static List<Walked> walked(Values values, List<Stop> layer) {
    List<Walked> walk = new ArrayList<>();
    for (Stop stop : layer) {
      SewnEdge sewn = values.sewn(stop.edge);
      double length = sewn.length();
      double start =
          stop.from == Node.NONE
              ? (stop.reversed ? length : 0)
              : sewn.sewnAt(at(values, stop.from));
      double end =
          stop.to == Node.NONE ? (stop.reversed ? 0 : length) : sewn.sewnAt(at(values, stop.to));
      walk.add(new Walked(stop, sewn, start, end));
    }
    return walk;
  }

  private static double at(Values values, int notch) {
    List<EdgeNotches> all = values.thing(notch, EdgeNotches.Several.class).all();
    if (all.isEmpty() || all.get(0).distances().isEmpty()) {
      throw new Failure(Cause.of("notch-absent").with("notch", values.program().text(notch)));
    }
    return all.get(0).distances().get(0);
  }

  private static double total(List<Walked> walk) {
    return walk.stream().mapToDouble(Walked::length).sum();
  }

  private List<Double> places(Values values, List<Walked> first, double length, String edge) {
    if (place instanceof PlaceForm.Even even) {
      return IntStream.range(1, even.parts()).mapToObj(i -> length * i / even.parts()).toList();
    } else if (place instanceof PlaceForm.Measured measured) {
      return List.of(OnPath.distance(values, length, measured.amount(), measured.fromEnd(), edge));
    }
    int point = ((PlaceForm.AtPoint) place).point();
    double before = 0;
    @Nullable Failure last = null;
    for (Walked stretch : first) {
      try {
        double on = stretch.sewn.sewnAt(OnPath.distance(values, stretch.stop.edge, point));
        double walked = (on - stretch.from) * Math.signum(stretch.to - stretch.from);
        if (walked >= -Tolerance.DRAWN_LENGTH
            && walked <= stretch.length() + Tolerance.DRAWN_LENGTH) {
          return List.of(before + walked);
        }
      } catch (Failure off) {
        last = off;
      }
      before += stretch.length();
    }
    throw last == null
        ? new Failure(
            Cause.of("point-off-seam")
                .with("point", values.program().text(point))
                .with("seam", seam))
        : last;
  }

  private EdgeNotches notch(List<Walked> walk, double distance, double length) {
    if (distance > length + Tolerance.DRAWN_LENGTH) {
      throw new Failure(
          Cause.of("notch-past-layer")
              .with("edge", walk.get(0).stop.piece + "." + walk.get(0).stop.edgeName)
              .with("asked", Argument.mm(distance))
              .with("length", Argument.mm(length)));
    }
    double before = 0;
    for (int i = 0; i < walk.size(); i++) {
      Walked stretch = walk.get(i);
      if (i + 1 == walk.size() || distance <= before + stretch.length()) {
        Stop stop = stretch.stop;
        double on = stretch.sewn.placeOf(stretch.at(Math.min(stretch.length(), distance - before)));
        return new EdgeNotches(stop.piece, stop.edgeName, List.of(on), kind, name, origin);
      }
      before += stretch.length();
    }
    throw new IllegalStateException("a layer has at least one edge");
  }
}
