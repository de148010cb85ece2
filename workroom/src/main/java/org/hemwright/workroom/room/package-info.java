/**
 * One open folder: its texts, the revision they stand at, the draft that they come to and the
 * windows that look at it.
 *
 * <p>All of it is changed on one thread, in the order in which windows ask; what takes long is
 * worked out beside it and says which revision it shows. A view is a part of what a window shows:
 * it answers questions and hears of every revision. What is on the disk is the business of {@code
 * Keeping}. Open {@link org.hemwright.workroom.room.Room} first, then {@code View}.
 */
@NullMarked
package org.hemwright.workroom.room;

import org.jspecify.annotations.NullMarked;
