package org.hemwright.draft.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hemwright.pattern.quantity.Quantity;

/**
 * Where dials stand, as far as not where the document has them.
 *
 * @param values by the dial's name, each of the dial's own quantity
 */
public record DialSettings(Map<String, Quantity> values) {
  /** All dials as the document has them. */
  public static final DialSettings NONE = new DialSettings(Map.of());

  public DialSettings {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
  }

  /** The same, with one dial turned. */
  public DialSettings with(String dial, Quantity value) {
    Map<String, Quantity> more = new LinkedHashMap<>(values);
    more.put(dial, value);
    return new DialSettings(more);
  }
}
