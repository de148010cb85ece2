package org.hemwright.draft.plan;

import org.hemwright.pattern.finding.Origin;

/**
 * A dial as planned.
 *
 * @param slot the slot of its value
 * @param literal the place of its value among all literals
 * @param from the slot of the least it may be
 * @param to the slot of the most
 */
record DialPlan(String name, int slot, int literal, int from, int to, String text, Origin origin) {}
