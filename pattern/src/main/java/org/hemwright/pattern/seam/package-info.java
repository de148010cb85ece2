/**
 * What is sewn to what: layers of edge places, resolved from what the document states. Lengths are
 * millimetres at the stitch line. Open Seam first, then SeamResolution.
 */
@NullMarked
package org.hemwright.pattern.seam;

import org.jspecify.annotations.NullMarked;
