/**
 * The document beside the drawing: its text in step in every window, where each thing stands in it,
 * completion, values under the pointer, findings under the words, and its lines set neatly. All of
 * it comes from the one table of forms and the plan. Open {@link
 * org.hemwright.workroom.text.TextView} first.
 */
@NullMarked
package org.hemwright.workroom.text;

import org.jspecify.annotations.NullMarked;
