package org.hemwright.pattern.compare;

import java.util.List;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/**
 * The old version in the new version's names, so that the rest of a comparison goes by name.
 *
 * @param names what is called otherwise now
 */
record Renamed(Renaming names) {
  /** The pieces, seams and elastics of every size renamed; the pattern itself as it was. */
  SizeRun run(SizeRun old) {
    if (names.pieces().isEmpty() && names.edges().isEmpty()) {
      return old;
    }
    return new SizeRun(old.pattern(), old.sizes().stream().map(this::sized).toList());
  }

  private SizedPattern sized(SizedPattern sized) {
    return new SizedPattern(
        sized.size(),
        sized.pieces().stream().map(this::piece).toList(),
        sized.seams().stream().map(this::seam).toList(),
        sized.elastics().stream().map(this::elastic).toList(),
        sized.numbers());
  }

  private PieceCard card(PieceCard card) {
    return new PieceCard(
        names.piece(card.name()),
        card.title(),
        card.number(),
        card.cuts(),
        card.copies(),
        card.rightSideUp(),
        card.sizes(),
        card.origin(),
        card.part());
  }

  private Piece piece(Piece piece) {
    String name = names.piece(piece.name());
    Piece renamed =
        new Piece(
            card(piece.card()),
            piece.stitchLine(),
            piece.edges().stream().map(edge -> edge(name, edge)).toList(),
            piece.corners().stream().map(corner -> corner(name, corner)).toList(),
            piece.notches().stream().map(notch -> notch(name, notch)).toList(),
            piece.grain(),
            piece.marks(),
            piece.openings().stream().map(edge -> names.edge(name, edge)).toList(),
            piece.stackPoint());
    return renamed.with(
        piece.intakes().stream().map(each -> each.onEdge(names.edge(name, each.edge()))).toList(),
        piece.bodyOpenings().stream().map(each -> opening(name, each)).toList());
  }

  private BodyOpening opening(String piece, BodyOpening opening) {
    return new BodyOpening(
        names.edge(piece, opening.edge()), opening.over(), opening.closure(), opening.origin());
  }

  private Edge edge(String piece, Edge edge) {
    return new Edge(
        names.edge(piece, edge.name()),
        edge.path(),
        edge.onFold(),
        edge.allowance(),
        edge.reversed(),
        edge.origin());
  }

  private Corner corner(String piece, Corner corner) {
    CornerFinish finish = corner.finish();
    if (finish instanceof CornerFinish.Square square) {
      finish = new CornerFinish.Square(names.edge(piece, square.edge()));
    } else if (finish instanceof CornerFinish.TurnedBack turned) {
      finish = new CornerFinish.TurnedBack(names.edge(piece, turned.edge()));
    }
    return new Corner(
        names.edge(piece, corner.before()),
        names.edge(piece, corner.after()),
        corner.point(),
        finish);
  }

  private Notch notch(String piece, Notch notch) {
    return new Notch(
        names.edge(piece, notch.edge()),
        notch.distance(),
        notch.kind(),
        notch.name(),
        notch.origin());
  }

  private Seam seam(Seam seam) {
    List<Seam.Join> joins =
        seam.joins().stream()
            .map(join -> new Seam.Join(join.layers().stream().map(this::layer).toList()))
            .toList();
    return new Seam(seam.name(), joins, seam.ease(), seam.even(), seam.origin());
  }

  private Seam.Layer layer(Seam.Layer layer) {
    return new Seam.Layer(layer.run().stream().map(this::place).toList());
  }

  private EdgePlace place(EdgePlace place) {
    String piece = names.piece(place.piece());
    return new EdgePlace(
        piece,
        place.copy(),
        place.half(),
        names.edge(piece, place.edge()),
        place.from(),
        place.to(),
        place.reversed());
  }

  private Elastic elastic(Elastic elastic) {
    return new Elastic(
        elastic.name(),
        names.piece(elastic.piece()),
        elastic.width(),
        elastic.finished(),
        elastic.overlap(),
        elastic.edge().map(edge -> names.edge(names.piece(elastic.piece()), edge)),
        elastic.round(),
        elastic.over(),
        elastic.stretch(),
        elastic.origin());
  }
}
