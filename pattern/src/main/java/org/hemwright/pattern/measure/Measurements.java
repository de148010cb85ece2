package org.hemwright.pattern.measure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/**
 * The finished measurements of a run, unrounded. Every map has sizes for keys, in the chart's
 * order, and only those in which the thing is drawn.
 *
 * @param sizes all sizes of the run
 * @param pieces in the order of the document; pieces of one name stand as one
 * @param seams in the order of the document
 * @param girths for each view, each level that one of its pieces names
 * @param elastics in the order of the document
 */
public record Measurements(
    List<String> sizes,
    List<OfPiece> pieces,
    List<OfSeam> seams,
    List<OfLevel> girths,
    List<OfElastic> elastics) {
  public Measurements {
    sizes = List.copyOf(sizes);
    pieces = List.copyOf(pieces);
    seams = List.copyOf(seams);
    girths = List.copyOf(girths);
    elastics = List.copyOf(elastics);
  }

  /**
   * One piece at the stitch line.
   *
   * @param area of one copy, opened over its fold (mm²)
   */
  public record OfPiece(String name, Map<String, Double> area, List<OfEdge> edges) {}

  /**
   * One edge as drawn, at the stitch line.
   *
   * @param length mm, with darts and pleats closed and gathers drawn up
   */
  public record OfEdge(String name, Map<String, Double> length) {}

  /**
   * One seam.
   *
   * @param joins how often it is sewn
   * @param layers of its first join; the others are the same or mirrored
   */
  public record OfSeam(String name, int joins, List<OfLayer> layers) {}

  /**
   * One layer of a seam.
   *
   * @param name the edges it takes, copies aside
   * @param length mm
   * @param difference by how much the first layer is longer (mm); 0 for the first itself
   */
  public record OfLayer(String name, Map<String, Double> length, Map<String, Double> difference) {}

  /**
   * The garment's girth at a level, opened.
   *
   * @param pieces that name the level
   * @param loops how often the garment goes round there: 2 for sleeves
   * @param girth of one loop (mm)
   */
  public record OfLevel(
      String view,
      String level,
      List<String> pieces,
      Map<String, Double> loops,
      Map<String, Double> girth) {}

  /**
   * One elastic.
   *
   * @param width mm
   * @param finished the loop (mm)
   * @param cut with its overlap (mm)
   */
  public record OfElastic(
      String name,
      String piece,
      Map<String, Double> width,
      Map<String, Double> finished,
      Map<String, Double> cut) {}

  /** Measures a run. */
  public static Measurements of(SizeRun run) {
    return new Measurements(
        run.sizes().stream().map(sized -> sized.size().name()).toList(),
        pieces(run),
        seams(run),
        girths(run),
        elastics(run));
  }

  private static List<OfPiece> pieces(SizeRun run) {
    List<OfPiece> pieces = new ArrayList<>();
    for (String name : names(run, SizedPattern::pieces, Piece::name)) {
      Set<String> edges = new LinkedHashSet<>();
      run.sizes().stream()
          .flatMap(sized -> sized.piece(name).stream())
          .forEach(piece -> piece.edges().forEach(edge -> edges.add(edge.name())));
      pieces.add(
          new OfPiece(
              name,
              bySize(run, sized -> sized.piece(name), Measurements::openedArea),
              edges.stream()
                  .map(
                      edge ->
                          new OfEdge(
                              edge,
                              bySize(
                                  run,
                                  sized ->
                                      sized
                                          .piece(name)
                                          .flatMap(p -> p.edge(edge).map(p::sewnLength)),
                                  Double::doubleValue)))
                  .toList()));
    }
    return pieces;
  }

  /** The area of one copy, opened over its fold (mm²), at the stitch line. */
  public static double openedArea(Piece piece) {
    double drawn = Math.abs(piece.stitchLine().signedArea());
    return piece.foldEdge().isPresent() ? 2 * drawn : drawn;
  }

  private static List<OfSeam> seams(SizeRun run) {
    List<OfSeam> seams = new ArrayList<>();
    for (String name : names(run, SizedPattern::seams, Seam::name)) {
      Seam seam = run.sizes().stream().flatMap(s -> seam(s, name).stream()).findFirst().get();
      List<OfLayer> layers = new ArrayList<>();
      for (int i = 0; i < seam.joins().get(0).layers().size(); i++) {
        int layer = i;
        layers.add(
            new OfLayer(
                seam.joins().get(0).layers().get(i).text(),
                bySize(run, s -> length(s, name, layer), Double::doubleValue),
                bySize(
                    run,
                    s ->
                        length(s, name, 0)
                            .flatMap(first -> length(s, name, layer).map(own -> first - own)),
                    Double::doubleValue)));
      }
      seams.add(new OfSeam(name, seam.joins().size(), List.copyOf(layers)));
    }
    return seams;
  }

  private static Optional<Seam> seam(SizedPattern sized, String name) {
    return sized.seams().stream().filter(seam -> seam.name().equals(name)).findFirst();
  }

  private static Optional<Double> length(SizedPattern sized, String name, int layer) {
    return seam(sized, name)
        .map(seam -> seam.joins().get(0).layers())
        .filter(layers -> layer < layers.size())
        .map(layers -> LayerWalk.of(layers.get(layer), sized).length());
  }

  /** The girths alone, where nothing else is asked. */
  public static List<OfLevel> girths(SizeRun run) {
    List<OfLevel> girths = new ArrayList<>();
    for (View view : run.pattern().views()) {
      Map<String, Set<String>> levels = new LinkedHashMap<>();
      for (SizedPattern sized : run.sizes()) {
        for (Piece piece : sized.pieces()) {
          if (view.pieces().contains(piece.name())) {
            for (Mark.Level level : piece.marks(Mark.Level.class)) {
              levels.computeIfAbsent(level.name(), name -> new LinkedHashSet<>()).add(piece.name());
            }
          }
        }
      }
      levels.forEach(
          (level, pieces) ->
              girths.add(
                  new OfLevel(
                      view.name(),
                      level,
                      List.copyOf(pieces),
                      bySize(run, s -> LevelGirth.of(s, level, pieces), LevelGirth::loops),
                      bySize(run, s -> LevelGirth.of(s, level, pieces), LevelGirth::girth))));
    }
    return girths;
  }

  private static List<OfElastic> elastics(SizeRun run) {
    List<OfElastic> elastics = new ArrayList<>();
    for (String name : names(run, SizedPattern::elastics, Elastic::name)) {
      Function<SizedPattern, Optional<Elastic>> own =
          sized -> sized.elastics().stream().filter(e -> e.name().equals(name)).findFirst();
      elastics.add(
          new OfElastic(
              name,
              run.sizes().stream().flatMap(s -> own.apply(s).stream()).findFirst().get().piece(),
              bySize(run, own, Elastic::width),
              bySize(run, own, Elastic::finished),
              bySize(run, own, Elastic::cut)));
    }
    return elastics;
  }

  private static <T> List<String> names(
      SizeRun run, Function<SizedPattern, List<T>> things, Function<T, String> name) {
    return run.sizes().stream()
        .flatMap(sized -> things.apply(sized).stream())
        .map(name)
        .distinct()
        .toList();
  }

  private static <T> Map<String, Double> bySize(
      SizeRun run, Function<SizedPattern, Optional<T>> thing, ToDoubleFunction<T> measure) {
    Map<String, Double> values = new LinkedHashMap<>();
    for (SizedPattern sized : run.sizes()) {
      thing
          .apply(sized)
          .ifPresent(found -> values.put(sized.size().name(), measure.applyAsDouble(found)));
    }
    return Collections.unmodifiableMap(values);
  }
}
