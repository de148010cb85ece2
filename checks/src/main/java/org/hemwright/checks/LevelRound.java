package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.measure.LevelGirth;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;

/**
 * A level of a view in one size, with the body there and the cloth that goes round it.
 *
 * @param body the chart's girth of that name (mm); nothing where it has none
 * @param pieces that name the level
 * @param way which way of the cloth goes round
 * @param stretch how far the stiffest of the pieces gives round the body
 */
record LevelRound(
    String level,
    OptionalDouble body,
    LevelGirth girth,
    List<Piece> pieces,
    BodyTable.Way way,
    double stretch) {
  /** Round the body, on a drawing. */
  static final Vector ROUND = new Vector(1, 0);

  LevelRound {
    pieces = List.copyOf(pieces);
  }

  static List<LevelRound> of(View view, SizedPattern sized, Pattern pattern) {
    List<Piece> pieces =
        sized.pieces().stream().filter(p -> view.pieces().contains(p.name())).toList();
    Set<String> levels = new LinkedHashSet<>();
    pieces.forEach(p -> p.marks(Mark.Level.class).forEach(level -> levels.add(level.name())));
    List<LevelRound> rounds = new ArrayList<>();
    for (String level : levels) {
      Optional<LevelGirth> girth = LevelGirth.of(sized, level, Set.copyOf(view.pieces()));
      List<Piece> having = having(pieces, level);
      if (girth.isPresent() && girth.get().girth() > 0 && !having.isEmpty()) {
        Piece stiffest = having.get(0);
        for (Piece piece : having) {
          if (Cloth.stretch(piece, ROUND, pattern) < Cloth.stretch(stiffest, ROUND, pattern)) {
            stiffest = piece;
          }
        }
        rounds.add(
            new LevelRound(
                level,
                BodyMeasurement.of(level, sized, pattern),
                girth.get(),
                having,
                Cloth.way(stiffest, ROUND),
                Cloth.stretch(stiffest, ROUND, pattern)));
      }
    }
    return rounds;
  }

  /**
   * The openings that have the name of a measurement of the chart, as a waist has: they go round
   * the body there, though no level says so.
   */
  static List<LevelRound> openings(
      View view, SizedPattern sized, Pattern pattern, CheckSettings settings) {
    List<LevelRound> rounds = new ArrayList<>();
    for (OpeningRound opening : OpeningRound.of(view, sized, pattern, settings)) {
      boolean level =
          opening.pieces().stream()
              .flatMap(piece -> piece.marks(Mark.Level.class).stream())
              .anyMatch(mark -> mark.name().equals(opening.edge()));
      OptionalDouble body = BodyMeasurement.of(opening.edge(), sized, pattern);
      if (!level && body.isPresent() && opening.length() > 0) {
        OpeningRound.Holding cloth = opening.holdings().get(0);
        rounds.add(
            new LevelRound(
                opening.edge(),
                body,
                new LevelGirth(1, opening.length()),
                opening.pieces(),
                opening.way(),
                cloth.stretch()));
      }
    }
    return rounds;
  }

  private static List<Piece> having(List<Piece> pieces, String level) {
    return pieces.stream()
        .filter(
            piece ->
                piece.marks(Mark.Level.class).stream().anyMatch(mark -> mark.name().equals(level)))
        .toList();
  }
}
