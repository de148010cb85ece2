package org.hemwright.booklet.figure;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.make.Step;

/**
 * The table on which the pieces of a step lie, and which of them are named there.
 *
 * @param telling what is told, and in which words
 * @param scene what is drawn; more is put on it
 * @param shown the names of the pieces that are seen, in the order in which they were put down
 */
record StepScene(Telling telling, Step step, Scene scene, Set<String> shown) {
  /** A piece this much longer than wide lies lengthwise. */
  private static final double NARROW = 3.5;

  /** An empty table. */
  static StepScene of(Telling telling, Step step) {
    return new StepScene(telling, step, new Scene(), new LinkedHashSet<>());
  }

  /** Names a piece where no line is in the way. */
  void show(Flat flat, List<Path> lines) {
    shown.add(flat.piece());
    label(new Labels(flat.outline().bounds()).avoid(lines), flat, point -> true);
  }

  void show(Flat flat) {
    show(flat, List.of());
  }

  void label(Labels labels, Flat flat, Predicate<Point> seen) {
    labels
        .on(flat.outline(), seen)
        .ifPresent(at -> scene.words(Integer.toString(flat.number()), at));
  }

  /** A turn that lays a long narrow piece level. */
  static Motion lengthwise(Flat flat) {
    Box box = flat.outline().bounds();
    return box.height() > NARROW * box.width()
        ? Motion.turn(box.centre(), -Math.PI / 2)
        : Motion.identity();
  }
}
