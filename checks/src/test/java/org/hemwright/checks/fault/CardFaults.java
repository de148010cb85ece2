package org.hemwright.checks.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.seam.Symmetry;

/** What a piece says of itself gone wrong in one size: its cut line, title, grain and arrows. */
final class CardFaults {
  private CardFaults() {}

  /** A fault in every piece that a predicate picks, in three sizes. */
  static Fault inPieces(
      String words,
      Fault.Reach reach,
      String check,
      BiFunction<SizedPattern, Piece, Boolean> where,
      BiFunction<SizedPattern, Piece, Piece> faulty) {
    return new Fault(
        words,
        reach,
        garment ->
            garment.threeSizes().stream()
                .flatMap(
                    sized ->
                        sized.pieces().stream()
                            .filter(piece -> where.apply(sized, piece))
                            .map(piece -> planted(garment, sized, piece, check, faulty))));
  }

  private static Planted planted(
      Garment garment,
      SizedPattern sized,
      Piece piece,
      String check,
      BiFunction<SizedPattern, Piece, Piece> faulty) {
    List<String> subjects = new ArrayList<>(List.of(piece.name()));
    for (Edge edge : piece.edges()) {
      subjects.addAll(Garment.subjects(sized, piece.name(), edge.name()));
    }
    return garment.planted(
        piece.name(),
        Reworked.size(sized, faulty.apply(sized, piece)),
        check,
        Set.copyOf(subjects));
  }

  private static Fault one(
      String words, String check, Predicate<Piece> where, UnaryOperator<Piece> faulty) {
    return inPieces(
        words,
        Fault.Reach.ONE_SIZE,
        check,
        (sized, piece) -> where.test(piece),
        (sized, piece) -> faulty.apply(piece));
  }

  private static PieceCard card(
      PieceCard card, String title, int number, List<Cut> cuts, List<Copy> copies) {
    return new PieceCard(
        card.name(), title, number, cuts, copies, card.rightSideUp(), card.sizes(), card.origin());
  }

  static final Fault CUT_LOST =
      one(
          "a cut line lost",
          "cut-count",
          piece -> true,
          piece -> {
            PieceCard own = piece.card();
            return Reworked.card(piece, card(own, own.title(), own.number(), List.of(), List.of()));
          });

  static final Fault ONE_COPY_MORE =
      one(
          "a cut count one too many, copies and all",
          "cut-count",
          piece -> true,
          piece -> {
            PieceCard own = piece.card();
            Cut cut = own.cuts().get(0);
            List<Copy> copies = new ArrayList<>(own.copies());
            copies.add(new Copy("another", cut.mirrored() && copies.size() % 2 == 1));
            Cut more =
                new Cut(copies.size(), cut.fabric(), cut.onFold(), cut.mirrored(), cut.origin());
            return Reworked.card(
                piece, card(own, own.title(), own.number(), List.of(more), copies));
          });

  static final Fault COPY_LOST =
      inPieces(
          "a cut count one too few, copies and all",
          Fault.Reach.ONE_SIZE,
          "seam-sides",
          (sized, piece) -> piece.card().copies().size() > 1 && isSewn(sized, piece),
          (sized, piece) -> {
            PieceCard own = piece.card();
            Cut cut = own.cuts().get(0);
            Cut less =
                new Cut(cut.count() - 1, cut.fabric(), cut.onFold(), cut.mirrored(), cut.origin());
            return Reworked.card(
                piece,
                card(
                    own,
                    own.title(),
                    own.number(),
                    List.of(less),
                    own.copies().subList(0, own.copies().size() - 1)));
          });

  private static boolean isSewn(SizedPattern sized, Piece piece) {
    return sized.seams().stream()
        .flatMap(Garment::places)
        .anyMatch(place -> place.piece().equals(piece.name()));
  }

  static final Fault COPY_NOT_MIRRORED =
      one(
          "a copy mirrored where the cut line says it is not, or the other way round",
          "cut-count",
          piece -> true,
          piece -> Reworked.card(piece, turned(piece.card(), false)));

  static final Fault CUT_NOT_MIRRORED =
      inPieces(
          "a left and a right cut as two lefts",
          Fault.Reach.ONE_SIZE,
          "seam-sides",
          (sized, piece) -> piece.card().cuts().get(0).mirrored() && isAsymmetric(sized, piece),
          (sized, piece) -> Reworked.card(piece, turned(piece.card(), true)));

  /** Whether the piece is sewn, and a left is not as good as a right. */
  private static boolean isAsymmetric(SizedPattern sized, Piece piece) {
    return isSewn(sized, piece) && !Symmetry.isOwnMirror(piece);
  }

  private static PieceCard turned(PieceCard own, boolean cutLineToo) {
    List<Copy> copies = new ArrayList<>(own.copies());
    Copy last = copies.get(copies.size() - 1);
    copies.set(copies.size() - 1, new Copy(last.name(), !last.mirrored()));
    List<Cut> cuts = own.cuts();
    if (cutLineToo) {
      Cut cut = cuts.get(0);
      cuts = List.of(new Cut(cut.count(), cut.fabric(), cut.onFold(), false, cut.origin()));
    }
    return card(own, own.title(), own.number(), cuts, copies);
  }

  static final Fault FOLD_NOT_SAID =
      one(
          "\"on the fold\" lost from a cut line",
          "fold",
          piece -> piece.card().onFold(),
          piece -> Reworked.card(piece, onFold(piece.card(), false)));

  static final Fault FOLD_SAID =
      one(
          "\"on the fold\" said of a piece without a fold",
          "fold",
          piece -> !piece.card().onFold(),
          piece -> Reworked.card(piece, onFold(piece.card(), true)));

  private static PieceCard onFold(PieceCard own, boolean folded) {
    Cut cut = own.cuts().get(0);
    Cut other = new Cut(cut.count(), cut.fabric(), folded, cut.mirrored(), cut.origin());
    return card(own, own.title(), own.number(), List.of(other), own.copies());
  }

  static final Fault FOLD_EDGE_LOST =
      one(
          "the fold edge no longer marked as one",
          "fold",
          piece -> piece.foldEdge().isPresent(),
          piece -> Reworked.edge(piece, unfolded(piece)));

  static final Fault FOLD_LOST =
      inPieces(
          "the fold lost from the edge and from the cut line",
          Fault.Reach.ONE_SIZE,
          "seam-sides",
          (sized, piece) -> piece.foldEdge().isPresent() && isSewn(sized, piece),
          (sized, piece) ->
              Reworked.card(Reworked.edge(piece, unfolded(piece)), onFold(piece.card(), false)));

  private static Edge unfolded(Piece piece) {
    Edge fold = piece.foldEdge().orElseThrow();
    return new Edge(
        fold.name(), fold.path(), false, fold.allowance(), fold.reversed(), fold.origin());
  }

  /** A fault in the card of a piece, in every size that it is drawn in. */
  private static Fault inEverySize(
      String words, String check, BiFunction<SizedPattern, PieceCard, PieceCard> faulty) {
    return Fault.besideOthers(
        words,
        garment ->
            garment.run().pattern().pieces().stream()
                .map(
                    card ->
                        garment.inEverySize(
                            card,
                            (sized, piece) ->
                                Reworked.card(piece, faulty.apply(sized, piece.card())),
                            List.of(),
                            check,
                            Set.of(card.name()))));
  }

  static final Fault TITLE_LOST =
      inEverySize(
          "a title lost in every size",
          "label",
          (sized, own) -> card(own, " ", own.number(), own.cuts(), own.copies()));

  static final Fault NUMBER_SKIPPED =
      Fault.besideOthers(
          "a number skipped in every size",
          garment ->
              garment.run().pattern().pieces().stream()
                  .map(
                      own ->
                          garment.inEverySize(
                              own,
                              (sized, piece) ->
                                  Reworked.card(
                                      piece,
                                      card(
                                          own,
                                          own.title(),
                                          own.number() + 20,
                                          own.cuts(),
                                          own.copies())),
                              List.of(),
                              "label",
                              Set.of(own.name()))));

  static final Fault NUMBER_TAKEN =
      Fault.besideOthers(
          "a piece with the number of another in every size",
          garment ->
              garment.run().pattern().pieces().stream()
                  .map(
                      own -> {
                        PieceCard other =
                            garment.run().pattern().pieces().stream()
                                .filter(each -> each.number() != own.number())
                                .findFirst()
                                .orElseThrow();
                        return garment.inEverySize(
                            own,
                            (sized, piece) ->
                                Reworked.card(
                                    piece,
                                    card(
                                        own,
                                        own.title(),
                                        other.number(),
                                        own.cuts(),
                                        own.copies())),
                            List.of(),
                            "label",
                            Set.of(own.name(), other.name()));
                      }));

  static final Fault GRAIN_LOST =
      one(
          "a grain arrow lost",
          "grain",
          piece -> true,
          piece -> Reworked.grain(piece, Optional.empty()));

  static final Fault GRAIN_TURNED =
      inPieces(
          "a grain arrow turned by 10°",
          Fault.Reach.ALL_SIZES,
          "grade-even",
          (sized, piece) -> true,
          (sized, piece) -> Reworked.grain(piece, Optional.of(turned(piece, 10))));

  static final Fault GRAIN_ACROSS_FOLD =
      one(
          "a grain arrow across the fold",
          "grain",
          piece -> piece.foldEdge().isPresent(),
          piece -> Reworked.grain(piece, Optional.of(turned(piece, 90))));

  static final Fault GRAIN_UNLIKE_MATE =
      inPieces(
          "a grain arrow turned by 90° on one of two pieces with a long seam between them",
          Fault.Reach.ONE_SIZE,
          "grain",
          (sized, piece) ->
              piece.foldEdge().isEmpty()
                  && sized.seams().stream().anyMatch(seam -> joinsLong(seam, sized, piece)),
          (sized, piece) -> Reworked.grain(piece, Optional.of(turned(piece, 90))));

  private static boolean joinsLong(Seam seam, SizedPattern sized, Piece piece) {
    List<Seam.Layer> layers = seam.joins().get(0).layers();
    return layers.stream().allMatch(layer -> layer.run().size() == 1)
        && layers.stream().map(layer -> layer.run().get(0).piece()).distinct().count() == 2
        && layers.stream()
            .map(layer -> layer.run().get(0))
            .allMatch(
                place ->
                    sized
                        .piece(place.piece())
                        .flatMap(p -> p.edge(place.edge()))
                        .filter(edge -> edge.path().length() > 300)
                        .filter(edge -> hangsAlong(sized.piece(place.piece()).orElseThrow(), edge))
                        .isPresent())
        && layers.stream().anyMatch(layer -> layer.run().get(0).piece().equals(piece.name()));
  }

  /** Whether the grain runs along an edge rather than across it. */
  private static boolean hangsAlong(Piece piece, Edge edge) {
    Vector chord = edge.path().end().minus(edge.path().start());
    return Math.abs(chord.unit().dot(piece.grain().orElseThrow().direction())) > 0.8;
  }

  private static Grain turned(Piece piece, double degrees) {
    Grain grain = piece.grain().orElseThrow();
    Point middle = grain.from().toward(grain.to(), 0.5);
    Vector half = grain.to().minus(middle).turned(Math.toRadians(degrees));
    return new Grain(middle.minus(half), middle.plus(half), grain.origin());
  }

  static final Fault STRETCH_LOST =
      one(
          "a stretch arrow lost",
          "stretch-arrow",
          piece -> !piece.marks(Mark.Stretch.class).isEmpty(),
          piece -> Reworked.marks(piece, without(piece, Mark.Stretch.class)));

  static final Fault STRETCH_ALONG =
      one(
          "a stretch arrow along the grain",
          "stretch-arrow",
          piece -> !piece.marks(Mark.Stretch.class).isEmpty(),
          piece -> {
            List<Mark> marks = new ArrayList<>(without(piece, Mark.Stretch.class));
            Mark.Stretch arrow = piece.marks(Mark.Stretch.class).get(0);
            marks.add(new Mark.Stretch(arrow.direction().left(), arrow.origin()));
            return Reworked.marks(piece, marks);
          });

  static final Fault KNIT_TURNED =
      one(
          "a knit cut with its grain round the body, its arrow turned with it",
          "stretch-arrow",
          piece ->
              !piece.marks(Mark.Stretch.class).isEmpty()
                  && !piece.marks(Mark.Level.class).isEmpty(),
          piece -> {
            List<Mark> marks = new ArrayList<>(without(piece, Mark.Stretch.class));
            Mark.Stretch arrow = piece.marks(Mark.Stretch.class).get(0);
            marks.add(new Mark.Stretch(arrow.direction().left(), arrow.origin()));
            return Reworked.grain(Reworked.marks(piece, marks), Optional.of(turned(piece, 90)));
          });

  static final Fault LENGTHEN_LOST =
      one(
          "a line to lengthen at lost",
          "lengthen",
          piece -> !piece.marks(Mark.Lengthen.class).isEmpty(),
          piece -> Reworked.marks(piece, without(piece, Mark.Lengthen.class)));

  private static List<Mark> without(Piece piece, Class<? extends Mark> kind) {
    return piece.marks().stream().filter(mark -> !kind.isInstance(mark)).toList();
  }
}
