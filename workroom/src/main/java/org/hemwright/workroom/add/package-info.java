/**
 * What she adds by pointing: the ways to say it, each drafted before it is offered, shown on the
 * table and as the lines that will be written.
 *
 * <p>The ways are found by {@code draft.add}; a way with which the document would not hold any more
 * is not offered. Open {@link org.hemwright.workroom.add.AddView} first.
 */
@NullMarked
package org.hemwright.workroom.add;

import org.jspecify.annotations.NullMarked;
