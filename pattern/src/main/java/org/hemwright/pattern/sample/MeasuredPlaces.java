package org.hemwright.pattern.sample;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.measure.LevelGirth;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;
import org.hemwright.pattern.seam.Elastic;

/**
 * Every length of a pattern in one size by the name that a note may call it: an edge or placement
 * line as it is sewn ({@code panel.side}), its allowance ({@code panel.hem allowance}), the girth
 * at a level ({@code hip}, or {@code A.hip} where views differ), an elastic's finished loop, a
 * number of the document ({@code skirt_length}). Of one name the first of these.
 *
 * @param lengths by name, in that order (mm)
 * @param byView levels whose girth differs from view to view, so that their bare name says too
 *     little
 */
record MeasuredPlaces(Map<String, Double> lengths, Set<String> byView) {
  /** What is put after an edge's name for its allowance. */
  private static final String ALLOWANCE = " allowance";

  MeasuredPlaces {
    lengths = Collections.unmodifiableMap(new LinkedHashMap<>(lengths));
    byView = Set.copyOf(byView);
  }

  static MeasuredPlaces of(SizedPattern sized, Pattern pattern) {
    Map<String, Double> lengths = new LinkedHashMap<>();
    for (Piece piece : sized.pieces()) {
      for (Edge edge : piece.edges()) {
        String name = piece.name() + "." + edge.name();
        lengths.putIfAbsent(name, piece.sewnLength(edge));
        lengths.putIfAbsent(name + ALLOWANCE, edge.allowance().width());
      }
      for (Mark.Placement line : piece.marks(Mark.Placement.class)) {
        lengths.putIfAbsent(piece.name() + "." + line.name(), line.path().length());
      }
    }
    Set<String> byView = levels(sized, pattern, lengths);
    for (Elastic elastic : sized.elastics()) {
      lengths.putIfAbsent(elastic.name(), elastic.finished());
    }
    for (Map.Entry<String, Quantity> number : sized.numbers().entrySet()) {
      if (number.getValue().kind() == QuantityKind.LENGTH && !byView.contains(number.getKey())) {
        lengths.putIfAbsent(number.getKey(), number.getValue().amount());
      }
    }
    return new MeasuredPlaces(lengths, byView);
  }

  private static Set<String> levels(
      SizedPattern sized, Pattern pattern, Map<String, Double> lengths) {
    Map<String, Double> girths = new LinkedHashMap<>();
    Set<String> differ = new LinkedHashSet<>();
    for (View view : pattern.views()) {
      Set<String> pieces = Set.copyOf(view.pieces());
      Set<String> levels = new LinkedHashSet<>();
      sized.pieces().stream()
          .filter(piece -> pieces.contains(piece.name()))
          .forEach(p -> p.marks(Mark.Level.class).forEach(level -> levels.add(level.name())));
      for (String level : levels) {
        Optional<LevelGirth> girth = LevelGirth.of(sized, level, pieces);
        if (girth.isPresent()) {
          double here = girth.get().girth();
          lengths.putIfAbsent(view.name() + "." + level, here);
          Double before = girths.putIfAbsent(level, here);
          if (before != null && Math.abs(before - here) > Tolerance.DRAWN_LENGTH) {
            differ.add(level);
          }
        }
      }
    }
    girths.forEach(
        (level, girth) -> {
          if (!differ.contains(level)) {
            lengths.putIfAbsent(level, girth);
          }
        });
    return differ;
  }

  /** A name as it is held: blanks in it read as {@code _}, as paper shows them. */
  static String held(String where) {
    String name = where.strip();
    boolean allowance = name.endsWith(ALLOWANCE);
    String bare = allowance ? name.substring(0, name.length() - ALLOWANCE.length()) : name;
    return bare.strip().replaceAll("\\s+", "_") + (allowance ? ALLOWANCE : "");
  }
}
