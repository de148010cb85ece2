/**
 * The pattern folder: the few files that a pattern is made from, by plain name.
 *
 * <p>A folder is on the disk or packed in the program (the embedded demo). Nothing outside it is
 * ever read: a name with a path in it, and a link, are refused and told.
 *
 * <p>Open {@link org.hemwright.workbench.folder.PatternFolder} first.
 */
@NullMarked
package org.hemwright.workbench.folder;

import org.jspecify.annotations.NullMarked;
