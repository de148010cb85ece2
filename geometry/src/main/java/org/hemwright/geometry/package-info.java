/** Points, curves, paths and outlines; knows nothing of sewing. */
@NullMarked
package org.hemwright.geometry;

import org.jspecify.annotations.NullMarked;
