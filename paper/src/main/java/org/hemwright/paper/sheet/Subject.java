package org.hemwright.paper.sheet;

import java.util.Optional;

/**
 * What a drawn thing is about, for pointing at it and for words instead of pictures.
 *
 * @param piece the piece's name
 * @param edge the edge's name
 * @param size the size's name
 */
public record Subject(Optional<String> piece, Optional<String> edge, Optional<String> size) {
  /** Nothing of the pattern itself: a frame, a title. */
  public static final Subject NONE =
      new Subject(Optional.empty(), Optional.empty(), Optional.empty());

  /** A piece. */
  public static Subject piece(String name) {
    return new Subject(Optional.of(name), Optional.empty(), Optional.empty());
  }

  /** The same, of one edge. */
  public Subject edge(String name) {
    return new Subject(piece, Optional.of(name), size);
  }

  /** The same, in one size. */
  public Subject size(String name) {
    return new Subject(piece, edge, Optional.of(name));
  }
}
