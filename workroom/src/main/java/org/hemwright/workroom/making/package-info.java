/**
 * The booklet as it will be read, made again beside the room's work after a change: its parts,
 * steps and figures as values, for the page to set in its own dress.
 *
 * <p>Open {@link org.hemwright.workroom.making.MakingView} first, then {@code BlockJson}.
 */
@NullMarked
package org.hemwright.workroom.making;

import org.jspecify.annotations.NullMarked;
