package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline.DrawnEdge;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;

/**
 * Puts an outline together from its edges, in the order in which the designer names them.
 *
 * @param edges at least two; no two straight ones in a row
 */
public record OutlineNode(List<EdgeForm> edges) implements DrawnNode<DrawnOutline> {
  public OutlineNode {
    edges = List.copyOf(edges);
  }

  @Override
  public int[] inputs() {
    return edges.stream().mapToInt(EdgeForm::slot).filter(slot -> slot != Node.NONE).toArray();
  }

  @Override
  public int cost() {
    return 20 * edges.size();
  }

  @Override
  public DrawnOutline value(Values values) {
    int count = edges.size();
    boolean[] against = turned(values);
    Path[] cores = new Path[count];
    for (int i = 0; i < count; i++) {
      if (!edges.get(i).isStraight()) {
        Path drawn = values.path(edges.get(i).slot());
        cores[i] = against[i] ? drawn.reversed() : drawn;
      }
    }
    refuseGaps(cores);
    List<Path> paths = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      paths.add(whole(cores, i));
    }
    return joined(paths, against);
  }

  private boolean[] turned(Values values) {
    List<Path> drawn = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      if (!edges.get(i).isStraight()) {
        drawn.add(values.path(edges.get(i).slot()));
        places.add(i);
      }
    }
    boolean[] bridged = new boolean[drawn.size()];
    for (int k = 0; k < bridged.length; k++) {
      int next = places.get((k + 1) % bridged.length);
      bridged[k] = isBridged(places.get(k), next);
    }
    boolean[] turned = new Turning(drawn, bridged).turned();
    boolean[] against = new boolean[edges.size()];
    for (int k = 0; k < turned.length; k++) {
      against[places.get(k)] = turned[k];
    }
    return against;
  }

  /** Whether a straight stretch leads from one drawn edge to the next. */
  private boolean isBridged(int edge, int next) {
    return edges.get(edge).straightAfter()
        || edges.get(next).straightBefore()
        || edges.get((edge + 1) % edges.size()).isStraight();
  }

  private void refuseGaps(Path[] cores) {
    List<Cause> gaps = new ArrayList<>();
    for (int i = 0; i < cores.length; i++) {
      int next = (i + 1) % cores.length;
      Path core = cores[i];
      Path after = cores[next];
      if (core != null && after != null && !isBridged(i, next)) {
        double gap = core.end().distanceTo(after.start());
        if (gap > Tolerance.SAME_POINT) {
          gaps.add(
              Cause.of("edges-apart")
                  .with("before", edges.get(i).name())
                  .with("after", edges.get(next).name())
                  .with("gap", Argument.mm(gap))
                  .at(core.end()));
        }
      }
    }
    if (!gaps.isEmpty()) {
      throw new Failure(gaps);
    }
  }

  /** An edge with its straight stretches, in the order of the list. */
  private Path whole(Path[] cores, int edge) {
    int count = cores.length;
    EdgeForm form = edges.get(edge);
    Path before = cores[(edge + count - 1) % count];
    Path after = cores[(edge + 1) % count];
    Path core = cores[edge];
    if (core == null) {
      return straight(form, ends(before), starts(after));
    }
    List<Curve> curves = new ArrayList<>();
    if (form.straightBefore()) {
      curves.addAll(straight(form, ends(before), core.start()).curves());
    }
    curves.addAll(core.curves());
    if (form.straightAfter()) {
      curves.addAll(straight(form, core.end(), starts(after)).curves());
    }
    return curves.size() == core.curves().size() ? core : Path.of(curves);
  }

  private static Point ends(Path before) {
    return before.end();
  }

  private static Point starts(Path after) {
    return after.start();
  }

  private static Path straight(EdgeForm form, Point from, Point to) {
    if (from.isAt(to)) {
      throw new Failure(Cause.of("edge-without-length").with("edge", form.name()).at(from));
    }
    return Path.straight(from, to);
  }

  /** The outline of edges that run end to end round it, in either sense. */
  public static DrawnOutline ofEdges(List<Path> edges) {
    return joined(edges, new boolean[edges.size()]);
  }

  private static DrawnOutline joined(List<Path> paths, boolean[] against) {
    int count = paths.size();
    Path round = round(paths);
    if (Outline.of(round).isCounterClockwise()) {
      return outline(round, paths, order(count, false), against, false);
    }
    int[] order = order(count, true);
    List<Path> back = new ArrayList<>(count);
    for (int index : order) {
      back.add(paths.get(index).reversed());
    }
    Path other = round(back);
    if (!Outline.of(other).isCounterClockwise()) {
      throw new Failure(Cause.of("outline-flat"));
    }
    return outline(other, back, order, against, true);
  }

  private static int[] order(int count, boolean back) {
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      order[i] = back ? (count - i) % count : i;
    }
    return order;
  }

  private static Path round(List<Path> paths) {
    List<Curve> curves = new ArrayList<>();
    for (Path path : paths) {
      curves.addAll(path.curves());
    }
    return Path.of(curves);
  }

  /** Takes each edge back out of the whole, so that its ends are the outline's corners. */
  private static DrawnOutline outline(
      Path round, List<Path> paths, int[] order, boolean[] against, boolean back) {
    List<DrawnEdge> drawn = new ArrayList<>(order.length);
    int from = 0;
    for (int i = 0; i < order.length; i++) {
      Path path = paths.get(i);
      List<Curve> own = round.curves().subList(from, from + path.curves().size());
      from += own.size();
      Path welded = own.equals(path.curves()) ? path : Path.of(own);
      drawn.add(new DrawnEdge(order[i], welded, against[order[i]] != back));
    }
    return new DrawnOutline(Outline.of(round), drawn);
  }
}
