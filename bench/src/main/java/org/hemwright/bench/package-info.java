/**
 * Benchmarks of what a designer waits for: evaluating a garment, one changed number, publishing.
 * Never part of the product, and never run by the tests.
 *
 * <p>{@code bench/run} builds and runs them; {@code docs/performance.md} states what they measured.
 * Open {@link org.hemwright.bench.EvaluateBenchmark} first.
 */
@NullMarked
package org.hemwright.bench;

import org.jspecify.annotations.NullMarked;
