package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * One draft of a piece in all the sizes that it is drawn in; two drafts of one name are apart.
 *
 * @param card of the draft
 * @param sizes in the chart's order
 * @param pieces one for each
 */
record PieceRun(PieceCard card, List<SizedPattern> sizes, List<Piece> pieces) {
  PieceRun {
    sizes = List.copyOf(sizes);
    pieces = List.copyOf(pieces);
  }

  /** Every draft of every piece, in the order of the document. */
  static List<PieceRun> of(SizeRun run) {
    List<PieceRun> drafts = new ArrayList<>();
    for (PieceCard card : run.pattern().pieces()) {
      List<SizedPattern> sizes = new ArrayList<>();
      List<Piece> pieces = new ArrayList<>();
      for (SizedPattern sized : run.sizes()) {
        sized.pieces().stream()
            .filter(piece -> piece.name().equals(card.name()))
            .filter(piece -> piece.card().origin().equals(card.origin()))
            .findFirst()
            .ifPresent(
                piece -> {
                  sizes.add(sized);
                  pieces.add(piece);
                });
      }
      if (!pieces.isEmpty()) {
        drafts.add(new PieceRun(card, sizes, pieces));
      }
    }
    return drafts;
  }

  /** The name of a size, by its place in the draft. */
  String size(int index) {
    return sizes.get(index).size().name();
  }

  /** The lengths of the chart that are known in all these sizes, one array for each. */
  static List<double[]> chart(SizeChart chart, List<SizedPattern> sizes) {
    List<double[]> columns = new ArrayList<>();
    for (SizeChart.Column column : chart.columns()) {
      double[] values = new double[sizes.size()];
      boolean known = column.kind() == QuantityKind.LENGTH;
      for (int i = 0; known && i < values.length; i++) {
        OptionalDouble cell = column.cells().get(sizes.get(i).size().position()).value();
        known = cell.isPresent();
        values[i] = cell.orElse(0);
      }
      if (known) {
        columns.add(values);
      }
    }
    return columns;
  }
}
