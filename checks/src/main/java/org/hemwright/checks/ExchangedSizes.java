package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.piece.Edge;

/** Neighbouring sizes of a draft that stand in each other's place. */
final class ExchangedSizes {
  /** Put right, two sizes leave so many bends fewer in each edge. */
  private static final double BENDS_GONE = 1.6;

  /** Fewer at an end of the run, where an even curve leaves bends of its own on one side only. */
  private static final double BENDS_GONE_AT_END = 1.3;

  /** An edge that changes by less (mm) from size to size says nothing. */
  private static final double STEP = 1;

  /** Of so few sizes no two can be told to be exchanged. */
  private static final int FEWEST_SIZES = 4;

  private ExchangedSizes() {}

  /** For each such pair the place of its second size. */
  static List<Integer> of(PieceRun draft) {
    List<double[]> lengths = new ArrayList<>();
    for (Edge first : draft.pieces().get(0).edges()) {
      double[] values =
          draft.pieces().stream()
              .flatMap(piece -> piece.edge(first.name()).stream())
              .mapToDouble(edge -> edge.path().length())
              .toArray();
      if (values.length == draft.pieces().size()) {
        lengths.add(values);
      }
    }
    List<Integer> exchanged = new ArrayList<>();
    for (int i = 1; i < draft.pieces().size(); i++) {
      if (isExchanged(lengths, i)) {
        exchanged.add(i);
      }
    }
    return exchanged;
  }

  private static boolean isExchanged(List<double[]> lengths, int at) {
    int moved = 0;
    double gone = 0;
    int last = lengths.isEmpty() ? 0 : lengths.get(0).length - 1;
    boolean atEnd = at == 1 || at == last;
    for (double[] values : lengths) {
      double back = values[at] - values[at - 1];
      double trend = values[values.length - 1] - values[0];
      if (Math.abs(back) > STEP && values.length > FEWEST_SIZES) {
        double[] right = values.clone();
        right[at] = values[at - 1];
        right[at - 1] = values[at];
        double grown = atEnd ? right[right.length - 1] - right[0] : trend;
        if (back * grown > 0) {
          return false;
        }
        moved++;
        gone += Stray.bends(values) - Stray.bends(right);
      }
    }
    return moved > 0 && gone >= (atEnd ? BENDS_GONE_AT_END : BENDS_GONE) * moved;
  }
}
