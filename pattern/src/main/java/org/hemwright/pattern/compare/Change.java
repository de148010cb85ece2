package org.hemwright.pattern.compare;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.finding.Argument;

/**
 * One thing that differs between the old version of a pattern and the new.
 *
 * @param changed what it is
 * @param subject in the new document's names, or the old one's where the new has it no more: {@code
 *     front.side}, {@code seam waist_seam}, {@code dial hip_ease}
 * @param piece the piece it belongs to, by the name it has now
 * @param was what stood there; absent where it has values by size, or where nothing stood
 * @param is what stands there now
 * @param sizes in which it changed, in the new chart's order; none where size does not matter
 * @param values by size, for what is a length; their sizes are {@code sizes}
 */
public record Change(
    Changed changed,
    String subject,
    Optional<String> piece,
    Optional<Argument> was,
    Optional<Argument> is,
    List<String> sizes,
    Map<String, Values> values) {
  public Change {
    sizes = List.copyOf(sizes);
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /**
   * Lengths of one size (mm).
   *
   * @param was in the old version
   * @param is in the new
   * @param apart how far old and new lie apart, 0 or more
   * @param at where they lie farthest apart, on the new piece
   */
  public record Values(double was, double is, double apart, Optional<Point> at) {
    /** Two lengths. */
    static Values of(double was, double is) {
      return new Values(was, is, Math.abs(is - was), Optional.empty());
    }
  }

  /** Something said otherwise than before. */
  static Change of(Changed changed, String subject, Argument was, Argument is) {
    return new Change(
        changed, subject, Optional.empty(), Optional.of(was), Optional.of(is), List.of(), Map.of());
  }

  /** Something that came, went, or changed its name. */
  static Change of(Changed changed, String subject) {
    return new Change(
        changed,
        subject,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Map.of());
  }

  /** Lengths that changed in some sizes. */
  static Change of(Changed changed, String subject, Map<String, Values> values) {
    return new Change(
        changed,
        subject,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.copyOf(values.keySet()),
        values);
  }

  /** The same, of a piece. */
  Change on(String name) {
    return new Change(changed, subject, Optional.of(name), was, is, sizes, values);
  }

  /** The same, in some sizes. */
  Change in(List<String> names) {
    return new Change(changed, subject, piece, was, is, names, values);
  }
}
