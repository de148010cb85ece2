/**
 * Versions that were given out, frozen: {@code releases/1.0} holds the document and all that it was
 * made from, the evaluated run, and the manifest of the package, each known by its hash. A mail
 * years later is about the version that its writer bought; it is answered from here, and not by
 * evaluating old text with a newer program.
 *
 * <p>A frozen folder is never written again. A release that is not whole is told, and never used.
 *
 * <p>Open {@link org.hemwright.workbench.release.ReleaseShelf} first.
 */
@NullMarked
package org.hemwright.workbench.release;

import org.jspecify.annotations.NullMarked;
