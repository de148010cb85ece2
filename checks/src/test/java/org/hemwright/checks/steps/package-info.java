/**
 * Mistakes planted in the making steps of the examples, and whether the checks tell them at the
 * right step.
 */
@NullMarked
package org.hemwright.checks.steps;

import org.jspecify.annotations.NullMarked;
