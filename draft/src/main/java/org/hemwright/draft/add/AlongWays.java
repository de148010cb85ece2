package org.hemwright.draft.add;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/** The ways to say a place along a line, the one that it lies on best first. */
final class AlongWays {
  private static final List<String> EVEN = List.of("", "", "halves", "thirds", "quarters");

  private AlongWays() {}

  /**
   * The ways for the place nearest to where it was pointed.
   *
   * @param even whether a place at an even part may be said as all of those parts
   */
  static List<String> of(Scene scene, Path path, Point at, boolean even) {
    double length = path.length();
    double place = path.nearest(at).distance();
    List<String> ways = new ArrayList<>();
    for (int parts = 2; parts <= 4; parts++) {
      for (int part = 1; part < parts; part++) {
        boolean reduced = parts == 4 && part == 2;
        if (!reduced && StrictMath.abs(place - length * part / parts) < scene.near()) {
          ways.add("at " + (parts == 3 ? part + "/3" : 100 * part / parts + "%") + " from start");
          if (even) {
            ways.add("at " + EVEN.get(parts));
          }
        }
      }
    }
    boolean fromStart = place <= length / 2;
    String near = fromStart ? "start" : "end";
    String far = fromStart ? "end" : "start";
    double rest = fromStart ? place : length - place;
    ways.add("at " + scene.spelling().length(rest) + " from " + near);
    ways.add("at " + scene.spelling().share(rest / length) + " from " + near);
    ways.add("at " + scene.spelling().length(length - rest) + " from " + far);
    return ways;
  }
}
