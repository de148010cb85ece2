/**
 * Keeps a folder's texts on the disk so that nothing is lost: an append-only journal, atomic
 * writing of the files themselves, and one lock for a folder. Only this package of the workroom
 * touches files.
 *
 * <p>Within a second of a change the journal holds it, flushed to the disk; the file follows. A
 * torn last line of the journal is left out when it is read. Open {@link
 * org.hemwright.workroom.keep.Keeper} first.
 */
@NullMarked
package org.hemwright.workroom.keep;

import org.jspecify.annotations.NullMarked;
