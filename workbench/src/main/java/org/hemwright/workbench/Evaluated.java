package org.hemwright.workbench;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;

/**
 * What a pattern folder came to.
 *
 * @param run every piece that could be drawn, in every size; absent when nothing could be
 * @param problems what stands in the way or is worth a look, in the order of the files
 * @param sources the files that were read, by name
 */
public record Evaluated(
    Optional<SizeRun> run, List<Finding> problems, SortedMap<String, byte[]> sources) {
  public Evaluated {
    problems = List.copyOf(problems);
    sources = Collections.unmodifiableSortedMap(new TreeMap<>(sources));
  }

  /** Whether the input is right as it stands: there is a run, and no problem fails it. */
  public boolean sound() {
    return run.isPresent()
        && problems.stream().noneMatch(problem -> problem.status() == Status.FAIL);
  }
}
