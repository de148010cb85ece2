/**
 * Making: what the maker does, step by step, as values.
 *
 * <p>A {@link org.hemwright.pattern.make.Making} is stages of steps in the order of the document. A
 * {@link org.hemwright.pattern.make.Step} has an id that stays, an {@link
 * org.hemwright.pattern.make.Act}, what it is done to ({@link org.hemwright.pattern.make.Work}: a
 * seam, an edge, a piece, an elastic, a cord, an opening), how it is stitched ({@link
 * org.hemwright.pattern.make.Sewing}) and pressed. Lengths are millimetres; an {@link
 * org.hemwright.pattern.make.Amount} may be a number of the document that changes with size.
 *
 * <p>Names are resolved: a step names only what the pattern has. Nothing here is judged, worded or
 * measured: {@code pattern.construction} follows the steps and works out what they need. Open
 * {@link org.hemwright.pattern.make.Step} first, then {@link org.hemwright.pattern.make.Act}.
 */
@NullMarked
package org.hemwright.pattern.make;

import org.jspecify.annotations.NullMarked;
