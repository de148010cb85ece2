package org.hemwright.paper.label;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;

/**
 * The room inside an area, less what is drawn there. Boxes found or taken are kept clear of by what
 * is asked for later.
 */
public final class Room {
  private final List<List<Point>> within;
  private final Map<Double, FreeGrid> areas;
  private final List<Taken> lines = new ArrayList<>();
  private final List<TurnedBox> boxes = new ArrayList<>();
  private final Map<Double, FreeGrid> grids = new HashMap<>();

  private record Taken(List<Point> line, double margin) {}

  private Room(List<List<Point>> within, Map<Double, FreeGrid> areas) {
    this.within = within;
    this.areas = areas;
  }

  /**
   * The room within all of some outlines.
   *
   * @param outlines closed, at least one
   */
  public Room(List<Path> outlines) {
    this(
        outlines.stream()
            .distinct()
            .map(outline -> outline.flattened(Tolerance.PRINTED_FLAT))
            .toList(),
        new HashMap<>());
  }

  /** The room within the same outlines, with nothing drawn in it. */
  public Room empty() {
    return new Room(within, areas);
  }

  /** Keeps a margin (mm) on both sides of a line clear. */
  public void takeLine(Path line, double margin) {
    Taken taken = new Taken(line.flattened(Tolerance.PRINTED_FLAT), margin);
    lines.add(taken);
    grids.forEach((angle, grid) -> grid.takeLine(framed(taken.line(), angle), margin));
  }

  /** Keeps a box clear, with a margin (mm) round it. */
  public void take(TurnedBox box, double margin) {
    TurnedBox wide = box.grown(margin);
    boxes.add(wide);
    grids.forEach((angle, grid) -> take(grid, angle, wide));
  }

  /** Whether a box, at whatever angle, lies in the room and clear of everything. */
  public boolean isFree(TurnedBox box) {
    FreeGrid grid = grid(0);
    int across = 1 + (int) Math.ceil(box.width() / FreeGrid.SQUARE);
    int up = 1 + (int) Math.ceil(box.height() / FreeGrid.SQUARE);
    for (int i = 0; i <= across; i++) {
      for (int k = 0; k <= up; k++) {
        if (!grid.isFree(box.at(box.width() * i / across, box.height() * k / up))) {
          return false;
        }
      }
    }
    return true;
  }

  /**
   * The free box of a size whose middle is nearest to a point.
   *
   * @param angle the way its width runs (radians)
   */
  public Optional<TurnedBox> find(double angle, double width, double height, Point near) {
    FreeGrid grid = grid(angle);
    Motion into = Motion.turn(Point.ORIGIN, -angle);
    return grid.room(width, height, into.apply(near))
        .map(corner -> new TurnedBox(into.inverse().apply(corner), angle, width, height));
  }

  /** The middle of what is free. */
  public Point centre() {
    return grid(0).centreOfFree();
  }

  private FreeGrid grid(double angle) {
    return grids.computeIfAbsent(angle, this::made);
  }

  private FreeGrid made(double angle) {
    FreeGrid grid = areas.computeIfAbsent(angle, this::area).copy();
    for (Taken taken : lines) {
      grid.takeLine(framed(taken.line(), angle), taken.margin());
    }
    for (TurnedBox box : boxes) {
      take(grid, angle, box);
    }
    return grid;
  }

  private FreeGrid area(double angle) {
    FreeGrid grid = new FreeGrid(Box.of(framed(within.get(0), angle)));
    for (List<Point> outline : within) {
      grid.takeOutside(framed(outline, angle));
    }
    return grid;
  }

  private static void take(FreeGrid grid, double angle, TurnedBox box) {
    List<Point> corners = framed(box.corners(), angle);
    double turn = Math.abs(StrictMath.sin(2 * (box.angle() - angle)));
    if (turn <= Tolerance.SAME_DIRECTION) {
      grid.takeBox(Box.of(corners));
      return;
    }
    Vector side = corners.get(3).minus(corners.get(0));
    int strips = 1 + (int) (side.length() / FreeGrid.SQUARE);
    for (int i = 0; i <= strips; i++) {
      Vector step = side.times((double) i / strips);
      grid.takeLine(List.of(corners.get(0).plus(step), corners.get(1).plus(step)), FreeGrid.SQUARE);
    }
  }

  private static List<Point> framed(List<Point> points, double angle) {
    if (angle == 0) {
      return points;
    }
    Motion into = Motion.turn(Point.ORIGIN, -angle);
    return points.stream().map(into::apply).toList();
  }
}
