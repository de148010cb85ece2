/** One class a check; returns findings, changes nothing. */
@NullMarked
package org.hemwright.checks;

import org.jspecify.annotations.NullMarked;
