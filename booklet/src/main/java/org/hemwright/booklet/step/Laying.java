package org.hemwright.booklet.step;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.booklet.leaf.Inline;

/**
 * How pieces are laid on each other before they are sewn: what is laid, on what, and which edges
 * meet. Two that differ in one of the three alone are told as one.
 *
 * @param key of its sentence
 * @param first the pieces that are laid
 * @param second what they are laid on
 * @param sides the edges that meet
 * @param after key of a sentence that follows, if one does
 */
record Laying(
    String key, Set<String> first, Set<String> second, List<Side> sides, Optional<String> after) {
  Laying {
    first = Collections.unmodifiableSet(new LinkedHashSet<>(first));
    second = Collections.unmodifiableSet(new LinkedHashSet<>(second));
    sides = List.copyOf(sides);
  }

  /** An edge, and the edge that it meets. */
  record Side(List<Inline> edge, List<Inline> onto) {
    Side {
      edge = List.copyOf(edge);
      onto = List.copyOf(onto);
    }

    String text() {
      return Inline.plain(edge) + "|" + Inline.plain(onto);
    }
  }

  static Laying of(String key, Set<String> first, Set<String> second) {
    return new Laying(key, first, second, List.of(), Optional.empty());
  }

  Laying side(List<Inline> edge, List<Inline> onto) {
    List<Side> more = new ArrayList<>(sides);
    more.add(new Side(edge, onto));
    return new Laying(key, first, second, more, after);
  }

  Laying then(String following) {
    return new Laying(key, first, second, sides, Optional.of(following));
  }

  /** Adds a laying to those told, as one with the last where they are alike. */
  static void add(List<Laying> all, Laying next) {
    int last = all.size() - 1;
    Optional<Laying> one = last < 0 ? Optional.empty() : all.get(last).and(next);
    if (one.isPresent()) {
      all.set(last, one.get());
    } else {
      all.add(next);
    }
  }

  private Optional<Laying> and(Laying next) {
    if (!key.equals(next.key) || !after.equals(next.after)) {
      return Optional.empty();
    }
    boolean sameFirst = first.equals(next.first);
    boolean sameSecond = second.equals(next.second);
    boolean sameSides = texts().equals(next.texts());
    if (sameFirst && sameSecond) {
      List<Side> both = new ArrayList<>(sides);
      next.sides.stream().filter(side -> !texts().contains(side.text())).forEach(both::add);
      return Optional.of(new Laying(key, first, second, both, after));
    }
    // Layers of one kind of garment part, left and right, differ in their pieces alone.
    boolean pieces = !key.equals("lay.self") && !key.equals("lay.twins");
    if (!pieces || !sameSides || !(sameFirst || sameSecond)) {
      return Optional.empty();
    }
    return Optional.of(
        new Laying(key, union(first, next.first), union(second, next.second), sides, after));
  }

  private static Set<String> union(Set<String> here, Set<String> there) {
    Set<String> both = new LinkedHashSet<>(here);
    both.addAll(there);
    return both;
  }

  private List<String> texts() {
    return sides.stream().map(Side::text).toList();
  }
}
