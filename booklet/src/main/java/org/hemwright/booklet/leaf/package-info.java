/**
 * The booklet as a value, before it is HTML or PDF: sections of paragraphs, tables and figures.
 *
 * <p>Every number in generated text is a {@link org.hemwright.booklet.leaf.Inline.Value} that says
 * where it comes from ({@link org.hemwright.booklet.leaf.Provenance}); plain text holds no digits.
 * Open {@link org.hemwright.booklet.leaf.Booklet} first, then {@link
 * org.hemwright.booklet.leaf.Block}.
 */
@NullMarked
package org.hemwright.booklet.leaf;

import org.jspecify.annotations.NullMarked;
