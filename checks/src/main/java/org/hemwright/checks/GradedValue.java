package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.NotchPlace;

/**
 * Something of a piece that is graded: a point seen from the stack point, or a length.
 *
 * @param code of what is told when a size sticks out
 * @param subject of the finding
 * @param words that its sentence names
 * @param values one array of values over the sizes for a length, two for a point, more for a curve:
 *     what sticks out is measured over all of them
 * @param places one for each size
 */
record GradedValue(
    String code,
    String subject,
    Map<String, String> words,
    List<double[]> values,
    List<Place> places) {
  /** Where along an edge its run is looked at. */
  private static final double[] SHARES = {0.25, 0.5, 0.75};

  /** A grain arrow's turn is told by how far the end of so long an arrow goes astray (mm). */
  private static final double ARROW = 100;

  GradedValue {
    values = List.copyOf(values);
    places = List.copyOf(places);
  }

  Place place(int size) {
    return places.get(size);
  }

  /** For each size how far it sticks out: the values in pairs are points. */
  double[] strays(Stray stray) {
    if (values.size() == 1) {
      return stray.of(values.get(0));
    }
    double[] worst = new double[values.get(0).length];
    for (int k = 0; k + 1 < values.size(); k += 2) {
      double[] across = stray.of(values.get(k));
      double[] up = stray.of(values.get(k + 1));
      for (int i = 0; i < worst.length; i++) {
        worst[i] = Math.max(worst[i], StrictMath.hypot(across[i], up[i]));
      }
    }
    return worst;
  }

  /** Every corner. */
  static List<GradedValue> corners(PieceRun draft) {
    List<GradedValue> all = new ArrayList<>();
    for (int k = 0; k < draft.pieces().get(0).corners().size(); k++) {
      int index = k;
      Corner corner = draft.pieces().get(0).corners().get(k);
      point(
              draft,
              "grade-stray-corner",
              draft.card().name() + "." + corner.after(),
              Map.of("before", corner.before(), "after", corner.after()),
              piece ->
                  Optional.of(piece.corners())
                      .filter(corners -> corners.size() > index)
                      .map(corners -> corners.get(index))
                      .filter(c -> c.before().equals(corner.before()))
                      .map(Corner::point),
              piece -> piece.edge(corner.after()).map(Edge::origin))
          .ifPresent(all::add);
    }
    return all;
  }

  /** How every edge runs between its corners, and how long it is. */
  static List<GradedValue> edges(PieceRun draft) {
    List<GradedValue> all = new ArrayList<>();
    for (Edge first : draft.pieces().get(0).edges()) {
      List<Edge> edges =
          draft.pieces().stream().flatMap(p -> p.edge(first.name()).stream()).toList();
      if (edges.size() < draft.pieces().size()) {
        continue;
      }
      List<double[]> values = new ArrayList<>();
      for (double share : SHARES) {
        double[] across = new double[edges.size()];
        double[] up = new double[edges.size()];
        for (int i = 0; i < across.length; i++) {
          Path path = edges.get(i).path();
          Vector seen =
              path.at(path.length() * share).point().minus(draft.pieces().get(i).stackPoint());
          across[i] = seen.dx();
          up[i] = seen.dy();
        }
        values.add(across);
        values.add(up);
      }
      String subject = draft.card().name() + "." + first.name();
      Map<String, String> words = Map.of("edge", first.name());
      List<Place> places = new ArrayList<>();
      for (Edge edge : edges) {
        Point middle = edge.path().at(edge.path().length() / 2).point();
        places.add(Place.on(edge.origin(), draft.card().name(), middle));
      }
      all.add(new GradedValue("grade-stray-edge", subject, words, values, places));
      double[] lengths = edges.stream().mapToDouble(edge -> edge.path().length()).toArray();
      all.add(new GradedValue("grade-stray-edge", subject, words, List.of(lengths), places));
    }
    return all;
  }

  /** The allowance of every edge, by its folds where it is turned back. */
  static List<GradedValue> allowances(PieceRun draft) {
    List<GradedValue> all = new ArrayList<>();
    for (Edge first : draft.pieces().get(0).edges()) {
      Map<String, String> words = Map.of("edge", first.name());
      for (int fold = 0; fold < 2; fold++) {
        int index = fold;
        length(
                draft,
                "grade-stray-allowance",
                draft.card().name() + "." + first.name(),
                words,
                piece -> piece.edge(first.name()).map(edge -> depth(edge.allowance(), index)),
                piece -> piece.edge(first.name()).map(edge -> middle(piece, edge)))
            .ifPresent(all::add);
      }
    }
    return all;
  }

  private static double depth(Allowance allowance, int fold) {
    if (allowance instanceof Allowance.TurnedBack hem) {
      return fold < hem.folds().size() ? hem.folds().get(fold) : 0;
    }
    return fold == 0 ? allowance.width() : 0;
  }

  private static Place middle(Piece piece, Edge edge) {
    return Place.on(edge.origin(), piece.name(), edge.path().at(edge.path().length() / 2).point());
  }

  /** Notches along their edges, points and lines drawn inside, the grain. */
  static List<GradedValue> marks(PieceRun draft) {
    List<GradedValue> all = new ArrayList<>();
    Piece first = draft.pieces().get(0);
    for (int k = 0; k < first.notches().size(); k++) {
      notch(draft, k).ifPresent(all::add);
    }
    for (int k = 0; k < first.marks().size(); k++) {
      int index = k;
      if (!(first.marks().get(k) instanceof Mark.Label)) {
        for (boolean end : new boolean[] {false, true}) {
          point(
                  draft,
                  "grade-stray-mark",
                  draft.card().name(),
                  Map.of(),
                  piece ->
                      piece.marks().size() > index
                          ? at(piece, piece.marks().get(index), end)
                          : Optional.empty(),
                  piece -> Optional.of(piece.marks().get(index).origin()))
              .ifPresent(all::add);
        }
      }
    }
    point(
            draft,
            "grade-stray-grain",
            draft.card().name(),
            Map.of(),
            piece -> piece.grain().map(g -> piece.stackPoint().plus(g.direction().times(ARROW))),
            piece -> piece.grain().map(grain -> grain.origin()))
        .ifPresent(all::add);
    return all;
  }

  private static Optional<GradedValue> notch(PieceRun draft, int index) {
    Notch first = draft.pieces().get(0).notches().get(index);
    ToDoubleFunction<Piece> along =
        piece ->
            NotchPlace.along(piece.edge(first.edge()).orElseThrow(), piece.notches().get(index));
    return length(
        draft,
        "grade-stray-notch",
        draft.card().name() + "." + first.edge(),
        Map.of("edge", first.edge()),
        piece ->
            piece.notches().size() == draft.pieces().get(0).notches().size()
                    && piece.notches().get(index).edge().equals(first.edge())
                    && piece.edge(first.edge()).isPresent()
                ? Optional.of(along.applyAsDouble(piece))
                : Optional.empty(),
        piece ->
            piece
                .edge(first.edge())
                .map(
                    edge ->
                        Place.on(
                            piece.notches().get(index).origin(),
                            piece.name(),
                            edge.path()
                                .at(
                                    Math.min(
                                        edge.path().length(),
                                        piece.notches().get(index).distance()))
                                .point())));
  }

  private static Optional<Point> at(Piece piece, Mark mark, boolean end) {
    if (mark instanceof Mark.Drill drill) {
      return Optional.of(drill.at());
    } else if (mark instanceof Mark.Level level) {
      return Optional.of(level.at());
    } else if (mark instanceof Mark.Inner inner) {
      return Optional.of(end ? inner.path().end() : inner.path().start());
    } else if (mark instanceof Mark.Placement line) {
      return Optional.of(end ? line.path().end() : line.path().start());
    } else if (mark instanceof Mark.Lengthen lengthen) {
      return Optional.of(end ? lengthen.line().end() : lengthen.line().start());
    } else if (mark instanceof Mark.Stretch stretch) {
      return Optional.of(piece.stackPoint().plus(stretch.direction().times(ARROW)));
    }
    return Optional.empty();
  }

  private static Optional<GradedValue> point(
      PieceRun draft,
      String code,
      String subject,
      Map<String, String> words,
      Function<Piece, Optional<Point>> point,
      Function<Piece, Optional<Origin>> origin) {
    int count = draft.pieces().size();
    double[] across = new double[count];
    double[] up = new double[count];
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Piece piece = draft.pieces().get(i);
      Optional<Point> at = point.apply(piece);
      if (at.isEmpty()) {
        return Optional.empty();
      }
      Vector seen = at.get().minus(piece.stackPoint());
      across[i] = seen.dx();
      up[i] = seen.dy();
      places.add(
          Place.on(origin.apply(piece).orElse(piece.card().origin()), piece.name(), at.get()));
    }
    return Optional.of(
        new GradedValue(code, subject, new LinkedHashMap<>(words), List.of(across, up), places));
  }

  private static Optional<GradedValue> length(
      PieceRun draft,
      String code,
      String subject,
      Map<String, String> words,
      Function<Piece, Optional<Double>> length,
      Function<Piece, Optional<Place>> place) {
    double[] values = new double[draft.pieces().size()];
    List<Place> places = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      Piece piece = draft.pieces().get(i);
      Optional<Double> value = length.apply(piece);
      Optional<Place> where = value.isPresent() ? place.apply(piece) : Optional.empty();
      if (value.isEmpty() || where.isEmpty()) {
        return Optional.empty();
      }
      values[i] = value.get();
      places.add(where.get());
    }
    return Optional.of(
        new GradedValue(code, subject, new LinkedHashMap<>(words), List.of(values), places));
  }
}
