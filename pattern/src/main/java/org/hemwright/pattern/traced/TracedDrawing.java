package org.hemwright.pattern.traced;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/**
 * A drawing as it was read.
 *
 * @param file its name in the pattern folder
 * @param lines in the order of the file
 * @param inTrueSize whether the file says how long its unit is, so that lengths can be trusted
 *     without a scale line
 * @param unread what it holds that is no line, in words such as {@code text "Front"}
 */
public record TracedDrawing(
    String file, List<TracedLine> lines, boolean inTrueSize, List<String> unread) {
  public TracedDrawing {
    lines = List.copyOf(lines);
    unread = List.copyOf(unread);
  }

  /** How a line is called that has no name of its own: by its place in the file, from 1. */
  private static final Pattern BY_PLACE = Pattern.compile("line ([1-9][0-9]{0,5})");

  /**
   * The lines that bear a name, or lie in a layer or group that does, in the order of the file.
   * Where none does, {@code line 3} is the third line of the file.
   */
  public List<TracedLine> called(String name) {
    List<TracedLine> named = lines.stream().filter(line -> line.isCalled(name)).toList();
    Matcher place = BY_PLACE.matcher(name);
    if (named.isEmpty() && place.matches() && Integer.parseInt(place.group(1)) <= lines.size()) {
      return List.of(lines.get(Integer.parseInt(place.group(1)) - 1));
    }
    return named;
  }

  /**
   * A name that means one line alone.
   *
   * @param index the line's place in the list, from 0
   * @return one of its names, or its place in the file where it shares all of them; absent where
   *     other lines are called by that too
   */
  public Optional<String> nameOf(int index) {
    for (String name : lines.get(index).names()) {
      if (called(name).size() == 1) {
        return Optional.of(name);
      }
    }
    String place = "line " + (index + 1);
    return called(place).equals(List.of(lines.get(index))) ? Optional.of(place) : Optional.empty();
  }

  /** Every name, each once, in the order of the file. */
  public List<String> names() {
    Set<String> names = new LinkedHashSet<>();
    lines.forEach(line -> names.addAll(line.names()));
    return List.copyOf(names);
  }

  /**
   * The drawing made larger or smaller about its origin.
   *
   * @param factor more than 0
   */
  public TracedDrawing scaled(double factor) {
    List<TracedLine> scaled = new ArrayList<>(lines.size());
    for (TracedLine line : lines) {
      List<Curve> curves = new ArrayList<>();
      for (Curve curve : line.path().curves()) {
        curves.add(scaled(curve, factor));
      }
      scaled.add(new TracedLine(line.names(), Path.of(curves), line.origin()));
    }
    return new TracedDrawing(file, scaled, true, unread);
  }

  private static Curve scaled(Curve curve, double factor) {
    if (curve instanceof Cubic cubic) {
      return new Cubic(
          scaled(cubic.start(), factor),
          scaled(cubic.control1(), factor),
          scaled(cubic.control2(), factor),
          scaled(cubic.end(), factor));
    }
    return new Line(scaled(curve.start(), factor), scaled(curve.end(), factor));
  }

  private static Point scaled(Point point, double factor) {
    return new Point(point.x() * factor, point.y() * factor);
  }
}
