package org.hemwright.cloth.laying;

import java.util.List;

/**
 * A file of loose shapes that cannot be laid; it carries every problem found, each with its place.
 */
public final class LayFileRefused extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<String> problems;

  LayFileRefused(List<String> problems) {
    super(String.join("\n", problems));
    this.problems = List.copyOf(problems);
  }

  /**
   * The problems, each as {@code file:line:column: what is wrong; what would mend it}; at least
   * one.
   */
  public List<String> problems() {
    return problems;
  }
}
