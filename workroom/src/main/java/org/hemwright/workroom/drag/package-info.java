/**
 * Dragging on the table: a window takes hold of a thing, moves it, and lets it go; the numbers that
 * she wrote change, and every size follows while it is moved.
 *
 * <p>Which numbers, and to what, is worked out by {@link org.hemwright.draft.edit.Drag}; here it is
 * only kept for each window while it lasts. The text changes when the thing is let go, as one
 * revision. Open {@link org.hemwright.workroom.drag.DragView} first.
 */
@NullMarked
package org.hemwright.workroom.drag;

import org.jspecify.annotations.NullMarked;
