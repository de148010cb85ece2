package org.hemwright.pattern.body;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.quantity.QuantityKind;

/**
 * Body measurements by size, as read from the designer's chart.
 *
 * @param file the chart's name, such as {@code sizes.csv}
 * @param sizes in the chart's order, at least one, names all different
 * @param columns the measurements, names all different
 */
public record SizeChart(String file, List<Size> sizes, List<Column> columns) {
  public SizeChart {
    sizes = List.copyOf(sizes);
    columns = List.copyOf(columns);
    if (sizes.isEmpty()) {
      throw new IllegalArgumentException("a chart has at least one size");
    }
    int rows = sizes.size();
    for (int i = 0; i < rows; i++) {
      if (sizes.get(i).position() != i) {
        throw new IllegalArgumentException("sizes stand in the order of their positions");
      }
    }
    for (Column column : columns) {
      if (column.cells().size() != rows) {
        throw new IllegalArgumentException(column.name() + " has a cell for each size");
      }
    }
  }

  /**
   * One measurement over all sizes.
   *
   * @param name as the document writes it: lower case, {@code _} for blanks, no unit
   * @param heading as the chart writes it, such as {@code Hip (cm)}
   * @param kind a length, unless the heading says otherwise
   * @param cells one for each size, in order
   * @param origin where the heading stands
   */
  public record Column(
      String name, String heading, QuantityKind kind, List<Cell> cells, Origin origin) {
    public Column {
      cells = List.copyOf(cells);
    }
  }

  /**
   * One cell.
   *
   * @param value in millimetres (radians, plain) or absent where the cell is blank or unreadable
   * @param origin where the cell stands
   */
  public record Cell(OptionalDouble value, Origin origin) {}

  /** The size of that name. */
  public Optional<Size> size(String name) {
    return sizes.stream().filter(size -> size.name().equals(name)).findFirst();
  }

  /** The measurement of that name. */
  public Optional<Column> column(String name) {
    return columns.stream().filter(column -> column.name().equals(name)).findFirst();
  }
}
