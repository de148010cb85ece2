/**
 * Lays loose shapes on a strip of cloth so that the strip is as short as can be found: polygons in,
 * places out.
 *
 * <p><b>Frame and units.</b> x runs along the strip (the grain), y across it; every shape keeps to
 * 0 ≤ y ≤ strip width and x ≥ 0, and the length used is to be small. Coordinates are in the
 * caller's own unit, whatever it is. A place turns a shape about its own origin (after a reflection
 * y → −y, where a turn asks for one) and then moves it.
 *
 * <p><b>Promises.</b> A layout that leaves this package has been accepted by {@link
 * org.hemwright.cloth.laying.LayoutChecker}, which shares no code with the search. The same
 * problem, work and seed give the same layout on every machine, on one core or two. Work is counted
 * in places looked at, never in seconds. The search runs on an integer grid of at least
 * 2<sup>30</sup> steps across the strip.
 *
 * <p><b>What it does not do.</b> It knows nothing of folds, nap, selvedges or gaps: the cloth's own
 * rules are put into turns, lanes and outlines before a problem comes here. It refuses outlines
 * that cross or touch themselves, and shapes that fit the strip in none of their turns.
 *
 * <p>Open {@link org.hemwright.cloth.laying.Laying} first, then {@link
 * org.hemwright.cloth.laying.StripProblem}.
 */
@NullMarked
package org.hemwright.cloth.laying;

import org.jspecify.annotations.NullMarked;
