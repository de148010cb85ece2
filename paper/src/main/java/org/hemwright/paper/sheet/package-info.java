/**
 * A drawing at fixed places, which every writer can put down without asking anything more.
 *
 * <p>Millimetres, x to the right, y up, as in a piece's own plane and on a PDF page. A sheet holds
 * strokes, fills, hatches, words already set, pictures and clips, in the order in which they are
 * put down; each says which layer it belongs to and what it is about. Everything is immutable.
 * Nothing here knows of pages, printers or file formats. Open {@link
 * org.hemwright.paper.sheet.Sheet} first.
 */
@NullMarked
package org.hemwright.paper.sheet;

import org.jspecify.annotations.NullMarked;
