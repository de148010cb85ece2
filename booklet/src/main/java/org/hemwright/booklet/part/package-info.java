/**
 * The parts of the booklet in the order of handbook section 7; a class for those that go together.
 *
 * <p>Each makes a section from the run, its measurements, the cloth table and the designer's prose;
 * a part that has nothing to say is left out. Open {@link org.hemwright.booklet.part.Parts} first.
 */
@NullMarked
package org.hemwright.booklet.part;

import org.jspecify.annotations.NullMarked;
