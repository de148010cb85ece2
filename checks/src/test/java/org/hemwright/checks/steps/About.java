package org.hemwright.checks.steps;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/** What a finding of a mistake in a step is about: names of steps, and subjects. */
@FunctionalInterface
interface About {
  /** The step that was spoilt. */
  About ITSELF = (book, step) -> Set.of(step.id());

  /** The step that does it again. */
  About AGAIN = (book, step) -> Set.of(step.id() + "_again");

  /** The seams that the step sews. */
  About SEAMS = (book, step) -> seams(step);

  /** The edges that the step works on. */
  About EDGES = (book, step) -> texts(step.work(Work.OfEdge.class));

  Set<String> of(Workbook book, Step step);

  /** What either is about. */
  default About and(About other) {
    return (book, step) -> {
      Set<String> all = new HashSet<>(of(book, step));
      all.addAll(other.of(book, step));
      return all;
    };
  }

  /** What a step deals with, of one kind: {@code front.waist_dart}. */
  static About works(Class<? extends Work> kind) {
    return (book, step) -> texts(step.work(kind));
  }

  static Set<String> seams(Step step) {
    return step.work(Work.OfSeam.class).stream()
        .map(work -> "seam " + work.seam())
        .collect(Collectors.toSet());
  }

  private static Set<String> texts(List<? extends Work> works) {
    return works.stream().map(Work::text).collect(Collectors.toSet());
  }
}
