package org.hemwright.cloth.laying;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Lays few shapes one after another, each where it touches what is laid already, and follows only
 * the most promising beginnings (after Bennell and Song 2010). A beginning is promising when it is
 * dense. The beam is doubled until the work is done.
 */
final class BeamSearch {

  private static final int WIDEST = 256;
  private static final int PLACES_TRIED = 2;

  private final LayTask task;
  private final CuttingTable table;
  private final long allowed;

  /**
   * A beginning: the copies laid in order, the last one here and the others in what it was laid on.
   */
  private record Node(
      int depth,
      List<Node> before,
      int shape,
      int cut,
      double x,
      double y,
      double end,
      double area,
      long print) {

    double density() {
      return area / end;
    }
  }

  BeamSearch(LayTask task, long work) {
    this.task = task;
    this.table = new CuttingTable(task);
    this.allowed = work;
  }

  long work() {
    return table.work();
  }

  /** The shortest layout found, or the given one when none is shorter. */
  Places search(Places start) {
    Places best = start;
    long spent = 0;
    for (int beam = 1; beam <= WIDEST && best.length > task.leastLength; beam *= 2) {
      long before = table.work();
      best = searchWith(beam, best);
      long took = table.work() - before;
      spent += took;
      if (spent + 2 * took > allowed) {
        break;
      }
    }
    return best;
  }

  private Places searchWith(int beam, Places start) {
    List<Node> level = new ArrayList<>();
    level.add(new Node(0, List.of(), -1, -1, 0, 0, 0, 0, 0));
    for (int depth = 0; depth < task.shapeOf.length && !level.isEmpty(); depth++) {
      List<Node> next = new ArrayList<>();
      Set<Long> seen = new HashSet<>();
      for (Node node : level) {
        for (Node child : children(node, start.length)) {
          if (seen.add(child.print())) {
            next.add(child);
          }
        }
      }
      next.sort(Comparator.comparingDouble(node -> -node.density()));
      level = next.subList(0, Math.min(beam, next.size()));
    }
    Places best = start;
    for (Node node : level) {
      best = node.end() < best.length ? places(node) : best;
    }
    return best;
  }

  private List<Node> children(Node node, double toBeat) {
    int[] left = new int[task.problem.shapes().size()];
    for (int shape : task.shapeOf) {
      left[shape]++;
    }
    table.clear();
    for (Node n = node; n.depth() > 0; n = n.before().get(0)) {
      left[n.shape()]--;
      table.lay(n.cut(), n.x(), n.y());
    }
    List<Node> children = new ArrayList<>();
    for (int shape = 0; shape < left.length; shape++) {
      if (left[shape] == 0) {
        continue;
      }
      for (int cut : task.room.cutsOf(shape)) {
        double[] places = table.places(cut, task.room.lastX(cut, toBeat - 1), PLACES_TRIED);
        for (int i = 0; i < places.length; i += 2) {
          children.add(child(node, shape, cut, places[i], places[i + 1]));
        }
      }
    }
    return children;
  }

  private Node child(Node node, int shape, int cut, double x, double y) {
    Cut laid = task.forms.cuts().get(cut);
    long print =
        node.print()
            + Chance.mix(
                Chance.mix(Chance.mix(laid.form()) + Double.doubleToLongBits(x))
                    + Double.doubleToLongBits(y));
    return new Node(
        node.depth() + 1,
        List.of(node),
        shape,
        cut,
        x,
        y,
        Math.max(node.end(), x + laid.width()),
        node.area() + task.areaOfShape[shape],
        print);
  }

  private Places places(Node last) {
    int n = task.shapeOf.length;
    int[] cut = new int[n];
    double[] x = new double[n];
    double[] y = new double[n];
    boolean[] taken = new boolean[n];
    for (Node node = last; node.depth() > 0; node = node.before().get(0)) {
      int copy = 0;
      while (taken[copy] || task.shapeOf[copy] != node.shape()) {
        copy++;
      }
      taken[copy] = true;
      cut[copy] = node.cut();
      x[copy] = node.x();
      y[copy] = node.y();
    }
    return new Places(last.end(), 0, cut, x, y);
  }
}
