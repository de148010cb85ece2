/**
 * Numbers with a kind: lengths and angles as a person types and reads them; millimetres and radians
 * inside. Open Length to read one, LengthFormat to show one.
 */
@NullMarked
package org.hemwright.pattern.quantity;

import org.jspecify.annotations.NullMarked;
