/**
 * Writes pages as markup that is HTML and XML alike: element by element, closed in the order in
 * which they were opened, text and attributes escaped.
 *
 * <p>Knows no page: what stands where is for those who write one. Refuses to close an element that
 * is not the innermost and to end while one is open. Open {@link
 * org.hemwright.paper.markup.Markup}.
 */
@NullMarked
package org.hemwright.paper.markup;

import org.jspecify.annotations.NullMarked;
