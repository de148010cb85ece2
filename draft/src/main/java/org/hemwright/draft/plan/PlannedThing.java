package org.hemwright.draft.plan;

import org.hemwright.draft.plan.name.Drawn;
import org.hemwright.draft.syntax.Span;
import org.hemwright.pattern.body.SizeRange;

/**
 * A drawn thing that has a name, as planned: a point, a path, an edge, a level.
 *
 * @param owner the piece or part it belongs to
 * @param name its short name there
 * @param what what it is
 * @param slot the slot of its value
 * @param span where it is named, or brought in
 * @param given where it was first named
 * @param sizes the sizes it is drawn in
 */
public record PlannedThing(
    String owner, String name, Drawn.What what, int slot, Span span, Span given, SizeRange sizes) {}
