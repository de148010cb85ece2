package org.hemwright.draft.plan;

import java.util.Optional;
import org.hemwright.draft.plan.node.ElasticNode;
import org.hemwright.pattern.finding.Origin;

/**
 * An elastic as planned.
 *
 * @param edge the edge whose casing holds it, where the document names one
 * @param check the slot that looks its numbers over
 * @param numbers the slots of its numbers
 * @param round the name of what it holds
 * @param over the name of what it must pass
 */
record ElasticPlan(
    String name,
    String piece,
    Optional<String> edge,
    int check,
    ElasticNode numbers,
    Optional<String> round,
    Optional<String> over,
    Origin origin) {}
