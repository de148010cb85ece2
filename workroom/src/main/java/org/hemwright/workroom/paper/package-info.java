/**
 * The pages as they will be printed, laid out as they are taped together, and the files made of
 * them.
 *
 * <p>Which pages there are is worked out beside the room's work; each is drawn when it comes into
 * sight. An answer says which revision it is of. Files go where {@code hemwright paper} puts them.
 * Open {@link org.hemwright.workroom.paper.PaperView} first, then {@code PaperChoice}.
 */
@NullMarked
package org.hemwright.workroom.paper;

import org.jspecify.annotations.NullMarked;
