package org.hemwright.cloth.yardage;

import java.util.Optional;

/**
 * Where layings are kept from one run to the next, by their content: what was laid, on what, with
 * how much work. Taking one from here or laying it anew gives the same laying. Called by several
 * threads at once.
 */
public interface LayingStore {
  /** Keeps nothing. */
  LayingStore NONE =
      new LayingStore() {
        @Override
        public Optional<String> get(String key) {
          return Optional.empty();
        }

        @Override
        public void put(String key, String laying) {}
      };

  /** What was kept under a key. */
  Optional<String> get(String key);

  /**
   * Keeps a laying.
   *
   * @param key 64 hexadecimal digits
   * @param laying one line of text
   */
  void put(String key, String laying);
}
