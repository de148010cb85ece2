package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.booklet.figure.PieceFigures;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.View;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.PieceCard;

/** The list of pieces with a drawing of each. */
final class PieceParts {
  private final Given given;
  private final Telling telling;

  PieceParts(Given given) {
    this.given = given;
    this.telling = given.telling();
  }

  Section pieces() {
    List<PieceCard> cards = new ArrayList<>();
    Set<String> names = new LinkedHashSet<>();
    for (PieceCard card : telling.run().pattern().pieces()) {
      if (names.add(card.name())) {
        cards.add(card);
      }
    }
    List<List<Inline>> head = new ArrayList<>();
    head.add(given.say("pieces.piece"));
    List<Fabric> fabrics =
        telling.run().pattern().fabrics().stream()
            .filter(
                fabric ->
                    cards.stream()
                        .flatMap(card -> card.cuts().stream())
                        .anyMatch(cut -> cut.fabric().equals(fabric.name())))
            .toList();
    fabrics.forEach(fabric -> head.add(List.of(telling.fabric(fabric.name()))));
    if (telling.severalViews()) {
      head.add(given.say("pieces.views"));
    }
    List<List<List<Inline>>> rows = new ArrayList<>();
    List<Figure> drawings = new ArrayList<>();
    for (PieceCard card : cards) {
      List<List<Inline>> row = new ArrayList<>();
      row.add(telling.piece(card.name()));
      fabrics.forEach(fabric -> row.add(cuts(card, fabric)));
      if (telling.severalViews()) {
        List<List<Inline>> views =
            telling.run().pattern().views().stream()
                .filter(view -> view.pieces().contains(card.name()))
                .map(View::name)
                .map(name -> List.<Inline>of(telling.name(name)))
                .toList();
        row.add(telling.words().listed(views));
      }
      rows.add(row);
      Optional<Figure> drawing = PieceFigures.piece(telling, card);
      drawing.ifPresent(drawings::add);
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(Block.Tone.PLAIN, given.say("pieces.lead")));
    blocks.addAll(given.prose().part("pieces"));
    blocks.add(new Block.Table(given.say("pieces.caption"), head, rows));
    blocks.add(new Block.Gallery(drawings));
    return new Section("pieces", given.say("part.pieces"), false, blocks);
  }

  /** How often a piece is cut of a fabric, and how. */
  private List<Inline> cuts(PieceCard card, Fabric fabric) {
    List<List<Inline>> all = new ArrayList<>();
    int number = 0;
    for (Cut cut : card.cuts()) {
      Provenance from = Provenance.of(Source.PIECE, card.name(), "cut", Integer.toString(number++));
      if (cut.fabric().equals(fabric.name())) {
        Slots slots =
            Slots.of("count", new Inline.Value(Integer.toString(cut.count()), from))
                .and("mirrored", cut.mirrored() ? given.say("pieces.mirrored") : List.of());
        boolean onFold = cut.onFold() && fabric.liesFolded();
        all.add(given.say(onFold ? "pieces.cut-on-fold" : "pieces.cut-of", slots));
      }
    }
    return all.isEmpty() ? given.say("table.none") : telling.words().listed(all);
  }
}
