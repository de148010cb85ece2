package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/** Sizes that do not follow each other. */
final class GradeFaults {
  private GradeFaults() {}

  private static Set<String> subjects(PieceCard card, Piece piece) {
    Set<String> subjects = new LinkedHashSet<>(Set.of(card.name()));
    piece.edges().forEach(edge -> subjects.add(card.name() + "." + edge.name()));
    return subjects;
  }

  private static Optional<Piece> drawn(SizedPattern sized, PieceCard card) {
    return sized.pieces().stream()
        .filter(piece -> piece.card().origin().equals(card.origin()))
        .findFirst();
  }

  /** The places in the run of the smallest, a middle and the largest size that have one before. */
  private static List<Integer> threeAfterOthers(Garment garment) {
    int count = garment.run().sizes().size();
    return List.of(1, (count - 1) / 2, count - 1);
  }

  static final Fault NOT_GRADED =
      Fault.besideOthers(
          "a piece as small as in the size before",
          garment ->
              garment.run().pattern().pieces().stream()
                  .flatMap(
                      card ->
                          threeAfterOthers(garment).stream()
                              .flatMap(at -> likeBefore(garment, card, at).stream())));

  private static Optional<Planted> likeBefore(Garment garment, PieceCard card, int at) {
    SizedPattern sized = garment.run().sizes().get(at);
    Optional<Piece> own = drawn(sized, card);
    Optional<Piece> before = drawn(garment.run().sizes().get(at - 1), card);
    if (own.isEmpty() || before.isEmpty() || Steps.most(own.get(), before.get()) < 2) {
      return Optional.empty();
    }
    return Optional.of(
        garment.planted(
            card.name() + " as in the size before",
            Reworked.size(sized, before.get()),
            "grade-even",
            subjects(card, own.get())));
  }

  static final Fault SIZES_EXCHANGED =
      Fault.besideOthers(
          "two neighbouring sizes of a piece exchanged",
          garment ->
              garment.run().pattern().pieces().stream()
                  .flatMap(
                      card ->
                          threeAfterOthers(garment).stream()
                              .flatMap(at -> exchanged(garment, card, at).stream())));

  private static Optional<Planted> exchanged(Garment garment, PieceCard card, int at) {
    List<SizedPattern> sizes = new ArrayList<>(garment.run().sizes());
    SizedPattern small = sizes.get(at - 1);
    SizedPattern large = sizes.get(at);
    Optional<Piece> one = drawn(small, card);
    Optional<Piece> other = drawn(large, card);
    if (one.isEmpty() || other.isEmpty() || Steps.most(one.get(), other.get()) < 2) {
      return Optional.empty();
    }
    sizes.set(at - 1, Reworked.size(small, other.get()));
    sizes.set(at, Reworked.size(large, one.get()));
    return Optional.of(
        new Planted(
            garment.name() + " " + card.name() + " exchanged at " + large.size().name(),
            new SizeRun(garment.run().pattern(), sizes),
            List.of(small.size().name(), large.size().name()),
            "grade-order",
            subjects(card, one.get())));
  }

  /** How far two sizes of a piece lie apart. */
  private static final class Steps {
    private Steps() {}

    /** The most that a length of an edge differs (mm). */
    static double most(Piece one, Piece other) {
      return one.edges().stream()
          .mapToDouble(
              edge ->
                  other
                      .edge(edge.name())
                      .map(o -> Math.abs(o.path().length() - edge.path().length()))
                      .orElse(0.0))
          .max()
          .orElse(0);
    }
  }
}
