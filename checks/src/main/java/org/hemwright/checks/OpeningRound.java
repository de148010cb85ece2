package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/**
 * An opening of a view in one size, with all that goes round it: the cloth, what is sewn to it, its
 * seam and its elastic. It passes no more than the stiffest of them (handbook section 4, "Required
 * stretch to put on").
 *
 * @param edge the name of the edges that make it
 * @param over the part of the body that it must pass
 * @param body that part (mm); nothing where the chart lacks it
 * @param pieces that have the edge, at least one
 * @param slit beside it, that is open when the garment goes on (mm); 0 without one
 * @param holdings the cloth first
 */
record OpeningRound(
    String edge,
    String over,
    OptionalDouble body,
    List<Piece> pieces,
    double slit,
    List<Holding> holdings) {
  private static final Map<String, String> PASSED =
      Map.of("waist", "hip", "neck", "head", "cuff", "hand", "wrist", "hand", "ankle", "heel");

  /** What is sewn to less of the opening than this share does not go round it. */
  private static final double WHOLE = 0.95;

  /** An edge whose ends lie steeper than this is drawn upright. */
  private static final double UPRIGHT = Math.toRadians(70);

  OpeningRound {
    pieces = List.copyOf(pieces);
    holdings = List.copyOf(holdings);
  }

  /** What holds an opening together. */
  enum Kind {
    CLOTH,
    BAND,
    SEAM,
    ELASTIC
  }

  /**
   * One thing that goes round.
   *
   * @param name the cloth's title, the piece, the seam or the elastic
   * @param length of one round (mm)
   * @param stretch how far it gives, as a share
   */
  record Holding(Kind kind, String name, double length, double stretch) {
    /** How far it reaches (mm), the slit aside. */
    double reach() {
      return length * (1 + stretch);
    }
  }

  /** Round the opening as it lies (mm), the slit aside. */
  double length() {
    return holdings.get(0).length();
  }

  /** Which way of the cloth goes round. */
  BodyTable.Way way() {
    Piece first = pieces.get(0);
    return Cloth.way(first, Holdings.round(first, first.edge(edge).orElseThrow()));
  }

  /** The one that reaches least, of some kinds. */
  Holding stiffest(Set<Kind> kinds) {
    Holding least = holdings.get(0);
    for (Holding holding : holdings) {
      if (kinds.contains(holding.kind())
          && holding.reach() < least.reach() - Tolerance.DRAWN_LENGTH) {
        least = holding;
      }
    }
    return least;
  }

  /** How far a round reaches with the slit open (mm). */
  double reach(Holding holding) {
    return holding.reach() + 2 * slit;
  }

  /** Every opening of a view that says what it passes, or whose edge's name does. */
  static List<OpeningRound> of(
      View view, SizedPattern sized, Pattern pattern, CheckSettings settings) {
    List<Piece> pieces =
        sized.pieces().stream().filter(p -> view.pieces().contains(p.name())).toList();
    Set<Passage> passages = new LinkedHashSet<>();
    pieces.forEach(piece -> piece.openings().forEach(e -> passage(piece, e, passages)));
    List<OpeningRound> openings = new ArrayList<>();
    for (Passage passage : passages) {
      List<Piece> round = pieces.stream().filter(p -> opens(p, passage)).toList();
      if (!round.isEmpty()) {
        openings.add(
            new OpeningRound(
                passage.edge(),
                passage.over(),
                BodyMeasurement.of(passage.over(), sized, pattern),
                round,
                slit(round, passage.edge()),
                new Holdings(view, sized, pattern, settings, passage.edge(), round).all()));
      }
    }
    return openings;
  }

  /** Edges of one name that pass the same part of the body. */
  private record Passage(String edge, String over) {}

  /** What an edge must pass: as the document says, else by its name. */
  private static void passage(Piece piece, String edge, Set<Passage> passages) {
    Optional<String> over =
        piece.bodyOpenings().stream()
            .filter(opening -> opening.edge().equals(edge))
            .findFirst()
            .flatMap(BodyOpening::over)
            .or(() -> Optional.ofNullable(PASSED.get(edge)));
    over.ifPresent(part -> passages.add(new Passage(edge, part)));
  }

  private static boolean opens(Piece piece, Passage passage) {
    Set<Passage> own = new LinkedHashSet<>();
    piece.openings().forEach(edge -> passage(piece, edge, own));
    return own.contains(passage) && piece.edge(passage.edge()).isPresent();
  }

  /** The slit beside an opening, if something closes one. */
  private static double slit(List<Piece> round, String edge) {
    return round.stream()
        .flatMap(piece -> piece.bodyOpenings().stream())
        .filter(opening -> opening.edge().equals(edge))
        .flatMap(opening -> opening.closure().stream())
        .mapToDouble(BodyOpening.Closure::length)
        .max()
        .orElse(0);
  }

  /** Finds what goes round one opening. */
  private record Holdings(
      View view,
      SizedPattern sized,
      Pattern pattern,
      CheckSettings settings,
      String edge,
      List<Piece> round) {
    List<Holding> all() {
      List<Holding> all = new ArrayList<>();
      Holding cloth = cloth();
      all.add(cloth);
      Set<String> holders = new LinkedHashSet<>();
      round.forEach(piece -> holders.add(piece.name()));
      for (Seam seam : sized.seams()) {
        if (covers(seam, cloth.length())) {
          bands(seam, holders, all);
          if (isStiff(seam)) {
            double give = settings.wear().stiffSeam();
            all.add(new Holding(Kind.SEAM, seam.name(), cloth.length(), give));
          }
        }
      }
      for (Elastic elastic : sized.elastics()) {
        if (holders.contains(elastic.piece())) {
          double stretch = elastic.stretch().orElse(settings.wear().elasticStretch());
          all.add(new Holding(Kind.ELASTIC, elastic.name(), elastic.finished(), stretch));
        }
      }
      return all;
    }

    private Holding cloth() {
      double length = 0;
      double stretch = Double.MAX_VALUE;
      String name = "";
      for (Piece piece : round) {
        Edge own = piece.edge(edge).orElseThrow();
        int halves = piece.foldEdge().isPresent() ? 2 : 1;
        length += piece.sewnLength(own) * halves * Math.max(1, piece.card().copies().size());
        double gives = Cloth.stretch(piece, round(piece, own), pattern);
        if (gives < stretch) {
          stretch = gives;
          name = Cloth.of(piece, pattern).map(fabric -> fabric.title()).orElse(piece.name());
        }
      }
      return new Holding(Kind.CLOTH, name, length, stretch);
    }

    /**
     * The way round the body on a drawing: square to its fold, else level, but where the edge is
     * drawn upright, as on a band that lies on its side.
     */
    private static Vector round(Piece piece, Edge edge) {
      Optional<Edge> fold = piece.foldEdge();
      if (fold.isPresent()) {
        return fold.get().path().end().minus(fold.get().path().start()).left();
      }
      Vector chord = edge.path().end().minus(edge.path().start());
      return Cloth.between(chord, LevelRound.ROUND) > UPRIGHT
          ? LevelRound.ROUND.left()
          : LevelRound.ROUND;
    }

    private boolean isOpening(EdgePlace place) {
      return place.edge().equals(edge)
          && round.stream().anyMatch(piece -> piece.name().equals(place.piece()));
    }

    /** Whether a seam of this view takes the whole round. */
    private boolean covers(Seam seam, double length) {
      boolean inView =
          SewnLoop.places(seam).stream().allMatch(p -> view.pieces().contains(p.piece()));
      double taken =
          seam.joins().stream()
              .flatMap(join -> join.layers().stream())
              .filter(layer -> layer.run().stream().allMatch(this::isOpening))
              .mapToDouble(layer -> LayerWalk.of(layer, sized).length())
              .sum();
      return inView && taken > WHOLE * length;
    }

    /** What else the seam takes, layer by layer: a band, a facing, a lining. */
    private void bands(Seam seam, Set<String> holders, List<Holding> all) {
      int layers = seam.joins().get(0).layers().size();
      for (int i = 0; i < layers; i++) {
        double sewn = 0;
        double stretch = Double.MAX_VALUE;
        Set<String> names = new LinkedHashSet<>();
        for (Seam.Join join : seam.joins()) {
          if (i >= join.layers().size()
              || join.layers().get(i).run().stream().anyMatch(this::isOpening)) {
            names.clear();
            break;
          }
          sewn += LayerWalk.of(join.layers().get(i), sized).length();
          for (EdgePlace place : join.layers().get(i).run()) {
            names.add(place.piece());
            stretch = Math.min(stretch, stretch(place));
          }
        }
        if (!names.isEmpty() && sewn > 0) {
          holders.addAll(names);
          all.add(new Holding(Kind.BAND, String.join(", ", names), sewn, stretch));
        }
      }
    }

    private double stretch(EdgePlace place) {
      return sized
          .piece(place.piece())
          .flatMap(
              piece ->
                  piece
                      .edge(place.edge())
                      .map(own -> Cloth.stretch(piece, round(piece, own), pattern)))
          .orElse(0.0);
    }

    /** Whether a seam is sewn with a stitch that does not stretch, as far as the steps tell. */
    private boolean isStiff(Seam seam) {
      for (Step step : pattern.making().steps(view.name(), sized.size())) {
        boolean sews =
            step.act() instanceof Act.Sew
                || step.act() instanceof Act.Attach
                || step.act() instanceof Act.SetIn;
        boolean own =
            step.work(Work.OfSeam.class).stream().anyMatch(w -> w.seam().equals(seam.name()));
        if (sews && own && !step.sewing().choices().isEmpty() && !step.sewing().stretches()) {
          return true;
        }
      }
      return false;
    }
  }
}
