/**
 * Writes a booklet: one markup for both, a page that stands by itself (HTML) and a tagged PDF for
 * A4, Letter and large print.
 *
 * <p>The same booklet gives the same bytes: document id and dates come from the pattern. Nothing is
 * fetched: fonts, figures and the designer's pictures are handed in. Open {@link
 * org.hemwright.booklet.write.BookletPdf} first.
 */
@NullMarked
package org.hemwright.booklet.write;

import org.jspecify.annotations.NullMarked;
