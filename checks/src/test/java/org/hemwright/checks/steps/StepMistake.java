package org.hemwright.checks.steps;

import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One way to go wrong in the steps.
 *
 * @param words what is done, as a row of the table has it
 * @param plant all the ways to do it to an example
 */
record StepMistake(String words, Function<Workbook, Stream<SpoiltSteps>> plant) {}
