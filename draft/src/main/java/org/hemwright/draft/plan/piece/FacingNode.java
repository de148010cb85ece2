package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline.DrawnEdge;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.OffsetPath;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Argument;

/**
 * A strip inside another piece along some of its edges, as they are sewn. Its ends follow the edges
 * beside them, so that they can be sewn as those are, and its inner edge meets them as the piece's
 * own edge does.
 *
 * @param source the slot of the other piece's outline
 * @param names the names of that piece's edges
 * @param along the places of the edges in the designer's list, in the order in which she names them
 * @param depth the slot of how deep the strip is
 */
public record FacingNode(int source, List<String> names, List<Integer> along, int depth)
    implements DrawnNode<DrawnOutline> {
  public FacingNode {
    names = List.copyOf(names);
    along = List.copyOf(along);
  }

  @Override
  public int[] inputs() {
    return IntStream.of(source, depth).toArray();
  }

  @Override
  public void check(Typing typing) {
    typing.length(depth);
  }

  @Override
  public int cost() {
    return 1000;
  }

  @Override
  public DrawnOutline value(Values values) {
    double deep = values.number(depth);
    if (!(deep > 0)) {
      throw new Failure(Cause.of("facing-depth").with("depth", Argument.mm(deep)));
    }
    DrawnOutline other = values.thing(source, DrawnOutline.class);
    List<DrawnEdge> run = run(other);
    boolean hersFirst = run.get(0).index() == along.get(0);
    Motion closed = Motion.identity();
    List<Path> outer = new ArrayList<>();
    for (DrawnEdge edge : run) {
      outer.add(edge.closed().moved(closed));
      closed = edge.opened().inverse().then(closed);
    }
    int first = other.edges().indexOf(run.get(0));
    int last = other.edges().indexOf(run.get(run.size() - 1));
    int count = other.edges().size();
    DrawnEdge before = other.edges().get((first + count - 1) % count);
    DrawnEdge after = other.edges().get((last + 1) % count);
    Path edge = outer.get(0);
    for (Path next : outer.subList(1, outer.size())) {
      edge = edge.then(next);
    }
    Path inner = onward(OffsetPath.of(edge, deep), 3 * deep);
    Path end = after.path().moved(closed);
    Path start = before.path().reversed();
    Meeting atEnd = meeting(end, inner, after, deep);
    Meeting atStart = meeting(start, inner, before, deep);
    List<Path> paths = new ArrayList<>(outer);
    paths.add(end.part(0, atEnd.distanceOnThis()));
    double turnAtEnd = edge.endDirection().angleTo(end.startDirection());
    double turnAtStart = start.startDirection().negated().angleTo(edge.startDirection());
    Path strip = inner.part(atStart.distanceOnOther(), atEnd.distanceOnOther());
    Vector atEndThere = end.at(atEnd.distanceOnThis()).tangent();
    Vector atStartThere = start.at(atStart.distanceOnThis()).tangent().negated();
    strip = KeptCorner.bent(strip, true, atEndThere.turned(-turnAtEnd));
    strip = KeptCorner.bent(strip, false, atStartThere.turned(turnAtStart));
    paths.add(strip.reversed());
    paths.add(start.part(0, atStart.distanceOnThis()).reversed());
    boolean fromItsStart = run.size() > 1 ? hersFirst : !run.get(0).reversed();
    Motion back = fromItsStart ? Motion.identity() : closed.inverse();
    if (!back.equals(Motion.identity())) {
      paths.replaceAll(path -> path.moved(back));
    }
    return outline(paths, run, fromItsStart);
  }

  /** The edges that it runs along, counter-clockwise. */
  private List<DrawnEdge> run(DrawnOutline other) {
    int count = other.edges().size();
    List<DrawnEdge> hers = along.stream().map(other::edge).toList();
    for (boolean back : new boolean[] {false, true}) {
      List<DrawnEdge> order = new ArrayList<>(hers);
      if (back) {
        java.util.Collections.reverse(order);
      }
      boolean follow = order.size() < count - 1;
      for (int i = 1; i < order.size(); i++) {
        int at = other.edges().indexOf(order.get(i - 1));
        follow &= other.edges().get((at + 1) % count).equals(order.get(i));
      }
      if (follow) {
        return order;
      }
    }
    throw new Failure(
        Cause.of("facing-edges-apart")
            .with("first", names.get(along.get(0)))
            .with("second", names.get(along.get(along.size() - 1))));
  }

  /** A line run on straight at both its ends. */
  private static Path onward(Path line, double by) {
    List<Curve> curves = new ArrayList<>();
    Point back = line.start().minus(line.startDirection().times(by));
    curves.addAll(Path.straight(back, line.start()).curves());
    curves.addAll(line.curves());
    Point ahead = line.end().plus(line.endDirection().times(by));
    curves.addAll(Path.straight(line.end(), ahead).curves());
    return Path.of(curves);
  }

  private Meeting meeting(Path edge, Path inner, DrawnEdge of, double deep) {
    return edge.meetings(inner).stream()
        .findFirst()
        .orElseThrow(
            () ->
                new Failure(
                    Cause.of("facing-past-end")
                        .with("edge", names.get(of.index()))
                        .with("depth", Argument.mm(deep))));
  }

  /**
   * Named in her order: those along, the end where they end, the inner edge, the end at the start.
   *
   * @param fromItsStart whether her order is counter-clockwise
   */
  private static DrawnOutline outline(List<Path> paths, List<DrawnEdge> run, boolean fromItsStart) {
    int count = run.size();
    Path round = paths.get(0);
    for (Path path : paths.subList(1, paths.size())) {
      round = round.then(path);
    }
    List<DrawnEdge> edges = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      edges.add(
          new DrawnEdge(fromItsStart ? i : count - 1 - i, paths.get(i), run.get(i).reversed()));
    }
    edges.add(new DrawnEdge(fromItsStart ? count : count + 2, paths.get(count), false));
    edges.add(new DrawnEdge(count + 1, paths.get(count + 1), fromItsStart));
    edges.add(new DrawnEdge(fromItsStart ? count + 2 : count, paths.get(count + 2), true));
    return new DrawnOutline(Outline.of(round), edges);
  }
}
