/**
 * A piece brought in from a drawing: what the drawing holds, what the designer says that each part
 * of it is, and the lines of the document that say so; how a traced piece grows from size to size.
 *
 * <p>Lengths are millimetres, in the plane of the drawing. What a part is called may suggest what
 * it is; that is a proposal, and nothing is written before she has confirmed it. Nothing here reads
 * or writes a file.
 *
 * <p>Open {@link org.hemwright.workbench.traced.TracedPiece} first.
 */
@NullMarked
package org.hemwright.workbench.traced;

import org.jspecify.annotations.NullMarked;
