/**
 * What the benches share: kinds of mistakes, each planted in many places, and a page of the docs
 * that tells which checks caught them and why a check cannot tell the rest.
 *
 * <p>{@link org.hemwright.checks.bench.BenchRow} counts one kind; {@link
 * org.hemwright.checks.bench.BenchPage} is written by a test, and holds it: a kind that applies
 * nowhere and a survivor without a reason fail.
 */
@NullMarked
package org.hemwright.checks.bench;

import org.jspecify.annotations.NullMarked;
