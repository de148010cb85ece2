/**
 * Starters: sound blocks to begin a garment with, each a whole pattern folder packed in the
 * program, and new folders made from them. A folder that is there already is never written into.
 *
 * <p>Open {@link org.hemwright.workbench.starter.Starter} first.
 */
@NullMarked
package org.hemwright.workbench.starter;

import org.jspecify.annotations.NullMarked;
