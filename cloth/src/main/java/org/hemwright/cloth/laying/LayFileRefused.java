package org.hemwright.cloth.laying;

import java.util.List;
import java.util.stream.Collectors;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;

/**
 * A file of loose shapes, or of a layout, that cannot be worked with; it carries every problem
 * found, each with its place.
 */
public final class LayFileRefused extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<Finding> problems;

  LayFileRefused(List<Finding> problems) {
    super(lines(problems));
    this.problems = List.copyOf(problems);
  }

  private static String lines(List<Finding> problems) {
    Wording wording = Wording.of(Laying.messages());
    return problems.stream().map(wording::line).collect(Collectors.joining("\n"));
  }

  /** The problems, each with its place in the file, at least one. */
  public List<Finding> problems() {
    return problems;
  }
}
