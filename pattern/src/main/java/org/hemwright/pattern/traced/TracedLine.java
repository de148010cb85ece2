package org.hemwright.pattern.traced;

import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Origin;

/**
 * One line of a drawing.
 *
 * @param names what it can be called by: its own names first, then those of the groups and layers
 *     round it, the innermost first
 * @param path exact, in millimetres, y upward; closed where it was drawn closed
 * @param origin where it stands in its file
 */
public record TracedLine(List<String> names, Path path, Origin origin) {
  public TracedLine {
    names = List.copyOf(names);
  }

  /** Whether it bears a name, or lies in a layer or group that does. */
  public boolean isCalled(String name) {
    return names.contains(name);
  }

  /** The middle of the box round it: where a dot or a small cross was meant to lie. */
  public Point middle() {
    return path.bounds().centre();
  }
}
