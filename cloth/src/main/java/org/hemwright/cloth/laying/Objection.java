package org.hemwright.cloth.laying;

import org.hemwright.pattern.finding.Finding;

/**
 * A reason to refuse a layout.
 *
 * @param placement the place in the layout's list of the placement that it is about, or −1 where it
 *     is about a count
 * @param finding what is wrong; {@link Laying#messages} has its sentence and what would mend it
 */
public record Objection(int placement, Finding finding) {

  /** The finding's code, such as {@code lay-overlap}. */
  public String code() {
    return finding.code();
  }
}
