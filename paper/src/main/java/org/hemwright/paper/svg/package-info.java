/**
 * Writes a sheet as an SVG 1.1 picture of its true size in millimetres.
 *
 * <p>Words are drawn as shapes, so that they look and measure the same on every machine, with their
 * text as the group's title. No scripts, no styles from elsewhere, no outside references. Groups
 * carry an id, a title and the sizes they belong to. Open {@link
 * org.hemwright.paper.svg.SvgWriter}.
 */
@NullMarked
package org.hemwright.paper.svg;

import org.jspecify.annotations.NullMarked;
