package org.hemwright.draft.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The slots of a plan that a size run is made from, in the order of the document.
 *
 * @param numbers every number that has a name, by that name
 * @param things every drawn thing that has a name, in the order of the document
 */
record Parts(
    List<DialPlan> dials,
    List<PiecePlan> pieces,
    List<SeamPlan> seams,
    List<ElasticPlan> elastics,
    Map<String, List<Integer>> numbers,
    List<PlannedThing> things) {
  Parts {
    dials = List.copyOf(dials);
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
    elastics = List.copyOf(elastics);
    things = List.copyOf(things);
    numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
  }
}
