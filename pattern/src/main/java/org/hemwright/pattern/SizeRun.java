package org.hemwright.pattern;

import java.util.List;
import java.util.Optional;

/**
 * Every piece in every size: what a document and a chart come to, and what every later stage reads.
 *
 * @param pattern what is the same in every size
 * @param sizes one for each size asked for, in the chart's order
 */
public record SizeRun(Pattern pattern, List<SizedPattern> sizes) {
  public SizeRun {
    sizes = List.copyOf(sizes);
  }

  /** The pattern in the size of that name. */
  public Optional<SizedPattern> size(String name) {
    return sizes.stream().filter(sized -> sized.size().name().equals(name)).findFirst();
  }
}
