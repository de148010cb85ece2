/**
 * The fault bench: every way to go wrong that it knows is planted in every example, at every place
 * where it applies, in three sizes, and each must be caught by the check that is meant for it.
 *
 * <p>A {@link org.hemwright.checks.fault.Fault} plants; {@link
 * org.hemwright.checks.fault.FaultBenchTest} asks the checks and holds {@code docs/fault-bench.md}
 * to what they caught. To add one: a fault in one of the classes named {@code ...Faults}, and its
 * row in {@link org.hemwright.checks.fault.Faults}.
 */
@NullMarked
package org.hemwright.checks.fault;

import org.jspecify.annotations.NullMarked;
