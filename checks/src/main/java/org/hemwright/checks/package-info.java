/**
 * Questions asked of a whole size run, one class each; they return findings and change nothing.
 *
 * <p>Millimetres at the stitch line; no finding means that all is well. To add one: a class that is
 * a {@link org.hemwright.pattern.Check} (an {@link org.hemwright.checks.EachSizeCheck} where sizes
 * are judged one by one), a row in {@link org.hemwright.checks.StandardChecks}, its limits in
 * {@link org.hemwright.checks.CheckSettings}, and its sentences in {@code checks.properties}.
 * Checks that must know how pieces are drawn live in the paper module; the workbench asks both.
 * Open {@link org.hemwright.checks.StandardChecks} first.
 */
@NullMarked
package org.hemwright.checks;

import org.jspecify.annotations.NullMarked;
