/**
 * Points, curves, paths and outlines; knows nothing of sewing. Open {@link
 * org.hemwright.geometry.Path} first.
 *
 * <p><b>Units.</b> Lengths are millimetres, angles radians and counter-clockwise, curvature is one
 * over millimetres and positive to the left; x runs right, y runs up. Every value is immutable and
 * gives the same numbers on every machine. All tolerances are in {@link
 * org.hemwright.geometry.Tolerance}.
 *
 * <p><b>What cannot be</b> is refused with a {@link org.hemwright.geometry.GeometryProblem}, whose
 * reason is a plain clause with the values in it; callers turn it into a finding that names the
 * place. Searches count their steps and end with such a reason, whatever they are given. Points lie
 * within ten kilometres of the origin.
 *
 * <table>
 * <caption>Operations</caption>
 * <tr><th>operation</th><th>input allowed</th><th>output promised</th></tr>
 * <tr><td>{@link org.hemwright.geometry.Path#of}</td>
 *     <td>lines and cubics in order, each starting where the last ends</td>
 *     <td>joints within 0.0001 mm welded into one point; wider gaps refused</td></tr>
 * <tr><td>{@link org.hemwright.geometry.Path#length length}, {@link
 *     org.hemwright.geometry.Path#at at}, {@link org.hemwright.geometry.Path#part part}</td>
 *     <td>any path, cusps too</td>
 *     <td>lengths to a billionth; places to a millionth of a millimetre; parts that join back into
 *     the whole</td></tr>
 * <tr><td>{@link org.hemwright.geometry.Path#nearest nearest}</td>
 *     <td>any path and point</td>
 *     <td>the nearest place of all, not only of those nearby</td></tr>
 * <tr><td>{@link org.hemwright.geometry.Path#meetings meetings}, {@link
 *     org.hemwright.geometry.Outline#crossings crossings}</td>
 *     <td>any two paths; any closed path with itself</td>
 *     <td>every place where they come within 0.0001 mm, once: crossings, touches, ends, and the two
 *     ends of a shared stretch</td></tr>
 * <tr><td>{@link org.hemwright.geometry.Outline#signedArea signedArea}</td>
 *     <td>any closed path</td>
 *     <td>the area by Green's theorem, exact but for rounding</td></tr>
 * <tr><td>{@link org.hemwright.geometry.SmoothCurve}</td>
 *     <td>points apart from one another, headings, curls, tensions of 0.75 and more</td>
 *     <td>the curve of Hobby and METAFONT, control points to a millionth of the chord</td></tr>
 * <tr><td>{@link org.hemwright.geometry.CircularArc}</td>
 *     <td>an arc of any radius, up to one whole turn</td>
 *     <td>cubics within 0.0002 mm of the true circle</td></tr>
 * <tr><td>{@link org.hemwright.geometry.OffsetPath}</td>
 *     <td>a path that does not cross itself, and any distance</td>
 *     <td>a path without crossings that nowhere lies nearer than the distance less 0.02 mm, and
 *     farther only at mitres; refused when nothing is left or when it falls apart</td></tr>
 * </table>
 *
 * <p><b>How.</b> Lengths are integrated by Gauss's rule, halved until two rules agree. Polynomials
 * are solved in Bernstein form ({@link org.hemwright.geometry.Bernstein}), so that no root is
 * missed. Two cubics are halved against one another until what is left either crosses once, and
 * Newton's steps find it, or runs along one another, and is searched as a zone ({@link
 * org.hemwright.geometry.CubicContacts}). An offset is drawn stretch by stretch ({@link
 * org.hemwright.geometry.OffsetSketch}), cut wherever right can turn to wrong, and what is right is
 * linked again ({@link org.hemwright.geometry.OffsetTrim}).
 *
 * <p><b>What it does not do.</b> It joins, cuts and measures lines, but neither unites nor
 * intersects areas, and it draws nothing.
 */
@NullMarked
package org.hemwright.geometry;

import org.jspecify.annotations.NullMarked;
