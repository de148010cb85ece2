/**
 * The sample log, {@code samples.csv}: a line for each place that a fitting of a sewn sample
 * showed.
 *
 * <p>A text table becomes a {@link org.hemwright.pattern.sample.SampleLog}, lengths in millimetres.
 * A line that cannot be read becomes a finding with its line and column, and the others are still
 * read. Notes stand in no maker's way: all findings are worth a look, none fails.
 *
 * <p>Open {@link org.hemwright.exchange.sample.SampleLogReader} first.
 */
@NullMarked
package org.hemwright.exchange.sample;

import org.jspecify.annotations.NullMarked;
