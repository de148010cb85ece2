/**
 * The instruction booklet, the posts and the listing, all made from the pattern.
 *
 * <p>Pure: a size run, the cloth table and the designer's texts and pictures in, files out. The
 * same input gives the same bytes. Nothing here judges the pattern, and nothing reads a file. Open
 * {@link org.hemwright.booklet.BookletMaking} first.
 */
@NullMarked
package org.hemwright.booklet;

import org.jspecify.annotations.NullMarked;
