package org.hemwright.paper.sheet;

import org.hemwright.geometry.Box;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Vector;

/**
 * A line along a path. Its ends are cut square, its corners mitred; a dashed line begins with ink
 * at the path's start.
 */
public record Stroke(Path path, Pen pen, Layer layer, Subject subject) implements Inked {
  /** How far a mitred corner may reach, as a multiple of the pen's width. */
  public static final double MITRE_LIMIT = 4;

  /** The same with another pen. */
  public Stroke in(Pen other) {
    return new Stroke(path, other, layer, subject);
  }

  @Override
  public Stroke moved(Vector step) {
    return new Stroke(path.moved(Motion.move(step)), pen, layer, subject);
  }

  @Override
  public Box bounds() {
    return path.bounds().grown(pen.width() * MITRE_LIMIT / 2);
  }
}
