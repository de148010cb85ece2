/**
 * What she brings in from elsewhere: files of hers, sent in parts; drawings, whose parts she tells
 * apart, each answer drafted and shown before it is written; photographs of paper pieces, whose
 * outline she corrects on the picture; charts in the shape she has them.
 *
 * <p>What a drawing and a chart hold is read by {@code exchange}, what her answers come to is said
 * by {@code workbench.traced} and {@code workbench.chart}. A file is put into the pattern folder
 * only when she says so. Open {@link org.hemwright.workroom.bring.TraceView} first.
 */
@NullMarked
package org.hemwright.workroom.bring;

import org.jspecify.annotations.NullMarked;
