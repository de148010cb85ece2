/**
 * The steps of a document, their names resolved: text becomes {@link
 * org.hemwright.pattern.make.Making}.
 *
 * <p>A step is read over what the garment has ({@link org.hemwright.draft.plan.make.Garment});
 * which views it belongs to follows from the pieces that its work takes. What it names and the
 * pattern has not, or what its act cannot be done to, is told and the step left out. Whether the
 * steps make a garment is not asked here: checks do that. Open {@link
 * org.hemwright.draft.plan.make.MakeReader} first, then {@code StepReader}.
 */
@NullMarked
package org.hemwright.draft.plan.make;

import org.jspecify.annotations.NullMarked;
