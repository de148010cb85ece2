package org.hemwright.cloth.laying;

/**
 * The answer to a {@link StripProblem}.
 *
 * @param layout the shortest layout found; {@link LayoutChecker} accepts it
 * @param complete whether all the work asked for was done; a layout that was stopped early depends
 *     on when
 * @param work how many places were looked at
 */
public record LayResult(Layout layout, boolean complete, long work) {}
