package org.hemwright.draft.plan.piece;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Edge;

/**
 * How the corners of a piece are finished: as the designer says, else turned back beside a hem that
 * is turned back, else mitred (handbook section 3, Corner types). Where two such hems meet neither
 * can be mirrored over the other first, and the corner is mitred.
 *
 * @param stated what the designer says, by the two edges that meet
 */
public record CornerRules(Map<Set<String>, CornerFinish> stated) {
  public CornerRules {
    stated = new LinkedHashMap<>(stated);
  }

  @Override
  public Map<Set<String>, CornerFinish> stated() {
    return new LinkedHashMap<>(stated);
  }

  CornerFinish finish(Edge before, Edge after) {
    CornerFinish said = stated.get(Set.of(before.name(), after.name()));
    return said != null ? said : CornerFinish.between(before, after);
  }
}
