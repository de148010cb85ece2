package org.hemwright.draft.edit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.hemwright.geometry.Point;

/**
 * What a drag came to.
 *
 * @param literals the numbers that changed, by their index in the drag's plan (mm, rad or plain)
 * @param text the document that says so
 * @param place where the thing is now, which is as near as rounded numbers come
 */
public record Dragged(Map<Integer, Double> literals, String text, Point place) {
  public Dragged {
    literals = Collections.unmodifiableMap(new LinkedHashMap<>(literals));
  }
}
