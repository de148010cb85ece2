package org.hemwright.cloth.byhand;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.Need;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.pattern.fabric.Fabric;

/**
 * Hands the designer's layings on to where they hold as well and are shorter: to wider cloth, from
 * a napped cloth to one without, from folded to single cloth. So wider cloth never needs more,
 * whoever laid it. Rows that she laid by hand herself stay as she laid them.
 */
final class HandedOn {
  private final List<YardageRow> rows;
  private final List<OwnLaying> layings;

  private HandedOn(List<YardageRow> rows, List<OwnLaying> layings) {
    this.rows = new ArrayList<>(rows);
    this.layings = layings;
  }

  /**
   * Rows of which some take a laying of another.
   *
   * @param rows those that she laid by hand already with her layings
   */
  static List<YardageRow> of(List<YardageRow> rows, List<OwnLaying> layings) {
    HandedOn handed = new HandedOn(rows, layings);
    for (YardageRow from : rows) {
      if (handed.isOwn(from)) {
        handed.handOn(from);
      }
    }
    return handed.rows;
  }

  /** Whether a row shows a laying of hers. */
  private boolean isOwn(YardageRow row) {
    return row.fits()
        && layings.stream()
            .filter(own -> own.cloth().equals(OwnLaying.OfCloth.of(row)))
            .anyMatch(own -> own.places().equals(OwnLaying.places(laying(row))));
  }

  private static ClothLaying laying(YardageRow row) {
    return row.need().orElseThrow().laying();
  }

  private void handOn(YardageRow from) {
    List<YardageRow> others = rows.stream().filter(to -> holds(from, to) && !isOwn(to)).toList();
    for (YardageRow to : others) {
      int at = rows.indexOf(to);
      if (at >= 0) {
        ClothLaying laying = laying(from);
        if (to.width() > from.width()) {
          laying = laying.onWider(to.width());
        }
        if (to.fold() != from.fold()) {
          laying = laying.unfolded();
        }
        boolean shorter = laying.length() < laying(to).length();
        if (shorter && OwnLayings.objections(to, laying).isEmpty()) {
          rows.set(at, to.with(new Need(laying, laying.length(), laying.length())));
          buyLeastFirst(at);
        }
      }
    }
  }

  private static boolean holds(YardageRow from, YardageRow to) {
    return to.fits()
        && from.view().equals(to.view())
        && from.fabric().equals(to.fabric())
        && from.size().equals(to.size())
        && from.variant().equals(to.variant())
        && (from.nap() == to.nap() || from.nap() == Fabric.Nap.ONE_WAY)
        && (from.fold() == to.fold() || to.fold() == Fold.SINGLE)
        && from.width() <= to.width()
        && !OwnLaying.OfCloth.of(from).equals(OwnLaying.OfCloth.of(to));
  }

  /** The rows of a cloth anew in order, unless she chose which of them is drawn. */
  private void buyLeastFirst(int at) {
    int first = at;
    while (first > 0 && OwnLayings.isOfOneCloth(rows.get(first - 1), rows.get(at))) {
      first--;
    }
    int last = at + 1;
    while (last < rows.size() && OwnLayings.isOfOneCloth(rows.get(last), rows.get(at))) {
      last++;
    }
    List<YardageRow> folds = rows.subList(first, last);
    if (folds.stream().noneMatch(this::isOwn)) {
      List<YardageRow> ordered = YardageTable.bestFirst(List.copyOf(folds));
      for (int i = 0; i < ordered.size(); i++) {
        folds.set(i, ordered.get(i));
      }
    }
  }
}
