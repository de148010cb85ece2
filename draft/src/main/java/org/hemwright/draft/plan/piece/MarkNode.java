package org.hemwright.draft.plan.piece;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hemwright.draft.plan.node.DrawnNode;
import org.hemwright.draft.plan.node.Node;
import org.hemwright.draft.plan.node.Typing;
import org.hemwright.draft.plan.node.Values;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Mark;

/** A node that gives something drawn on a piece. */
public interface MarkNode extends DrawnNode<Mark> {
  /** A point to transfer to the cloth. */
  record Drill(String name, int at, Optional<String> text, Origin origin) implements MarkNode {
    @Override
    public int[] inputs() {
      return Node.slots(at);
    }

    @Override
    public Mark value(Values values) {
      return new Mark.Drill(name, values.point(at), text, origin);
    }
  }

  /** A line inside, or where something is sewn on. */
  record Line(String name, int path, boolean placement, Optional<String> text, Origin origin)
      implements MarkNode {
    @Override
    public int[] inputs() {
      return Node.slots(path);
    }

    @Override
    public Mark value(Values values) {
      Path line = values.path(path);
      return placement
          ? new Mark.Placement(name, line, text, origin)
          : new Mark.Inner(name, line, text, origin);
    }
  }

  /** The designer's own words. */
  record Label(String text, int at, Origin origin) implements MarkNode {
    @Override
    public int[] inputs() {
      return Node.slots(at);
    }

    @Override
    public Mark value(Values values) {
      return new Mark.Label(text, values.point(at), origin);
    }
  }

  /** The height of a body level. */
  record Level(String name, int at, Origin origin) implements MarkNode {
    @Override
    public int[] inputs() {
      return Node.slots(at);
    }

    @Override
    public Mark value(Values values) {
      return new Mark.Level(name, values.point(at), origin);
    }
  }

  /** The way the cloth must stretch most: across the grain, or along it. */
  record Stretch(boolean across, int grain, Origin origin) implements MarkNode {
    @Override
    public int[] inputs() {
      return Node.slots(grain);
    }

    @Override
    public Mark value(Values values) {
      Vector along = values.thing(grain, Grain.class).direction();
      return new Mark.Stretch(across ? along.right() : along, origin);
    }
  }

  /** Where the piece is made longer or shorter, through a point and square to the grain. */
  record Lengthen(int at, int grain, int outline, Origin origin) implements MarkNode {
    @Override
    public int[] inputs() {
      return Node.slots(at, grain, outline);
    }

    @Override
    public int cost() {
      return 40;
    }

    @Override
    public Mark value(Values values) {
      Point through = values.point(at);
      Vector way = values.thing(grain, Grain.class).direction().right();
      List<Across.Stretch> inside =
          Across.of(values.thing(outline, DrawnOutline.class).stitchLine(), through, way);
      for (Across.Stretch stretch : inside) {
        if (stretch.from() <= Tolerance.DRAWN_LENGTH && stretch.to() >= -Tolerance.DRAWN_LENGTH) {
          Path line =
              Path.straight(
                  through.plus(way.times(stretch.from())), through.plus(way.times(stretch.to())));
          return new Mark.Lengthen(line, origin);
        }
      }
      throw new Failure(
          Cause.of("lengthen-beside-piece").with("point", values.program().text(at)).at(through));
    }
  }

  /** How the piece is cut apart where a cloth is too narrow. */
  record Split(String name, List<Integer> lines, int allowance, List<String> parts, Origin origin)
      implements MarkNode {
    public Split {
      lines = List.copyOf(lines);
      parts = List.copyOf(parts);
    }

    @Override
    public int[] inputs() {
      IntStream.Builder slots = IntStream.builder();
      lines.forEach(slots::add);
      return slots.add(allowance).build().toArray();
    }

    @Override
    public void check(Typing typing) {
      typing.length(allowance);
    }

    @Override
    public Mark value(Values values) {
      double width = values.number(allowance);
      if (width < 0) {
        throw new Failure(
            Cause.of("allowance-inward")
                .with("allowance", values.program().text(allowance))
                .with("value", Argument.mm(width)));
      }
      return new Mark.Split(name, lines.stream().map(values::path).toList(), width, parts, origin);
    }
  }
}
