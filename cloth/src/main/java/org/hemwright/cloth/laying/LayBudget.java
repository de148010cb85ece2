package org.hemwright.cloth.laying;

/**
 * How hard to search. The layout depends on these two numbers and on nothing else: not on the
 * machine, its cores or the clock.
 *
 * @param work how many places to look at, over all workers; at least 1
 * @param seed where the random numbers start
 */
public record LayBudget(long work, long seed) {

  public LayBudget {
    if (work < 1) {
      throw new IllegalArgumentException(
          "a search of " + work + " places finds nothing; ask for at least 1");
    }
  }
}
