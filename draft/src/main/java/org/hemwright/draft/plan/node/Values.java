package org.hemwright.draft.plan.node;

import java.util.List;
import org.hemwright.draft.plan.problem.Cause;
import org.hemwright.draft.plan.problem.Failure;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.SewnEdge;
import org.jspecify.annotations.Nullable;

/** The values of one size: a number or a thing in every slot, or the reason why there is none. */
public final class Values {
  /** The work of looking at one curve of a path. */
  private static final int CURVE = 10;

  private final Program program;
  private final Size size;
  private final double[] literals;
  private final Work work;
  private final double[] numbers;
  private final @Nullable Object[] drawn;
  private final @Nullable Failure[] failures;

  private Values(
      Program program,
      Size size,
      double[] literals,
      Work work,
      double[] numbers,
      @Nullable Object[] drawn,
      @Nullable Failure[] failures) {
    this.program = program;
    this.size = size;
    this.literals = literals;
    this.work = work;
    this.numbers = numbers;
    this.drawn = drawn;
    this.failures = failures;
  }

  /** Works out everything in one size. */
  public static Values of(Program program, Size size, double[] literals, Work work) {
    int count = program.size();
    Values values =
        new Values(
            program,
            size,
            literals,
            work,
            new double[count],
            new Object[count],
            new Failure[count]);
    values.run(program.order);
    return values;
  }

  /** The same size with other literals; only the slots given are worked out again, in order. */
  public Values again(int[] slots, double[] changed, Work counted) {
    Values values =
        new Values(
            program, size, changed, counted, numbers.clone(), drawn.clone(), failures.clone());
    values.run(slots);
    return values;
  }

  /** Works out some slots, in the order given. */
  void run(int[] slots) {
    int position = size.position();
    for (int slot : slots) {
      if (program.firstSize[slot] <= position && position <= program.lastSize[slot]) {
        run(slot);
      }
    }
  }

  private void run(int slot) {
    Node node = program.nodes[slot];
    if (!node.picks()) {
      for (int input : program.inputs[slot]) {
        Failure cause = failures[input];
        if (cause != null) {
          failures[slot] = cause;
          return;
        }
      }
    }
    try {
      work.spend(node.cost());
      failures[slot] = null;
      node.work(this, slot);
    } catch (Failure failure) {
      failures[slot] = failure;
    } catch (GeometryProblem problem) {
      failures[slot] =
          new Failure(
              Cause.of("cannot-be-drawn")
                  .with("thing", program.text(slot))
                  .with("reason", problem.reason()));
    }
  }

  /** The size. */
  public Size size() {
    return size;
  }

  /** The plan whose values these are. */
  public Program program() {
    return program;
  }

  /** The work that was done. */
  public long workDone() {
    return work.done();
  }

  /** Counts work that grows with what is worked on. */
  public void spend(long amount) {
    work.spend(amount);
  }

  /** A literal's value (mm, radians or plain). */
  double literal(int index) {
    return literals[index];
  }

  /** Puts a number in its slot; one that is not finite is refused. */
  public void put(int slot, double number) {
    if (!Double.isFinite(number)) {
      throw new Failure(Cause.of("not-finite").with("thing", program.text(slot)));
    }
    numbers[slot] = number;
  }

  /** Puts a thing in its slot. */
  public void put(int slot, Object thing) {
    drawn[slot] = thing;
  }

  /** Puts what is in one slot in another too. */
  void copy(int from, int to) {
    numbers[to] = numbers[from];
    drawn[to] = drawn[from];
  }

  /** Why a slot has no value, if it has none. */
  public @Nullable Failure failure(int slot) {
    return failures[slot];
  }

  /** Passes on the reason why a slot has no value, if it has none. */
  public void need(int slot) {
    Failure cause = failures[slot];
    if (cause != null) {
      throw cause;
    }
  }

  /** Whether a slot is worked out in this size and has a value. */
  public boolean has(int slot) {
    return program.isIn(slot, size.position()) && failures[slot] == null;
  }

  /** The number in a slot. */
  public double number(int slot) {
    return numbers[slot];
  }

  /** The point in a slot. */
  public Point point(int slot) {
    return thing(slot, Point.class);
  }

  /** The direction in a slot, of length 1. */
  public Vector direction(int slot) {
    return thing(slot, Vector.class);
  }

  /** The path in a slot; the longer it is, the more work is whatever is done with it. */
  public Path path(int slot) {
    Path path = drawn[slot] instanceof SewnPath sewn ? sewn.path() : thing(slot, Path.class);
    work.spend((long) CURVE * path.curves().size());
    return path;
  }

  /** The path in a slot as it is sewn, in its direction. */
  public SewnEdge sewn(int slot) {
    return drawn[slot] instanceof SewnPath sewn
        ? sewn.sewn()
        : new SewnEdge(path(slot).length(), List.of());
  }

  /** Whether lengths along the path in a slot are told as it is sewn. */
  public boolean isSewn(int slot) {
    return drawn[slot] instanceof SewnPath;
  }

  /** The motion in a slot. */
  public Motion motion(int slot) {
    return thing(slot, Motion.class);
  }

  /** The thing in a slot. */
  public <T> T thing(int slot, Class<T> type) {
    Object thing = drawn[slot];
    if (thing == null) {
      throw new IllegalStateException(program.text(slot) + " has no value yet");
    }
    return type.cast(thing);
  }

  /** Sets the number that is being solved for. */
  void tryNumber(int slot, double number) {
    failures[slot] = null;
    numbers[slot] = number;
  }
}
