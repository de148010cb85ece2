package org.hemwright.draft.plan;

import org.hemwright.draft.plan.name.Lookup;
import org.hemwright.draft.plan.name.Scope;
import org.hemwright.draft.plan.name.SizeNames;
import org.hemwright.draft.plan.node.NodeList;
import org.hemwright.draft.plan.problem.Problems;
import org.hemwright.pattern.traced.TracedInputs;

/**
 * What all who turn statements into nodes share.
 *
 * @param problems what is wrong so far
 * @param nodes the nodes so far
 * @param lookup what names stand for
 * @param sizes the sizes of the chart
 * @param document the names of the whole document
 * @param inputs what else the document names
 */
record Compilation(
    Problems problems,
    NodeList nodes,
    Lookup lookup,
    SizeNames sizes,
    Scope document,
    TracedInputs inputs) {}
