package org.hemwright.booklet.part;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.hemwright.booklet.figure.StepFigures;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.make.Step;

/**
 * The drawings of one telling's steps, each drawn once: drawing is most of the work of a booklet,
 * and other words beside a step leave its drawing as it is.
 */
public final class StepDrawings {
  private final Map<Named, Optional<Figure>> drawn = new ConcurrentHashMap<>();

  private record Named(String step, List<Inline> title) {}

  /** The drawing of a step, as {@link StepFigures} draws it. */
  Optional<Figure> of(Telling telling, Step step, List<Inline> title) {
    Named named = new Named(step.id(), List.copyOf(title));
    Optional<Figure> known = drawn.get(named);
    if (known == null) {
      known = StepFigures.of(telling, step, title);
      drawn.put(named, known);
    }
    return known;
  }
}
