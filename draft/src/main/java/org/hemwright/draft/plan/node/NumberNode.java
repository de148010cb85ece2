package org.hemwright.draft.plan.node;

import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.draft.syntax.Expression;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;

/** A node that gives a number. */
public interface NumberNode extends Node {
  /** The number in one size (mm, radians or plain). */
  double value(Values values);

  @Override
  default void work(Values values, int slot) {
    values.put(slot, value(values));
  }

  /** A number as written, by its place among all literals. */
  record Literal(int index) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots();
    }

    @Override
    public Kind typed(Typing typing) {
      return typing.literal(index);
    }

    @Override
    public double value(Values values) {
      return values.literal(index);
    }
  }

  /** A number that never changes: pi. */
  record Constant(double value) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots();
    }

    @Override
    public Kind typed(Typing typing) {
      return Kind.NUMBER;
    }

    @Override
    public double value(Values values) {
      return value;
    }
  }

  /** A body measurement. */
  record Measurement(SizeChart.Column column) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots();
    }

    @Override
    public Kind typed(Typing typing) {
      return Kind.of(column.kind());
    }

    @Override
    public double value(Values values) {
      SizeChart.Cell cell = column.cells().get(values.size().position());
      return cell.value()
          .orElseThrow(
              () ->
                  new Failure(
                      Cause.of("measurement-missing")
                          .with("name", column.name())
                          .with("heading", column.heading())
                          .with("chart", values.program().chart().file())));
    }
  }

  /** Another slot's number, under a name of its own. */
  record Same(int of) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots(of);
    }

    @Override
    public Kind typed(Typing typing) {
      return typing.kind(of);
    }

    @Override
    public double value(Values values) {
      return values.number(of);
    }
  }

  /** Less than nothing by as much. */
  record Negative(int of) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots(of);
    }

    @Override
    public Kind typed(Typing typing) {
      return typing.kind(of);
    }

    @Override
    public double value(Values values) {
      return -values.number(of);
    }
  }

  /** One of the four sums. */
  record Sum(Expression.Operator operator, int left, int right) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots(left, right);
    }

    @Override
    public Kind typed(Typing typing) {
      return switch (operator) {
        case PLUS -> typing.alike(left, right, "added");
        case MINUS -> typing.alike(left, right, "subtracted");
        case TIMES -> typing.product(left, right);
        case OVER -> typing.quotient(left, right);
      };
    }

    @Override
    public double value(Values values) {
      double first = values.number(left);
      double second = values.number(right);
      return switch (operator) {
        case PLUS -> first + second;
        case MINUS -> first - second;
        case TIMES -> first * second;
        case OVER -> {
          if (second == 0) {
            throw new Failure(
                Cause.of("divided-by-nothing").with("divisor", values.program().text(right)));
          }
          yield first / second;
        }
      };
    }
  }

  /** The length of a path; of an edge on which something is taken in, its length as sewn. */
  record LengthOf(int path) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots(path);
    }

    @Override
    public Kind typed(Typing typing) {
      return Kind.LENGTH;
    }

    @Override
    public double value(Values values) {
      Path line = values.path(path);
      values.spend(30L * line.curves().size());
      return values.isSewn(path) ? values.sewn(path).length() : line.length();
    }
  }

  /** What is measured between two points. */
  record Between(Expression.Measure measure, int from, int to) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots(from, to);
    }

    @Override
    public Kind typed(Typing typing) {
      return measure == Expression.Measure.ANGLE ? Kind.ANGLE : Kind.LENGTH;
    }

    @Override
    public double value(Values values) {
      Point start = values.point(from);
      Point end = values.point(to);
      return switch (measure) {
        case DISTANCE -> start.distanceTo(end);
        case ACROSS -> end.x() - start.x();
        case RISE -> end.y() - start.y();
        case ANGLE -> {
          if (start.isAt(end)) {
            throw new Failure(
                Cause.of("points-together")
                    .with("first", values.program().text(from))
                    .with("second", values.program().text(to)));
          }
          yield end.minus(start).angle();
        }
      };
    }
  }

  /** The smaller or the larger of two numbers. */
  record Either(boolean larger, int first, int second) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots(first, second);
    }

    @Override
    public Kind typed(Typing typing) {
      return typing.alike(first, second, "compared");
    }

    @Override
    public double value(Values values) {
      double one = values.number(first);
      double other = values.number(second);
      return larger ? Math.max(one, other) : Math.min(one, other);
    }
  }

  /** A ratio of a right angle's sides. */
  record Trigonometric(Expression.Ratio ratio, int angle) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots(angle);
    }

    @Override
    public Kind typed(Typing typing) {
      typing.angle(angle);
      return Kind.NUMBER;
    }

    @Override
    public double value(Values values) {
      double radians = values.number(angle);
      double cosine = StrictMath.cos(radians);
      return switch (ratio) {
        case SINE -> StrictMath.sin(radians);
        case COSINE -> cosine;
        case TANGENT -> {
          if (Math.abs(cosine) < Tolerance.SAME_DIRECTION) {
            throw new Failure(
                Cause.of("tangent-without-end")
                    .with("angle", Argument.of(Quantity.angle(radians))));
          }
          yield StrictMath.tan(radians);
        }
      };
    }
  }

  /** The third side of a right triangle. */
  record RightTriangle(boolean hypotenuse, int first, int second) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots(first, second);
    }

    @Override
    public Kind typed(Typing typing) {
      typing.length(first);
      typing.length(second);
      return Kind.LENGTH;
    }

    @Override
    public double value(Values values) {
      double one = values.number(first);
      double other = values.number(second);
      if (hypotenuse) {
        return Math.sqrt(one * one + other * other);
      }
      if (Math.abs(other) > Math.abs(one)) {
        throw new Failure(
            Cause.of("no-triangle")
                .with("long", values.program().text(first))
                .with("longLength", Argument.mm(one))
                .with("short", values.program().text(second))
                .with("shortLength", Argument.mm(other)));
      }
      return Math.sqrt(one * one - other * other);
    }
  }

  /** A number rounded to a step. */
  record Rounded(Expression.Way way, int of, int step) implements NumberNode {
    @Override
    public int[] inputs() {
      return Node.slots(of, step);
    }

    @Override
    public Kind typed(Typing typing) {
      return typing.alike(of, step, "rounded");
    }

    @Override
    public double value(Values values) {
      double size = values.number(step);
      if (!(size > 0)) {
        Program program = values.program();
        QuantityKind kind = program.kind(step).quantity().orElse(QuantityKind.NUMBER);
        throw new Failure(
            Cause.of("step-not-above-nothing")
                .with("step", program.text(step))
                .with("value", Argument.of(new Quantity(kind, size))));
      }
      double steps = values.number(of) / size;
      double whole = Math.rint(steps);
      boolean exact = Math.abs(steps - whole) <= Tolerance.SOLVED_SHARE * Math.abs(steps);
      return size
          * switch (way) {
            case NEAREST -> Math.floor(steps + 0.5);
            case UP -> exact ? whole : Math.ceil(steps);
            case DOWN -> exact ? whole : Math.floor(steps);
          };
    }
  }
}
