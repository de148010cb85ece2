package org.hemwright.draft.plan;

import org.hemwright.pattern.finding.Origin;

/**
 * An elastic as planned.
 *
 * @param check the slot that looks its numbers over
 * @param width the slot of its width
 * @param length the slot of the finished loop
 * @param overlap the slot of the overlap
 */
record ElasticPlan(
    String name, String piece, int check, int width, int length, int overlap, Origin origin) {}
