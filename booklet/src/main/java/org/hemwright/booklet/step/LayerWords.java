package org.hemwright.booklet.step;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/** How the layers of a step's seams are laid on each other, in words. */
final class LayerWords {
  private final Telling telling;
  private final Step step;
  private final Set<String> folded;
  private final Set<String> pinned;

  /**
   * The words of a step's layers.
   *
   * @param folded the pieces that a step before has folded or turned out
   * @param pinned the seams that a step before has pinned, and told how
   */
  LayerWords(Telling telling, Step step, Set<String> folded, Set<String> pinned) {
    this.telling = telling;
    this.step = step;
    this.folded = folded;
    this.pinned = pinned;
  }

  /** Whether a step before has told how a seam is pinned. */
  boolean isPinned(String seam) {
    return pinned.contains(seam);
  }

  /** How the layers of each seam are laid; nothing where they lie so already. */
  List<Inline> laying() {
    if (!SewingWords.joins(step)) {
      return List.of();
    }
    List<Laying> all = new ArrayList<>();
    for (Work.OfSeam work : step.work(Work.OfSeam.class)) {
      if (!pinned.contains(work.seam())) {
        telling.seam(work.seam()).flatMap(this::laid).ifPresent(laid -> Laying.add(all, laid));
      }
    }
    List<Inline> text = new ArrayList<>();
    all.forEach(laid -> StepWords.add(text, told(laid)));
    return text;
  }

  /** Whether it has been told how the layers of every seam are laid. */
  boolean isLaid() {
    List<Work.OfSeam> seams = step.work(Work.OfSeam.class);
    return SewingWords.joins(step)
        && seams.size() == step.work().size()
        && seams.stream()
            .allMatch(
                work ->
                    !pinned.contains(work.seam())
                        && telling.seam(work.seam()).flatMap(this::laid).isPresent());
  }

  /** How the layers of a seam are laid; nothing where a fold has laid them already. */
  private Optional<Laying> laid(Seam seam) {
    Seam.Join join = seam.joins().get(0);
    Seam.Layer first = join.layers().get(0);
    Seam.Layer second = join.layers().get(join.layers().size() - 1);
    Set<String> here = pieces(first);
    Set<String> there = pieces(second);
    Optional<Seam.Layer> between = between(join);
    if (between.isPresent()) {
      Seam.Layer outside = join.layers().get(join.layers().size() - 1);
      return Optional.of(
          Laying.of("lay.between", pieces(between.get()), pieces(outside))
              .side(edgesOf(between.get()), edgesOf(outside)));
    }
    if (here.equals(there)) {
      if (!Collections.disjoint(here, folded)) {
        return Optional.empty();
      }
      boolean oneCopy = copies(first).equals(copies(second));
      String self = isEnd(first) && isEnd(second) ? "lay.ring" : "lay.self";
      return Optional.of(
          Laying.of(oneCopy ? self : "lay.twins", here, there)
              .side(edgesOf(first), edgesOf(second)));
    }
    if (telling.isMark(second) || telling.isMark(first)) {
      boolean onSecond = telling.isMark(second);
      Seam.Layer on = onSecond ? second : first;
      Seam.Layer laid = onSecond ? first : second;
      return Optional.of(
          Laying.of("lay.placed", pieces(laid), pieces(on)).side(edgesOf(laid), edgesOf(on)));
    }
    boolean band = step.act() instanceof Act.Attach;
    boolean sleeve = step.act() instanceof Act.SetIn;
    Laying laying =
        Laying.of(band ? "lay.band" : sleeve ? "lay.sleeve" : "lay.pair", here, there)
            .side(edgesOf(first), edgesOf(second));
    boolean eased = !band && !sleeve && seam.ease().most() > 0;
    boolean stretched = !band && seam.ease().most() < 0;
    return Optional.of(
        eased ? laying.then("lay.ease") : stretched ? laying.then("lay.stretch") : laying);
  }

  /** The layer that lies between two copies of another piece, where there is one. */
  private static Optional<Seam.Layer> between(Seam.Join join) {
    List<Seam.Layer> layers = join.layers();
    if (layers.size() < 3) {
      return Optional.empty();
    }
    Set<String> outside = pieces(layers.get(layers.size() - 1));
    long copies = layers.stream().filter(layer -> pieces(layer).equals(outside)).count();
    return copies == 2
        ? layers.stream().filter(layer -> !pieces(layer).equals(outside)).findFirst()
        : Optional.empty();
  }

  private List<Inline> told(Laying laid) {
    List<List<Inline>> sides = new ArrayList<>();
    for (Laying.Side side : laid.sides()) {
      sides.add(telling.say("lay.side", Slots.of("edge", side.edge()).and("onto", side.onto())));
    }
    Laying.Side first = laid.sides().get(0);
    List<Inline> text =
        new ArrayList<>(
            telling.say(
                laid.key(),
                Slots.of("first", listedPieces(laid.first()))
                    .and("second", listedPieces(laid.second()))
                    .and("sides", telling.words().listed(sides))
                    .and("edge", first.edge())
                    .and("onto", first.onto())));
    laid.after()
        .ifPresent(
            key ->
                StepWords.add(
                    text, telling.say(key, Slots.of("first", listedPieces(laid.first())))));
    return text;
  }

  /** Whether it is one end of a strip. */
  private static boolean isEnd(Seam.Layer layer) {
    return layer.run().size() == 1
        && layer
            .run()
            .get(0)
            .edge()
            .matches("end|(left|right|upper|lower)_end|end_(left|right|upper|lower)");
  }

  private static Set<String> pieces(Seam.Layer layer) {
    Set<String> pieces = new LinkedHashSet<>();
    layer.run().forEach(place -> pieces.add(place.piece()));
    return pieces;
  }

  private static Set<String> copies(Seam.Layer layer) {
    Set<String> copies = new LinkedHashSet<>();
    layer.run().forEach(place -> copies.add(place.piece() + "." + place.copy()));
    return copies;
  }

  private List<Inline> listedPieces(Set<String> pieces) {
    return telling.words().listed(pieces.stream().map(telling::piece).toList());
  }

  private List<Inline> edgesOf(Seam.Layer layer) {
    List<String> names = layer.run().stream().map(EdgePlace::edge).distinct().toList();
    return telling.isMark(layer)
        ? telling
            .words()
            .listed(names.stream().map(name -> List.<Inline>of(telling.name(name))).toList())
        : telling.edges(names);
  }
}
