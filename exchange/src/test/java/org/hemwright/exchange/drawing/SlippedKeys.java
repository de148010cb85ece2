package org.hemwright.exchange.drawing;

import java.util.Random;
import java.util.stream.Stream;

/** A text as it is after slips of the keys: letters left out, put in, exchanged. */
public final class SlippedKeys {
  private static final int TIMES = 3000;

  private SlippedKeys() {}

  /**
   * The text with one to three slips, 3000 times.
   *
   * @param typed what may be put in by mistake
   * @param seed of the chance, so that the slips are the same every time
   */
  public static Stream<String> in(String text, String typed, long seed) {
    Random chance = new Random(seed);
    return Stream.generate(() -> slipped(text, typed, chance)).limit(TIMES);
  }

  private static String slipped(String text, String typed, Random chance) {
    StringBuilder slipped = new StringBuilder(text);
    for (int k = 0; k <= chance.nextInt(3); k++) {
      int at = chance.nextInt(slipped.length());
      switch (chance.nextInt(3)) {
        case 0 -> slipped.deleteCharAt(at);
        case 1 -> slipped.insert(at, typed.charAt(chance.nextInt(typed.length())));
        default -> slipped.setCharAt(at, (char) (32 + chance.nextInt(95)));
      }
    }
    return slipped.toString();
  }
}
