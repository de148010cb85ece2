package org.hemwright.checks.fault;

import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One way to go wrong.
 *
 * @param words what is done, as a row of the table has it
 * @param reach whether it shows in one size alone or only beside others
 * @param plant all the ways to do it to a garment
 */
record Fault(String words, Reach reach, Function<Garment, Stream<Planted>> plant) {
  /** What has to be looked at to see it. */
  enum Reach {
    /** The faulty size. */
    ONE_SIZE,
    /** The whole run. */
    ALL_SIZES
  }

  static Fault inOneSize(String words, Function<Garment, Stream<Planted>> plant) {
    return new Fault(words, Reach.ONE_SIZE, plant);
  }

  static Fault besideOthers(String words, Function<Garment, Stream<Planted>> plant) {
    return new Fault(words, Reach.ALL_SIZES, plant);
  }
}
