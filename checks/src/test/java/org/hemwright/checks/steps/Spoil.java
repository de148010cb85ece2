package org.hemwright.checks.steps;

import java.util.List;
import java.util.Set;
import org.hemwright.pattern.make.Step;

/**
 * A mistake as it is planted in the steps of one garment.
 *
 * @param how what was done, and to which step
 * @param steps all of them, with the mistake
 * @param about names of the steps at which it may show, and the subjects that it may be about
 */
record Spoil(String how, List<Step> steps, Set<String> about) {}
