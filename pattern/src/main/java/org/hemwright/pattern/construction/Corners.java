package org.hemwright.pattern.construction;

import java.util.HashMap;
import java.util.Map;
import org.hemwright.pattern.seam.EdgePlace;

/** Which corners of the cut copies lie together, since a seam or a fold brings them there. */
final class Corners {
  private final Map<Corner, Corner> toward = new HashMap<>();

  /**
   * A corner of one half of one copy.
   *
   * @param index of the edge that begins there, round the drawing
   */
  record Corner(String piece, String copy, EdgePlace.Half half, int index) {}

  private Corner root(Corner corner) {
    Corner here = corner;
    for (Corner next = toward.get(here); next != null; next = toward.get(here)) {
      here = next;
    }
    return here;
  }

  void bring(Corner one, Corner other) {
    Corner a = root(one);
    Corner b = root(other);
    if (!a.equals(b)) {
      toward.put(a, b);
    }
  }

  boolean together(Corner one, Corner other) {
    return root(one).equals(root(other));
  }
}
