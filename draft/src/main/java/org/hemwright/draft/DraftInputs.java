package org.hemwright.draft;

import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.traced.TracedInputs;

/**
 * What a document names.
 *
 * @param chart the size chart
 * @param traced the drawings and rule tables
 */
public record DraftInputs(SizeChart chart, TracedInputs traced) {}
