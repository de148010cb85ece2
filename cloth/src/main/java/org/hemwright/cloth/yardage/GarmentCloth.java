package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothSheet;
import org.hemwright.cloth.rule.MatchedPair;
import org.hemwright.cloth.rule.Matching;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.split.PieceParts;
import org.hemwright.pattern.split.SplitChoice;

/**
 * What views take of one fabric: the same pieces, in every size.
 *
 * @param fabric the fabric
 * @param views those that take just these pieces of it
 * @param pieces for each size of the run, in its order; none where a size has none of them
 */
record GarmentCloth(Fabric fabric, List<View> views, List<List<Cuttable>> pieces) {
  GarmentCloth {
    views = List.copyOf(views);
    pieces = pieces.stream().map(List::copyOf).toList();
  }

  /** For each fabric and each set of pieces that views take of it, in the order of the pattern. */
  static List<GarmentCloth> of(SizeRun run, double gap) {
    List<GarmentCloth> all = new ArrayList<>();
    for (Fabric fabric : run.pattern().fabrics()) {
      List<List<Cuttable>> every = new ArrayList<>();
      for (SizedPattern sized : run.sizes()) {
        every.add(pieces(sized, fabric, gap));
      }
      Map<Set<String>, List<View>> sets = new LinkedHashMap<>();
      for (View view : run.pattern().views()) {
        Set<String> names = new LinkedHashSet<>();
        for (List<Cuttable> ofSize : every) {
          ofSize.stream().map(Cuttable::name).filter(view.pieces()::contains).forEach(names::add);
        }
        if (!names.isEmpty()) {
          sets.computeIfAbsent(names, unused -> new ArrayList<>()).add(view);
        }
      }
      sets.forEach(
          (names, views) ->
              all.add(
                  new GarmentCloth(
                      fabric,
                      views,
                      every.stream()
                          .map(ofSize -> ofSize.stream().filter(p -> names.contains(p.name())))
                          .map(stream -> stream.toList())
                          .toList())));
    }
    return all;
  }

  private static List<Cuttable> pieces(SizedPattern sized, Fabric fabric, double gap) {
    List<Cuttable> pieces = new ArrayList<>();
    for (Piece piece : sized.pieces()) {
      int times = 0;
      for (int cut = 0; cut < piece.card().cuts().size(); cut++) {
        if (piece.card().cuts().get(cut).fabric().equals(fabric.name())) {
          times++;
          String suffix = times == 1 ? "" : "-" + times;
          Cuttable.of(piece, cut, suffix, gap).ifPresent(pieces::add);
        }
      }
    }
    List<Cuttable> matched =
        fabric.repeat().map(repeat -> Matched.of(sized, pieces, repeat).pieces()).orElse(pieces);
    return fabric.sidesAlike()
        ? matched.stream().map(each -> each.each(ClothPiece::onClothAlike)).toList()
        : matched;
  }

  /** The same on a cloth that has a right side. */
  GarmentCloth onRightSide() {
    return new GarmentCloth(
        fabric,
        views,
        pieces.stream()
            .map(size -> size.stream().map(each -> each.each(ClothPiece::onRightSide)).toList())
            .toList());
  }

  /**
   * Pieces held to the bars, and what cannot match. Copies that are cut alike lie alike; where two
   * of one piece are sewn to each other, each is held by itself if more then matches.
   */
  private record Matched(List<Cuttable> pieces, List<Matching.Clash> clashes) {
    static Matched of(SizedPattern sized, List<Cuttable> pieces, Fabric.Repeat repeat) {
      Matching alike = matching(sized, pieces, repeat);
      Set<String> meeting = new LinkedHashSet<>();
      alike.clashes().stream()
          .filter(clash -> clash.piece().equals(clash.mate()))
          .forEach(clash -> meeting.add(clash.piece()));
      List<Cuttable> copies = new ArrayList<>();
      pieces.forEach(
          each -> copies.addAll(meeting.contains(each.name()) ? each.copies() : List.of(each)));
      Matching byItself = matching(sized, copies, repeat);
      return byItself.lost() < alike.lost() ? held(copies, byItself) : held(pieces, alike);
    }

    private static Matched held(List<Cuttable> pieces, Matching matching) {
      return new Matched(
          pieces.stream().map(each -> each.matched(matching)).toList(), matching.clashes());
    }
  }

  private static Matching matching(
      SizedPattern sized, List<Cuttable> pieces, Fabric.Repeat repeat) {
    List<PieceParts> splits = pieces.stream().flatMap(each -> each.splits().stream()).toList();
    List<MatchedPair> pairs = MatchedPair.of(sized, repeat.matched());
    return new Matching(
        pieces.stream().flatMap(each -> each.all().stream()).toList(),
        repeat,
        MatchedPair.withParts(pairs, splits));
  }

  /**
   * Matched notches of a fabric that cannot lie on like bars in one size; those of parts are the
   * same as of the whole.
   */
  static List<Matching.Clash> clashes(SizedPattern sized, Fabric fabric) {
    return fabric
        .repeat()
        .map(repeat -> Matched.of(sized, pieces(sized, fabric, 0), repeat).clashes())
        .orElse(List.of())
        .stream()
        .filter(
            clash ->
                sized.piece(clash.piece()).isPresent() && sized.piece(clash.mate()).isPresent())
        .toList();
  }

  /** What is cut in one size of a cloth; pieces that it is too narrow for in parts. */
  List<ClothPiece> on(ClothSheet flat, int size) {
    List<ClothPiece> cut = new ArrayList<>();
    pieces.get(size).forEach(piece -> cut.addAll(piece.on(flat)));
    return cut;
  }

  /** The pieces that a laying holds for this garment in one size; absent where one is missing. */
  Optional<List<String>> among(Set<String> ids, int size) {
    List<String> own = new ArrayList<>();
    for (Cuttable piece : pieces.get(size)) {
      Optional<List<String>> found = piece.among(ids);
      if (found.isEmpty()) {
        return Optional.empty();
      }
      own.addAll(found.get());
    }
    return Optional.of(own);
  }

  /** How pieces are cut apart where those with these ids are cut, in the order of the pattern. */
  List<SplitChoice> choices(Set<String> ids, int size) {
    return pieces.get(size).stream()
        .flatMap(piece -> piece.choice(ids).stream())
        .distinct()
        .toList();
  }

  /** Whether another is this one: no two of a pattern share a fabric and a view. */
  boolean is(GarmentCloth other) {
    return fabric.equals(other.fabric) && views.equals(other.views);
  }

  /** Whether another takes these pieces and more of the same fabric, in one size. */
  boolean isPartOf(GarmentCloth other, int size) {
    return !is(other)
        && other.fabric.equals(fabric)
        && !pieces.get(size).isEmpty()
        && other.pieces.get(size).containsAll(pieces.get(size));
  }
}
