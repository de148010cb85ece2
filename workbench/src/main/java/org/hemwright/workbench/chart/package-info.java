/**
 * Her own chart brought in: what each heading is taken for is proposed, and becomes a size chart
 * only when she confirms it; what is missing can be estimated from a survey, and is marked so.
 *
 * <p>Open {@link org.hemwright.workbench.chart.BroughtChart} first.
 */
@NullMarked
package org.hemwright.workbench.chart;

import org.jspecify.annotations.NullMarked;
