/**
 * What windows and the server say to each other.
 *
 * <p>A window asks in JSON text, {@code {"id": 7, "ask": "hover", ...}}; the server answers and
 * tells in binary frames ({@link org.hemwright.workroom.talk.Frame}): a JSON head and, after it,
 * numbers. Open {@code Frame} first, then {@code Question}.
 */
@NullMarked
package org.hemwright.workroom.talk;

import org.jspecify.annotations.NullMarked;
