package org.hemwright.workbench.advise;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.finding.Finding;

/**
 * An answer.
 *
 * @param size to cut
 * @param by the measurement that it was chosen by
 * @param between the two sizes that the body lies between, if it is near neither
 * @param beyond whether the body lies beyond the chart
 * @param measures each that was given, with what the chart has in that size
 * @param fits at each level whose body measurement was given
 * @param said the whole answer, a sentence each, in the order of a reply
 */
public record Advice(
    String size,
    String by,
    Optional<List<String>> between,
    boolean beyond,
    Map<String, Measured> measures,
    List<Fit> fits,
    List<Finding> said) {
  public Advice {
    measures = Collections.unmodifiableMap(new LinkedHashMap<>(measures));
    fits = List.copyOf(fits);
    said = List.copyOf(said);
  }

  /**
   * A measurement (mm).
   *
   * @param yours the body's
   * @param drawn what the size is drawn for
   * @param nearest the size that comes nearest to this measurement alone
   */
  public record Measured(double yours, double drawn, String nearest) {}

  /**
   * How the garment goes round her (mm; stretch as a share).
   *
   * @param finished the garment's girth
   * @param needed how far the cloth stretches when she wears it; 0 where it need not
   * @param stretch how far the cloth that the pattern asks for stretches that way
   * @param comfortable whether it takes no more of that than is comfortable
   */
  public record Fit(
      String level,
      double yours,
      double finished,
      double needed,
      double stretch,
      boolean comfortable) {}
}
