package org.hemwright.pattern.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Motion;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;

/**
 * Which pieces and edges of the old version have another name in the new: a piece whose name is
 * gone is one that has its shape in every size, else one that has its number and its edges' names;
 * an edge whose name is gone is the one at its place round the piece.
 *
 * @param pieces new names by old ones, where they differ
 * @param edges for each piece, by its new name, the new names of its edges by the old ones
 */
record Renaming(Map<String, String> pieces, Map<String, Map<String, String>> edges) {
  static Renaming between(SizeRun old, SizeRun now) {
    Map<String, String> pieces = new LinkedHashMap<>();
    Set<String> gone = new LinkedHashSet<>(names(old));
    gone.removeAll(names(now));
    Set<String> come = new LinkedHashSet<>(names(now));
    come.removeAll(names(old));
    for (boolean byShape : new boolean[] {true, false}) {
      for (String before : List.copyOf(gone)) {
        for (String after : List.copyOf(come)) {
          List<Laying.Pair> pairs = pairs(old, now, before, after);
          boolean same =
              !pairs.isEmpty()
                  && pairs.stream().allMatch(pair -> byShape ? sameShape(pair) : sameRole(pair));
          if (same && gone.contains(before)) {
            pieces.put(before, after);
            gone.remove(before);
            come.remove(after);
          }
        }
      }
    }
    Map<String, Map<String, String>> edges = new LinkedHashMap<>();
    for (String name : names(old)) {
      String after = pieces.getOrDefault(name, name);
      List<Laying.Pair> pairs = pairs(old, now, name, after);
      Map<String, String> own = pairs.isEmpty() ? Map.of() : edges(pairs.get(0));
      if (!own.isEmpty()) {
        edges.put(after, own);
      }
    }
    return new Renaming(pieces, edges);
  }

  /** The names of all pieces, in the order of the document. */
  static Set<String> names(SizeRun run) {
    Set<String> names = new LinkedHashSet<>();
    run.pattern().pieces().forEach(card -> names.add(card.name()));
    run.sizes().forEach(sized -> sized.pieces().forEach(piece -> names.add(piece.name())));
    return names;
  }

  private static List<Laying.Pair> pairs(SizeRun old, SizeRun now, String before, String after) {
    List<Laying.Pair> pairs = new ArrayList<>();
    for (SizedPattern sized : now.sizes()) {
      Optional<Piece> was = old.size(sized.size().name()).flatMap(own -> own.piece(before));
      Optional<Piece> is = sized.piece(after);
      if (was.isPresent() && is.isPresent()) {
        pairs.add(new Laying.Pair(was.get(), is.get()));
      }
    }
    return pairs;
  }

  /** Whether the edges, whatever their names, run the same course from some start on. */
  private static boolean sameShape(Laying.Pair pair) {
    List<Edge> was = pair.old().edges();
    List<Edge> is = pair.now().edges();
    int count = was.size();
    if (count != is.size()) {
      return false;
    }
    for (int start = 0; start < count; start++) {
      Optional<Motion> motion = Laying.onto(was.get(start).path(), is.get(0).path());
      boolean all = motion.isPresent();
      for (int i = 0; i < count && all; i++) {
        all =
            LineDistance.same(
                was.get((start + i) % count).path(), is.get(i).path().moved(motion.get()));
      }
      if (all) {
        return true;
      }
    }
    return false;
  }

  private static boolean sameRole(Laying.Pair pair) {
    return pair.old().card().number() == pair.now().card().number()
        && names(pair.old()).equals(names(pair.now()));
  }

  private static List<String> names(Piece piece) {
    return piece.edges().stream().map(Edge::name).toList();
  }

  /** Edges whose names are gone or new, paired in their order round the piece. */
  private static Map<String, String> edges(Laying.Pair pair) {
    List<String> gone = new ArrayList<>(names(pair.old()));
    gone.removeAll(names(pair.now()));
    List<String> come = new ArrayList<>(names(pair.now()));
    come.removeAll(names(pair.old()));
    Map<String, String> renamed = new LinkedHashMap<>();
    if (gone.size() == come.size()) {
      for (int i = 0; i < gone.size(); i++) {
        renamed.put(gone.get(i), come.get(i));
      }
    }
    return renamed;
  }

  /** The name that a piece of the old version has now. */
  String piece(String name) {
    return pieces.getOrDefault(name, name);
  }

  /** The name that an edge has now, on a piece by its new name. */
  String edge(String piece, String name) {
    return edges.getOrDefault(piece, Map.of()).getOrDefault(name, name);
  }
}
