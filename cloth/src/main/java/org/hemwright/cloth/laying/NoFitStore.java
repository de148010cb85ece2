package org.hemwright.cloth.laying;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What is known of pairs of outlines that do not fit into each other, kept from one problem to the
 * next: for the same pieces on several widths, folded or not. It changes nothing but the time. May
 * be used by several threads at once; let it go once the pieces are laid, since it holds all that
 * was ever asked of it.
 */
public final class NoFitStore {
  private final Map<GridOutline, List<ConvexPart>> parts = new ConcurrentHashMap<>();
  private final Map<Pair, DepthField> fields = new ConcurrentHashMap<>();

  private record Pair(GridOutline fixed, GridOutline moving, int cells) {}

  /** The region of a pair, made anew. */
  NoFitRegion region(GridOutline fixed, GridOutline moving) {
    return new NoFitRegion(fixed, parts(fixed), moving, parts(moving));
  }

  /** The convex parts of a standing outline. */
  List<ConvexPart> parts(GridOutline outline) {
    return parts.computeIfAbsent(outline, ConvexParts::of);
  }

  /**
   * The field of a pair of standing outlines.
   *
   * @param cells about how many cells it has
   */
  DepthField field(GridOutline fixed, GridOutline moving, int cells) {
    Pair pair = new Pair(fixed, moving, cells);
    DepthField known = fields.get(pair);
    if (known == null) {
      known =
          new DepthField(
              region(fixed, moving),
              -moving.maxX(),
              -moving.maxY(),
              fixed.maxX(),
              fixed.maxY(),
              cells);
      fields.put(pair, known);
    }
    return known;
  }
}
