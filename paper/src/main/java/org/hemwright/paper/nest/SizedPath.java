package org.hemwright.paper.nest;

import org.hemwright.geometry.Path;
import org.hemwright.pattern.body.Size;

/** A line of one size on paper. */
record SizedPath(Size size, Path path) {}
