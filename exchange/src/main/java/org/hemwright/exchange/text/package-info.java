/**
 * Bytes as text, with the place where they are none. Open {@link
 * org.hemwright.exchange.text.FileText} first.
 */
@NullMarked
package org.hemwright.exchange.text;

import org.jspecify.annotations.NullMarked;
