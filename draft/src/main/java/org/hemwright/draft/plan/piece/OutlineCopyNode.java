package org.hemwright.draft.plan.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.piece.DrawnOutline.DrawnEdge;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.OffsetPath;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.piece.Intake;

/**
 * The outline of another piece, some of its edges moved inside or outside; their neighbours are
 * trimmed, or run on straight, to where they meet again at the same angle.
 *
 * @param source the slot of the other piece's outline
 * @param piece its name
 * @param names the names of its edges
 * @param changes the edges that move
 */
public record OutlineCopyNode(int source, String piece, List<String> names, List<Change> changes)
    implements DrawnNode<DrawnOutline> {
  public OutlineCopyNode {
    names = List.copyOf(names);
    changes = List.copyOf(changes);
  }

  /**
   * An edge that moves.
   *
   * @param edge its place in the designer's list
   * @param inward whether it moves inside
   * @param amount the slot of how far
   */
  public record Change(int edge, boolean inward, int amount) {}

  @Override
  public int[] inputs() {
    return IntStream.concat(
            IntStream.of(source), changes.stream().mapToInt(change -> change.amount))
        .distinct()
        .toArray();
  }

  @Override
  public void check(Typing typing) {
    changes.forEach(change -> typing.length(change.amount));
  }

  @Override
  public int cost() {
    return 100 + 500 * changes.size();
  }

  @Override
  public DrawnOutline value(Values values) {
    DrawnOutline other = values.thing(source, DrawnOutline.class);
    if (changes.isEmpty()) {
      return other;
    }
    int count = other.edges().size();
    double[] inward = new double[count];
    double most = 0;
    for (int i = 0; i < count; i++) {
      for (Change change : changes) {
        if (change.edge == other.edges().get(i).index()) {
          inward[i] += values.number(change.amount) * (change.inward ? 1 : -1);
          most = Math.max(most, Math.abs(inward[i]));
        }
      }
    }
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      runs.add(Run.of(moved(other.edges().get(i), inward[i]), 4 * most));
    }
    return met(other, inward, runs);
  }

  /** An edge beside itself; one on which something is folded cannot be. */
  private Path moved(DrawnEdge edge, double inward) {
    if (inward == 0) {
      return edge.path();
    }
    for (Intake intake : edge.intakes()) {
      throw new Failure(
          Cause.of("copy-over-fold")
              .with("edge", names.get(edge.index()))
              .with("piece", piece)
              .with("fold", intake.name()));
    }
    return OffsetPath.of(edge.path(), inward);
  }

  /** A line run on straight at both ends (mm before it starts). */
  private record Run(Path path, double before) {
    static Run of(Path line, double on) {
      List<Curve> curves = new ArrayList<>();
      Point back = line.start().minus(line.startDirection().times(on));
      curves.addAll(Path.straight(back, line.start()).curves());
      curves.addAll(line.curves());
      Point ahead = line.end().plus(line.endDirection().times(on));
      curves.addAll(Path.straight(line.end(), ahead).curves());
      return new Run(Path.of(curves), on);
    }
  }

  private DrawnOutline met(DrawnOutline other, double[] inward, List<Run> runs) {
    int count = runs.size();
    double[] from = new double[count];
    double[] to = new double[count];
    for (int i = 0; i < count; i++) {
      int next = (i + 1) % count;
      DrawnEdge edge = other.edges().get(i);
      if (inward[i] == 0 && inward[next] == 0) {
        to[i] = runs.get(i).before + edge.path().length();
        from[next] = runs.get(next).before;
        continue;
      }
      Meeting corner =
          corner(runs.get(i).path, runs.get(next).path, edge.path().end())
              .orElseThrow(
                  () ->
                      new Failure(
                          Cause.of("copy-without-corner")
                              .with("before", names.get(edge.index()))
                              .with("after", names.get(other.edges().get(next).index()))
                              .at(edge.path().end())));
      to[i] = corner.distanceOnThis();
      from[next] = corner.distanceOnOther();
    }
    List<Curve> round = new ArrayList<>();
    List<DrawnEdge> edges = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      DrawnEdge was = other.edges().get(i);
      if (to[i] - from[i] <= Tolerance.SAME_POINT) {
        throw new Failure(
            Cause.of("copy-without-corner")
                .with("before", names.get(was.index()))
                .with("after", names.get(other.edges().get((i + 1) % count).index())));
      }
      Path path = runs.get(i).path.part(from[i], to[i]);
      if (inward[i] != 0) {
        path = cornersKept(path, other, i, inward, runs, from, to);
      }
      double shift = from[i] - runs.get(i).before;
      edges.add(edge(was, path, shift));
      round.addAll(path.curves());
    }
    return new DrawnOutline(Outline.of(Path.of(round)), edges, other.moved());
  }

  /** A moved edge, which meets neighbours that stay as it did before. */
  private static Path cornersKept(
      Path moved,
      DrawnOutline other,
      int i,
      double[] inward,
      List<Run> runs,
      double[] from,
      double[] to) {
    int count = runs.size();
    int before = (i + count - 1) % count;
    int after = (i + 1) % count;
    Path was = other.edges().get(i).path();
    Path kept = moved;
    if (inward[after] == 0) {
      double turn = was.endDirection().angleTo(other.edges().get(after).path().startDirection());
      Vector there = runs.get(after).path.at(from[after]).tangent();
      kept = KeptCorner.bent(kept, true, there.turned(-turn));
    }
    if (inward[before] == 0) {
      double turn = other.edges().get(before).path().endDirection().angleTo(was.startDirection());
      Vector there = runs.get(before).path.at(to[before]).tangent();
      kept = KeptCorner.bent(kept, false, there.turned(turn));
    }
    return kept;
  }

  private static Optional<Meeting> corner(Path edge, Path next, Point old) {
    Optional<Meeting> best = Optional.empty();
    for (Meeting meeting : edge.meetings(next)) {
      if (best.isEmpty() || meeting.point().distanceTo(old) < best.get().point().distanceTo(old)) {
        best = Optional.of(meeting);
      }
    }
    return best;
  }

  /** An edge trimmed or run on, with what is folded on it. */
  private DrawnEdge edge(DrawnEdge was, Path path, double shift) {
    if (was.intakes().isEmpty()) {
      return new DrawnEdge(was.index(), path, was.reversed());
    }
    List<Intake> intakes = new ArrayList<>();
    for (Intake intake : was.intakes()) {
      double from = intake.from() - shift;
      double to = intake.to() - shift;
      if (from < 0 || to > path.length()) {
        throw new Failure(
            Cause.of("copy-over-fold")
                .with("edge", names.get(was.index()))
                .with("piece", piece)
                .with("fold", intake.name()));
      }
      intakes.add(intake.at(from, to));
    }
    double longer = path.length() - was.path().length() + shift;
    Path closed = Run.of(was.closed(), Math.abs(shift) + Math.abs(longer) + 1).path;
    double before = Math.abs(shift) + Math.abs(longer) + 1;
    Path sewn = closed.part(before + shift, before + was.closed().length() + longer);
    return new DrawnEdge(was.index(), path, was.reversed(), intakes, sewn, was.opened());
  }
}
