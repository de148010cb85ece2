/**
 * What happened to the texts of a folder: numbered revisions, each a list of splices, each splice
 * with the text it took away, so that any of them can be undone and followed by others.
 *
 * <p>Offsets are UTF-16 units. Nothing here touches a file or knows of windows. Open {@link
 * org.hemwright.workroom.history.Splice} first, then {@code Revision} and {@code Texts}.
 */
@NullMarked
package org.hemwright.workroom.history;

import org.jspecify.annotations.NullMarked;
