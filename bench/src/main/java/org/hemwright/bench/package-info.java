/**
 * How fast the main job is: medians over the examples, printed as the rows of docs/performance.md.
 * Never part of the product, and never a test. Open {@link org.hemwright.bench.Benchmarks} first.
 */
@NullMarked
package org.hemwright.bench;

import org.jspecify.annotations.NullMarked;
