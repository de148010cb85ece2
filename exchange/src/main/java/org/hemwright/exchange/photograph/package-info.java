/**
 * Photographs and scans of paper pieces: the outline of each piece in the picture, straightened, in
 * millimetres, y upward, drawn with few smooth curves.
 *
 * <p>What straightens a picture is the printed {@link org.hemwright.pattern.traced.ReferenceCard},
 * found by itself or pointed at; a scan, which is straight already, needs only a ruler, two places
 * and the length between them. Every answer says how far it may be off (mm), from how well the
 * card's corners agree and how far from the card the piece reaches.
 *
 * <p>Asked of a picture: a paper piece that is clearly lighter or darker than what it lies on,
 * whole within the picture, with the card beside it in the same plane or wholly upon it. Bent
 * lenses, folds and shadows are not undone. Refused, in a finding: what is no JPEG or PNG, what is
 * too large, and pictures in which nothing can be found. Nothing is stored, nothing outside the
 * bytes is read.
 *
 * <p>Pixels are counted from the upper left corner of the upright picture, x to the right, y down;
 * the middle of the first pixel is (0.5, 0.5).
 *
 * <p>Open {@link org.hemwright.exchange.photograph.PhotographReader} first.
 */
@NullMarked
package org.hemwright.exchange.photograph;

import org.jspecify.annotations.NullMarked;
