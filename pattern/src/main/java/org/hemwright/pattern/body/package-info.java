/**
 * Sizes and the size chart: body measurements by size, each cell with its place in the file; and
 * what is known of bodies at large, as derived figures of a survey. Millimetres. Open {@link
 * org.hemwright.pattern.body.SizeChart} first, then {@link org.hemwright.pattern.body.BodySurvey}.
 */
@NullMarked
package org.hemwright.pattern.body;

import org.jspecify.annotations.NullMarked;
