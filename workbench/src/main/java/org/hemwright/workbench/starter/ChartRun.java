package org.hemwright.workbench.starter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A size run of our own that a starter may be drafted for; {@code docs/charts.md} says how each was
 * made and whom it fits.
 *
 * @param name {@code men}
 * @param words whom it fits, in one line
 */
public record ChartRun(String name, String words) {
  /** The run that the starters are drafted for. */
  public static final ChartRun WOMEN = new ChartRun("women", "Women, bust 80 to 116 cm");

  private static final List<ChartRun> ALL =
      List.of(
          WOMEN,
          new ChartRun("plus", "Women of larger sizes, bust 110 to 158 cm"),
          new ChartRun("men", "Men, chest 88 to 124 cm"),
          new ChartRun("children", "Children by height, 92 to 152 cm"));

  /** Every run. */
  public static List<ChartRun> all() {
    return ALL;
  }

  /** The one of a name. */
  public static Optional<ChartRun> named(String name) {
    return ALL.stream().filter(run -> run.name.equals(name)).findFirst();
  }

  /** Whether it calls the girth round the chest a bust. */
  boolean hasBust() {
    return rows().get(0).contains("bust (cm)");
  }

  /** The whole run, as {@code docs/charts/runs.py} makes it. */
  public String csv() {
    String resource = "/org/hemwright/charts/%s.csv".formatted(name);
    try (InputStream stream = ChartRun.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException(resource + " is not packed in the program");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException("the program's own files cannot be read", broken);
    }
  }

  /** Headings and sizes, cell by cell. */
  private List<List<String>> rows() {
    return csv().lines().filter(line -> !line.startsWith("#")).map(ChartRun::cells).toList();
  }

  private static List<String> cells(String line) {
    return List.of(line.split(",", -1));
  }

  /**
   * The measurements that a garment needs, as a chart of its folder.
   *
   * @param title its first line
   * @param headings of the measurements, in order; a bust is a chest where the run calls it so
   * @throws IllegalArgumentException where the run lacks one
   */
  String csv(String title, List<String> headings) {
    List<List<String>> rows = rows();
    List<Integer> columns = new ArrayList<>(List.of(0));
    for (String heading : headings) {
      String own = hasBust() ? heading : heading.replace("bust (", "chest (");
      int column = rows.get(0).indexOf(own);
      if (column < 0) {
        throw new IllegalArgumentException("the run " + name + " lacks " + own);
      }
      columns.add(column);
    }
    StringBuilder text = new StringBuilder("# ").append(title).append('\n');
    text.append("# Our own run, drawn up for the starters: see docs/charts.md. ");
    text.append("Measure the people you draft for.\n");
    for (List<String> row : rows) {
      text.append(String.join(",", columns.stream().map(row::get).toList())).append('\n');
    }
    return text.toString();
  }
}
