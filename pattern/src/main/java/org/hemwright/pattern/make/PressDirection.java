package org.hemwright.pattern.make;

import java.util.Optional;

/** Which way allowances, a fold or a hem are pressed. */
public sealed interface PressDirection {
  /** The two allowances apart. */
  record Open() implements PressDirection {}

  /**
   * Both allowances to the side of one piece.
   *
   * @param piece that lies under them when they are pressed
   * @param copy the one cut copy, where only copies tell the sides apart
   * @param seenFrom the side of the cloth that is up
   */
  record Toward(String piece, Optional<String> copy, Side seenFrom) implements PressDirection {}

  /** Toward the top of the garment. */
  record Up() implements PressDirection {}

  /** Toward the hem of the garment. */
  record Down() implements PressDirection {}

  /** As it lies. */
  record Flat() implements PressDirection {}

  /** The two sides of cloth. */
  enum Side {
    RIGHT,
    WRONG
  }
}
