/**
 * Writes a sheet as a PNG picture, drawn without a screen.
 *
 * <p>The picture states its resolution, so that it keeps its size in millimetres. Anti-aliased
 * rendering by the JDK: the same bytes on one installation. Open {@link
 * org.hemwright.paper.png.PngWriter}.
 */
@NullMarked
package org.hemwright.paper.png;

import org.jspecify.annotations.NullMarked;
