package org.hemwright.booklet.prose;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Node;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Inline;

/** Reads the designer's own tables. */
record TableReader(InlineReader inlines) {
  List<Block> read(TableBlock table) {
    List<List<Inline>> head = new ArrayList<>();
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
      for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
        if (row instanceof TableRow) {
          List<List<Inline>> cells = new ArrayList<>();
          for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
            cells.add(inlines.read(cell));
          }
          if (part instanceof TableHead) {
            head.addAll(cells);
          } else {
            rows.add(fitted(cells, head.size()));
          }
        }
      }
    }
    return List.of(new Block.Table(List.of(), head, rows));
  }

  private static List<List<Inline>> fitted(List<List<Inline>> cells, int wide) {
    List<List<Inline>> fitted = new ArrayList<>(cells.subList(0, Math.min(wide, cells.size())));
    while (fitted.size() < wide) {
      fitted.add(List.of());
    }
    return fitted;
  }
}
