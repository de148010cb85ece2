/**
 * Rule tables: by how much corners and control points move from size to size, pasted from a
 * spreadsheet, become a {@link org.hemwright.pattern.traced.RuleTable}, every row with its place.
 *
 * <p>A row says one way of one point: {@code piece, edge, at, step (mm), 8 to 10, 10 to 12, …}.
 * Every problem is told; a table with a problem gives no rules.
 *
 * <p>Open {@link org.hemwright.exchange.rule.RuleTableReader} first.
 */
@NullMarked
package org.hemwright.exchange.rule;

import org.jspecify.annotations.NullMarked;
