/** The pattern language: text and size chart to a SizeRun. */
@NullMarked
package org.hemwright.draft;

import org.jspecify.annotations.NullMarked;
