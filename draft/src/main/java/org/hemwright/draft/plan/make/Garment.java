package org.hemwright.draft.plan.make;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.View;

/**
 * All that a step may name, before any size.
 *
 * @param pieces by name
 * @param seams the names of the pieces that each seam takes
 * @param elastics the piece that each elastic lies in
 * @param fabrics their names
 * @param views in the order of the document
 */
public record Garment(
    Map<String, PieceNames> pieces,
    Map<String, List<String>> seams,
    Map<String, String> elastics,
    List<String> fabrics,
    List<View> views) {
  public Garment {
    pieces = Collections.unmodifiableMap(new LinkedHashMap<>(pieces));
    seams = Collections.unmodifiableMap(new LinkedHashMap<>(seams));
    elastics = Collections.unmodifiableMap(new LinkedHashMap<>(elastics));
    fabrics = List.copyOf(fabrics);
    views = List.copyOf(views);
  }

  /**
   * What a piece has that a step may name.
   *
   * @param edges of its outline
   * @param marks placement lines, inner lines, drill marks
   * @param intakes darts, pleats and gathers
   * @param copies its cut copies
   */
  public record PieceNames(
      List<String> edges, List<String> marks, List<String> intakes, List<String> copies) {
    public PieceNames {
      edges = List.copyOf(edges);
      marks = List.copyOf(marks);
      intakes = List.copyOf(intakes);
      copies = List.copyOf(copies);
    }

    /** Everything that can stand after the piece's name. */
    List<String> all() {
      List<String> all = new ArrayList<>(edges);
      all.addAll(marks);
      all.addAll(intakes);
      all.addAll(copies.stream().filter(copy -> Character.isLetter(copy.charAt(0))).toList());
      return all;
    }

    /** Its names and those of another draft of the same piece for other sizes. */
    public PieceNames and(PieceNames other) {
      return new PieceNames(
          both(edges, other.edges),
          both(marks, other.marks),
          both(intakes, other.intakes),
          both(copies, other.copies));
    }

    private static List<String> both(List<String> one, List<String> two) {
      List<String> all = new ArrayList<>(one);
      two.stream().filter(name -> !one.contains(name)).forEach(all::add);
      return all;
    }
  }

  /** The names of the views that take all of these pieces. */
  List<String> viewsOf(List<String> taken) {
    return views.stream().filter(view -> view.pieces().containsAll(taken)).map(View::name).toList();
  }

  /** The piece of that name. */
  Optional<PieceNames> piece(String name) {
    return Optional.ofNullable(pieces.get(name));
  }
}
