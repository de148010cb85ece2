/**
 * How much cloth the size on the table takes, on every width and fold, and how it is laid.
 *
 * <p>Laying takes seconds and is done at length; what was laid before is kept in the folder and
 * comes at once. An answer says which revision and size it is of. Open {@link
 * org.hemwright.workroom.cloth.ClothView} first.
 */
@NullMarked
package org.hemwright.workroom.cloth;

import org.jspecify.annotations.NullMarked;
