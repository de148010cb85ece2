/**
 * The designer's own words: {@code booklet.md}, Markdown with named places for tables, figures,
 * numbers and sentences that hold for some sizes, views or cloths only.
 *
 * <p>Text in, blocks and findings out; an unknown name is a finding with its line and column. Open
 * {@link org.hemwright.booklet.prose.ProseReader} first.
 */
@NullMarked
package org.hemwright.booklet.prose;

import org.jspecify.annotations.NullMarked;
