/**
 * Sizes and the size chart: body measurements by size, each cell with its place in the file. Open
 * SizeChart first.
 */
@NullMarked
package org.hemwright.pattern.body;

import org.jspecify.annotations.NullMarked;
