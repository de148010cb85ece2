package org.hemwright.pattern.make;

import java.util.List;
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
   * @param parts what the piece is cut into, copy by copy, where it is cut apart; none where it is
   *     whole
   */
  record Toward(String piece, Optional<String> copy, Side seenFrom, List<Under> parts)
      implements PressDirection {
    public Toward {
      parts = List.copyOf(parts);
    }

    /** Toward a piece that is whole. */
    public Toward(String piece, Optional<String> copy, Side seenFrom) {
      this(piece, copy, seenFrom, List.of());
    }

    /** Whether the allowances lie on that copy of a piece. */
    public boolean lies(String onPiece, String onCopy) {
      return parts.isEmpty()
          ? new Under(piece, copy).is(onPiece, onCopy)
          : parts.stream().anyMatch(part -> part.is(onPiece, onCopy));
    }
  }

  /**
   * What lies under allowances that are pressed to one side.
   *
   * @param piece its name
   * @param copy the one cut copy; any where absent
   */
  record Under(String piece, Optional<String> copy) {
    private boolean is(String onPiece, String onCopy) {
      return piece.equals(onPiece) && copy.stream().allMatch(onCopy::equals);
    }
  }

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
