/**
 * The rules of the trade for cutting cloth (handbook section 5): what may lie where, on cloth that
 * is single or folded, with nap or without.
 *
 * <p><b>Frame and units.</b> Millimetres. x runs along the cloth from its cut end, y across it:
 * from the fold where the cloth is folded lengthwise, else from one selvedge. A piece is turned
 * once so that its grain arrow points along x; from then on it may be turned end for end, or not,
 * as the nap allows.
 *
 * <p><b>Promises.</b> A {@link org.hemwright.cloth.rule.ClothPlan} puts the rules of one way of
 * folding into strips, lanes and turns that {@link org.hemwright.cloth.laying} can lay: pairs are
 * one shape on doubled cloth and two on single cloth; what is cut once, or twice unmirrored, is
 * never laid double unless it is its own mirror image; a piece on the fold slides along the fold
 * only. Outlines given to the search lie outside the true ones, by at most a thousandth of the
 * area. {@link org.hemwright.cloth.rule.ClothLaying} says where every cut piece then lies, and
 * {@link org.hemwright.cloth.rule.LayingRules} holds a laying against the rules once more, from the
 * pieces' own outlines.
 *
 * <p><b>Stripes and checks.</b> {@link org.hemwright.cloth.rule.MatchedPair} says which notches
 * seams bring together, {@link org.hemwright.cloth.rule.Matching} where in the repeat each copy
 * therefore lies, and which cannot have it. Even bars are mirrored with a copy and may be folded on
 * one; uneven ones go on one way, and such cloth is never folded. Bars meet at matched notches, to
 * a millimetre; {@link org.hemwright.cloth.rule.BarsApart} says how far they part beside them, and
 * {@link org.hemwright.cloth.rule.BarsAside} how a laying bears other bars than it was made for.
 *
 * <p>It refuses nothing: a piece that a cloth cannot take becomes a {@link
 * org.hemwright.cloth.rule.Misfit}. Open {@link org.hemwright.cloth.rule.ClothPlan} first.
 */
@NullMarked
package org.hemwright.cloth.rule;

import org.jspecify.annotations.NullMarked;
