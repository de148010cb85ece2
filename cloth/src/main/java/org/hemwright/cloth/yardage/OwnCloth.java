package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.quantity.Quantity;

/**
 * What someone says of a cloth that she owns, or sees in a shop.
 *
 * @param length how much there is of it (mm, before it shrinks); nothing where it is not asked
 * @param stretchAcross how far it stretches across, 0.35 for 35 %
 * @param stretchAlong the same along
 * @param repeat how far apart the like bars of its stripes are, along it (mm); nothing where it is
 *     plain or not asked
 * @param prices by the fabric's name in the document
 */
public record OwnCloth(
    OptionalDouble length,
    OptionalDouble stretchAcross,
    OptionalDouble stretchAlong,
    OptionalDouble repeat,
    Map<String, Price> prices) {
  /** Nothing is said. */
  public static final OwnCloth UNSAID =
      new OwnCloth(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Map.of());

  public OwnCloth {
    prices = new LinkedHashMap<>(prices);
  }

  /** By the fabric's name; a copy. */
  @Override
  public Map<String, Price> prices() {
    return new LinkedHashMap<>(prices);
  }

  /** What a row costs; nothing where it does not fit or no price is known. */
  public OptionalDouble cost(YardageRow row) {
    Price price = prices.get(row.fabric().name());
    return price == null || row.need().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(price.of(row.need().get().buy()));
  }

  /**
   * About how much more a row takes for its stripes (mm, as bought); nothing where they are laid as
   * they are, or not asked.
   */
  public OptionalDouble extraForStripes(YardageRow row) {
    boolean laid = row.fabric().repeat().isPresent();
    return repeat.isEmpty() || laid || row.need().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(StackedPieces.extra(row.need().get().laying(), repeat.getAsDouble()));
  }

  /**
   * Whether it stretches as far as the pattern asks (handbook section 4): a finding for each fabric
   * and way that something is said of.
   *
   * @param fabrics the names of the fabrics that it is to stand in for; all where none is named
   */
  public List<Finding> judged(Pattern pattern, List<String> fabrics) {
    List<Finding> findings = new ArrayList<>();
    for (Fabric fabric : pattern.fabrics()) {
      if (fabrics.isEmpty() || fabrics.contains(fabric.name())) {
        judge(fabric, "across", fabric.stretchAcross(), stretchAcross, findings);
        judge(fabric, "along", fabric.stretchAlong(), stretchAlong, findings);
      }
    }
    return findings;
  }

  private static void judge(
      Fabric fabric, String way, OptionalDouble asked, OptionalDouble has, List<Finding> findings) {
    if (has.isEmpty()) {
      return;
    }
    if (asked.isEmpty()) {
      findings.add(
          Finding.ok("cloth-stretch-unasked", fabric.name())
              .with("fabric", fabric.name())
              .with("way", way)
              .at(fabric.origin())
              .build());
      return;
    }
    boolean enough = has.getAsDouble() >= asked.getAsDouble();
    Finding.Builder finding =
        enough
            ? Finding.ok("cloth-stretch-enough", fabric.name())
            : Finding.warn("cloth-stretch-short", fabric.name());
    findings.add(
        finding
            .with("fabric", fabric.name())
            .with("way", way)
            .with("asked", Argument.of(Quantity.ratio(asked.getAsDouble())))
            .with("has", Argument.of(Quantity.ratio(has.getAsDouble())))
            .values(has.getAsDouble(), asked.getAsDouble(), "")
            .at(fabric.origin())
            .build());
  }
}
