package org.hemwright.pattern.traced;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.NearName;
import org.hemwright.pattern.traced.OutlineRequest.EdgeRequest;

/**
 * Takes an outline out of a drawing as the designer says.
 *
 * <ol>
 *   <li>Her line is one closed line, or open ones whose ends meet.
 *   <li>Its corners are where it turns by as much as she says, and wherever she set a dot.
 *   <li>From her start and in her sense, each edge runs to the next corner or to its dot. All
 *       corners are used up, else nothing is taken and every corner is told.
 *   <li>What she gives as allowance is taken off inside.
 * </ol>
 */
public final class OutlineTracing {
  /** Ends of lines this close are meant to meet (mm): a tenth of a pen stroke. */
  private static final double ENDS_MEET = 0.05;

  /** A dot lies on the line if it is this close (mm). */
  public static final double DOT_ON_LINE = 1.0;

  /** No drawn outline has more corners. */
  private static final int MOST_TOLD = 40;

  private final TracedDrawing drawing;
  private final OutlineRequest request;
  private final Path round;

  private OutlineTracing(TracedDrawing drawing, OutlineRequest request) {
    this.drawing = drawing;
    this.request = request;
    Path closed = closed(lines(drawing, request.line()), request.line());
    boolean left = Outline.of(closed).isCounterClockwise();
    this.round = left == request.clockwise() ? closed.reversed() : closed;
  }

  /**
   * The edges of the outline, end to end in the designer's sense.
   *
   * @throws TracingProblem where the drawing does not hold what she says
   */
  public static List<Path> edges(TracedDrawing drawing, OutlineRequest request) {
    return new OutlineTracing(drawing, request).edges();
  }

  /**
   * The lines of a name.
   *
   * @throws TracingProblem where there is none
   */
  public static List<TracedLine> lines(TracedDrawing drawing, String name) {
    List<TracedLine> called = drawing.called(name);
    if (called.isEmpty()) {
      Optional<String> near = NearName.to(name, drawing.names());
      TracingProblem problem =
          new TracingProblem(
                  near.isPresent()
                      ? "traced-line-near"
                      : drawing.names().isEmpty() ? "traced-no-names" : "traced-line-absent")
              .with("name", name)
              .with("file", drawing.file());
      near.ifPresent(meant -> problem.with("near", meant));
      List<String> names = drawing.names();
      throw problem.with("names", Argument.of(names.subList(0, Math.min(MOST_TOLD, names.size()))));
    }
    return called;
  }

  /**
   * The closed line of a name, of one or of several whose ends meet, as it is drawn.
   *
   * @throws TracingProblem where there is none, or more than one
   */
  public static Path round(TracedDrawing drawing, String name) {
    return closed(lines(drawing, name), name);
  }

  /** One closed line, of one or of several whose ends meet. */
  private static Path closed(List<TracedLine> lines, String name) {
    List<TracedLine> closed = lines.stream().filter(line -> line.path().isClosed()).toList();
    if (closed.size() == 1 && lines.size() == 1) {
      return closed.get(0).path();
    }
    if (!closed.isEmpty()) {
      throw new TracingProblem("traced-outlines-several")
          .with("name", name)
          .with("count", Argument.of(lines.size()));
    }
    return chained(lines, name);
  }

  private static Path chained(List<TracedLine> lines, String name) {
    List<Path> left = new ArrayList<>(lines.stream().map(TracedLine::path).toList());
    List<Curve> curves = new ArrayList<>(left.remove(0).curves());
    while (true) {
      Point end = curves.get(curves.size() - 1).end();
      Path next = null;
      double gap = end.distanceTo(curves.get(0).start());
      for (Path path : left) {
        double here = Math.min(end.distanceTo(path.start()), end.distanceTo(path.end()));
        if (next == null || here < gap) {
          next = path;
          gap = here;
        }
      }
      if (gap > ENDS_MEET) {
        throw new TracingProblem("traced-outline-open")
            .with("name", name)
            .with("gap", Argument.mm(gap))
            .with("where", words(end));
      }
      if (next == null) {
        break;
      }
      left.remove(next);
      Path forward =
          end.distanceTo(next.start()) <= end.distanceTo(next.end()) ? next : next.reversed();
      addFrom(curves, end, forward);
    }
    Path whole = Path.of(curves);
    if (!whole.isClosed()) {
      List<Curve> last = new ArrayList<>(curves.subList(0, curves.size() - 1));
      Path turned = Path.of(curves.get(curves.size() - 1)).reversed();
      List<Curve> end = new ArrayList<>();
      addFrom(end, curves.get(0).start(), turned);
      last.addAll(Path.of(end).reversed().curves());
      whole = Path.of(last);
    }
    return whole;
  }

  /** Adds a path that starts a hair away from a point as if it started there. */
  private static void addFrom(List<Curve> curves, Point start, Path path) {
    Curve first = path.curves().get(0);
    if (!first.start().isAt(start)) {
      curves.add(startingAt(first, start));
    } else {
      curves.add(first);
    }
    curves.addAll(path.curves().subList(1, path.curves().size()));
  }

  private static Curve startingAt(Curve curve, Point start) {
    if (curve instanceof Cubic cubic) {
      Vector shift = start.minus(cubic.start());
      return new Cubic(start, cubic.control1().plus(shift), cubic.control2(), cubic.end());
    }
    return new Line(start, curve.end());
  }

  private List<Path> edges() {
    List<EdgeRequest> wanted = request.edges();
    List<Double> corners = corners();
    double start = start(corners);
    List<Double> ends = new ArrayList<>();
    double at = 0;
    double whole = round.length();
    int used = 0;
    for (int i = 0; i < wanted.size(); i++) {
      boolean last = i + 1 == wanted.size();
      double end;
      if (wanted.get(i).until().isPresent()) {
        end = from(start, dot(wanted.get(i).until().get()));
        if (last && end <= Tolerance.SAME_POINT) {
          end = whole;
        }
      } else {
        end = next(corners, start, at);
        used++;
      }
      if (!(end > at + Tolerance.SAME_POINT)) {
        throw new TracingProblem("traced-dot-order")
            .with("edge", wanted.get(i).name())
            .with("dot", wanted.get(i).until().orElse(""));
      }
      ends.add(end);
      at = end;
    }
    boolean dots = wanted.stream().anyMatch(edge -> edge.until().isPresent());
    if (Math.abs(at - whole) > Tolerance.DRAWN_LENGTH || (!dots && used != corners.size())) {
      throw counted(corners, start, wanted.size());
    }
    List<Path> cut = new ArrayList<>();
    double from = 0;
    for (int i = 0; i < ends.size(); i++) {
      double to = i + 1 == ends.size() ? whole : ends.get(i);
      cut.add(part(start + from, start + to));
      from = to;
    }
    return new AllowanceTakenOff(wanted, cut, request.clockwise()).edges();
  }

  private Path part(double from, double to) {
    double whole = round.length();
    double first = from >= whole ? from - whole : from;
    double last = to > whole ? to - whole : to;
    if (first >= last && first >= whole - Tolerance.NO_LENGTH) {
      first = 0;
    }
    return last <= Tolerance.NO_LENGTH ? round.part(first, whole) : round.part(first, last);
  }

  /** How far round from the start a place lies. */
  private double from(double start, double place) {
    double way = place - start;
    return way < -Tolerance.SAME_POINT ? way + round.length() : Math.max(0, way);
  }

  private double next(List<Double> corners, double start, double at) {
    double nearest = round.length();
    for (double corner : corners) {
      double way = from(start, corner);
      if (way > at + Tolerance.SAME_POINT && way < nearest) {
        nearest = way;
      }
    }
    return nearest;
  }

  private List<Double> corners() {
    return corners(round, request.sharpest());
  }

  /**
   * Where a closed line turns, as lengths from its start (mm).
   *
   * @param sharpest by this much or more (radians)
   */
  public static List<Double> corners(Path round, double sharpest) {
    List<Double> corners = new ArrayList<>();
    List<Curve> curves = round.curves();
    double walked = 0;
    for (int i = 0; i < curves.size(); i++) {
      Curve before = curves.get((i + curves.size() - 1) % curves.size());
      Vector in = before.direction(1);
      Vector out = curves.get(i).direction(0);
      if (Math.abs(in.angleTo(out)) >= sharpest) {
        corners.add(walked);
      }
      walked += curves.get(i).length();
    }
    return corners;
  }

  private double start(List<Double> corners) {
    if (request.start() instanceof OutlineRequest.Start.Dot dot) {
      return dot(dot.name());
    }
    OutlineRequest.Start.Farthest farthest = (OutlineRequest.Start.Farthest) request.start();
    if (corners.isEmpty()) {
      throw new TracingProblem("traced-no-corner").with("name", request.line());
    }
    double best = corners.get(0);
    double reach = Double.NEGATIVE_INFINITY;
    for (double corner : corners) {
      Point point = round.at(corner).point();
      double own = (farthest.left() ? -1 : 1) * point.x() + (farthest.top() ? 1 : -1) * point.y();
      if (own > reach) {
        reach = own;
        best = corner;
      }
    }
    return best;
  }

  private double dot(String name) {
    List<TracedLine> dots = lines(drawing, name);
    if (dots.size() > 1) {
      throw new TracingProblem("traced-dots-several")
          .with("name", name)
          .with("count", Argument.of(dots.size()));
    }
    PathPlace place = round.nearest(dots.get(0).middle());
    double away = place.point().distanceTo(dots.get(0).middle());
    if (away > DOT_ON_LINE) {
      throw new TracingProblem("traced-dot-off")
          .with("name", name)
          .with("line", request.line())
          .with("away", Argument.mm(away));
    }
    return place.distance();
  }

  private TracingProblem counted(List<Double> corners, double start, int wanted) {
    List<Double> inOrder = new ArrayList<>(corners);
    inOrder.sort(Comparator.comparingDouble((Double corner) -> from(start, corner)));
    List<String> told = new ArrayList<>();
    for (double corner : inOrder.subList(0, Math.min(MOST_TOLD, inOrder.size()))) {
      told.add(words(round.at(corner).point()));
    }
    return new TracingProblem("traced-corners")
        .with("name", request.line())
        .with("found", Argument.of(corners.size()))
        .with("wanted", Argument.of(wanted))
        .with("where", Argument.of(told));
  }

  /** A place on the drawing, for people: to the right and up from its corner. */
  private static String words(Point point) {
    return String.format(Locale.ROOT, "(%.0f, %.0f) mm", point.x(), point.y());
  }
}
