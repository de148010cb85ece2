package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Motion;
import org.hemwright.paper.style.SizeStyles;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/**
 * One piece in the sizes of a group, stacked.
 *
 * @param card what the piece says of itself
 * @param shapes one for each size that has the piece, in the chart's order, at least one
 * @param styles of the group's sizes
 * @param whole whether fold pieces are opened
 */
public record Nest(PieceCard card, List<PieceShape> shapes, SizeStyles styles, boolean whole) {
  public Nest {
    shapes = List.copyOf(shapes);
    if (shapes.isEmpty()) {
      throw new IllegalArgumentException("a nest holds a size at least: " + card.name());
    }
  }

  /**
   * The nests of a group, in the order of the document. A piece with two drafts for two ranges is
   * one nest where both say the same of themselves, and two where they do not. A piece whose cut
   * line cannot be drawn is left out; {@link AddedAllowance} says why.
   *
   * @param sizes of the group, in the chart's order
   * @param whole whether fold pieces are opened; those of a cloth that is never folded always are
   * @param inColour whether sizes have inks of their own
   */
  public static List<Nest> of(SizeRun run, List<Size> sizes, boolean whole, boolean inColour) {
    SizeStyles styles = SizeStyles.of(sizes, inColour);
    Map<List<Object>, List<PieceShape>> stacked = new LinkedHashMap<>();
    Map<List<Object>, PieceCard> cards = new LinkedHashMap<>();
    for (PieceCard card : run.pattern().pieces()) {
      cards.putIfAbsent(key(card), card);
      stacked.putIfAbsent(key(card), new ArrayList<>());
    }
    for (SizedPattern sized : run.sizes()) {
      if (sizes.contains(sized.size())) {
        for (Piece piece : sized.pieces()) {
          Optional<CutLine> cutLine = AddedAllowance.to(piece).cutLine();
          cards.putIfAbsent(key(piece.card()), piece.card());
          cutLine.ifPresent(
              line ->
                  stacked
                      .computeIfAbsent(key(piece.card()), k -> new ArrayList<>())
                      .add(
                          ShapeMaker.of(
                              sized.size(),
                              piece,
                              line,
                              whole || isCutWhole(run, piece.card()),
                              0)));
        }
      }
    }
    List<Nest> nests = new ArrayList<>();
    stacked.forEach(
        (key, shapes) -> {
          PieceCard card = cards.get(key);
          if (card != null && !shapes.isEmpty()) {
            nests.add(new Nest(card, shapes, styles, whole || isCutWhole(run, card)));
          }
        });
    return List.copyOf(nests);
  }

  private static boolean isCutWhole(SizeRun run, PieceCard card) {
    return run.pattern().isCutWhole(card);
  }

  /** What must be alike for two drafts to lie in one nest. */
  private static List<Object> key(PieceCard card) {
    return List.of(card.name(), card.title(), card.number(), card.copies(), card.rightSideUp());
  }

  /** The motion that lays a piece as its nest does: its grain upward, its stack point at 0, 0. */
  public static Motion laid(Piece piece) {
    return ShapeMaker.laid(piece, 0);
  }

  /** The same nest turned by quarters, counter-clockwise from grain upward. */
  public Nest turned(int quarterTurns) {
    List<PieceShape> turned =
        shapes.stream()
            .map(
                shape ->
                    ShapeMaker.of(
                        shape.size(), shape.piece(), shape.drafted(), whole, quarterTurns))
            .toList();
    return new Nest(card, turned, styles, whole);
  }

  /** The smallest upright box round all its cut lines. */
  public Box bounds() {
    Box box = shapes.get(0).cut().bounds();
    for (PieceShape shape : shapes) {
      box = box.union(shape.cut().bounds());
    }
    return box;
  }

  /** The shape whose area is least: words are to fit inside it. */
  public PieceShape smallest() {
    PieceShape least = shapes.get(0);
    for (PieceShape shape : shapes) {
      if (Math.abs(shape.cut().signedArea()) < Math.abs(least.cut().signedArea())) {
        least = shape;
      }
    }
    return least;
  }

  /** The names of its sizes, in the chart's order. */
  public List<String> sizeNames() {
    return shapes.stream().map(shape -> shape.size().name()).toList();
  }
}
