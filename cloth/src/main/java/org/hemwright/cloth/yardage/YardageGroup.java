package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;

/**
 * Neighbouring sizes that buy the same, whatever the width, with their best folds.
 *
 * @param view the garment
 * @param fabric the cloth
 * @param nap whether it is laid for cloth with a nap
 * @param sizes at least one, in order
 * @param widths as sold (mm), rising
 * @param best for each width, for each size, the best row; absent where nothing fits
 */
public record YardageGroup(
    View view,
    Fabric fabric,
    Fabric.Nap nap,
    List<Size> sizes,
    List<Double> widths,
    List<List<Optional<YardageRow>>> best) {
  public YardageGroup {
    sizes = List.copyOf(sizes);
    widths = List.copyOf(widths);
    best = best.stream().map(List::copyOf).toList();
  }

  /** What to buy in a width, by its place; absent where these sizes do not fit it. */
  public Optional<BuyingLength> buy(int width) {
    return best.get(width).get(0).flatMap(YardageRow::need).map(Need::buy);
  }

  /** What the rows of a table belong to: a view, a fabric and its nap. */
  public record Heading(View view, Fabric fabric, Fabric.Nap nap) {}

  /** The groups of a table, under their headings, in its order. */
  public static Map<Heading, List<YardageGroup>> of(YardageTable table) {
    Map<Heading, List<YardageRow>> byHeading = new LinkedHashMap<>();
    for (YardageRow row : table.rows()) {
      byHeading
          .computeIfAbsent(
              new Heading(row.view(), row.fabric(), row.nap()), unused -> new ArrayList<>())
          .add(row);
    }
    Map<Heading, List<YardageGroup>> groups = new LinkedHashMap<>();
    byHeading.forEach((heading, rows) -> groups.put(heading, groups(heading, rows)));
    return groups;
  }

  private static List<YardageGroup> groups(Heading heading, List<YardageRow> rows) {
    List<Double> widths = rows.stream().map(YardageRow::width).distinct().sorted().toList();
    List<Size> sizes = rows.stream().map(YardageRow::size).distinct().sorted().toList();
    List<YardageGroup> groups = new ArrayList<>();
    for (int first = 0; first < sizes.size(); ) {
      int last = first;
      while (last + 1 < sizes.size()
          && buys(rows, widths, sizes.get(last + 1)).equals(buys(rows, widths, sizes.get(first)))) {
        last++;
      }
      List<Size> own = sizes.subList(first, last + 1);
      groups.add(
          new YardageGroup(
              heading.view(),
              heading.fabric(),
              heading.nap(),
              own,
              widths,
              widths.stream()
                  .map(width -> own.stream().map(size -> best(rows, width, size)).toList())
                  .toList()));
      first = last + 1;
    }
    return groups;
  }

  private static List<Optional<BuyingLength>> buys(
      List<YardageRow> rows, List<Double> widths, Size size) {
    return widths.stream()
        .map(width -> best(rows, width, size).flatMap(YardageRow::need).map(Need::buy))
        .toList();
  }

  private static Optional<YardageRow> best(List<YardageRow> rows, double width, Size size) {
    return rows.stream()
        .filter(row -> row.best() && row.width() == width && row.size().equals(size))
        .findFirst();
  }
}
