package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.OnPath;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.pattern.piece.SewnEdge;

/** Where along an edge something lies, as the document says it. */
public sealed interface PlaceForm {
  /** The slots it reads besides the edge. */
  int[] inputs();

  /** Says whether its quantities fit. */
  default void check(Typing typing) {}

  /** The lengths from the start of a path (mm), rising. */
  List<Double> on(Values values, int path);

  /** At a point on it. */
  record AtPoint(int point) implements PlaceForm {
    @Override
    public int[] inputs() {
      return Node.slots(point);
    }

    @Override
    public List<Double> on(Values values, int path) {
      return List.of(OnPath.distance(values, path, point));
    }
  }

  /** At several points on it. */
  record AtPoints(List<Integer> points) implements PlaceForm {
    public AtPoints {
      points = List.copyOf(points);
    }

    @Override
    public int[] inputs() {
      return points.stream().mapToInt(point -> point).toArray();
    }

    @Override
    public List<Double> on(Values values, int path) {
      return points.stream().map(point -> OnPath.distance(values, path, point)).sorted().toList();
    }
  }

  /** A length or a share from one end. */
  record Measured(int amount, boolean fromEnd) implements PlaceForm {
    @Override
    public int[] inputs() {
      return Node.slots(amount);
    }

    @Override
    public void check(Typing typing) {
      typing.lengthOrShare(amount);
    }

    @Override
    public List<Double> on(Values values, int path) {
      return List.of(OnPath.distance(values, path, amount, fromEnd));
    }
  }

  /** Evenly as sewn, without the ends. */
  record Even(int parts) implements PlaceForm {
    @Override
    public int[] inputs() {
      return Node.slots();
    }

    @Override
    public List<Double> on(Values values, int path) {
      SewnEdge sewn = values.sewn(path);
      List<Double> places = new ArrayList<>();
      for (int i = 1; i < parts; i++) {
        places.add(sewn.placeOf(sewn.length() * i / parts));
      }
      return places;
    }
  }
}
