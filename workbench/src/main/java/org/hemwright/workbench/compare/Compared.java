package org.hemwright.workbench.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.paper.PaperOptions;
import org.hemwright.paper.overlay.Overlay;
import org.hemwright.paper.png.PngWriter;
import org.hemwright.paper.reprint.Reprint;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.compare.Change;
import org.hemwright.pattern.compare.Changed;
import org.hemwright.pattern.compare.Comparison;
import org.hemwright.pattern.compare.PieceMatch;

/**
 * Two versions of a pattern side by side.
 *
 * @param old what it was
 * @param now what it is
 * @param comparison what changed
 * @param reprints for each print file the pages to print again; none where nothing that is printed
 *     changed
 */
public record Compared(SizeRun old, SizeRun now, Comparison comparison, List<Reprint> reprints) {
  /** What pages do not show, or do not compare by. */
  private static final Set<Changed> NOT_ON_PAGES = EnumSet.of(Changed.VERSION, Changed.DATED);

  static {
    NOT_ON_PAGES.addAll(EnumSet.range(Changed.NEEDLE, Changed.NOTION_TAPE));
  }

  private static final double MOST_PIXELS = 1400;

  public Compared {
    reprints = List.copyOf(reprints);
  }

  /**
   * Compares.
   *
   * @param options for which papers pages are compared
   */
  public static Compared of(SizeRun old, SizeRun now, PaperOptions options) {
    Comparison comparison = Comparison.of(old, now);
    boolean printed =
        comparison.changes().stream().anyMatch(change -> !NOT_ON_PAGES.contains(change.changed()));
    return new Compared(old, now, comparison, printed ? Reprint.of(old, now, options) : List.of());
  }

  /** One picture file. */
  @SuppressWarnings("ArrayRecordComponent")
  public record Picture(String name, byte[] bytes) {}

  /**
   * A drawing of each piece whose lines changed, old against new, in the size in which it changed
   * most; each as SVG and as PNG.
   */
  public List<Picture> pictures() {
    List<Picture> pictures = new ArrayList<>();
    for (PieceMatch match : comparison.pieces()) {
      Optional<Worst> worst = worst(match);
      if (worst.isPresent()) {
        draw(match, worst.get(), pictures);
      }
    }
    return pictures;
  }

  private record Worst(String size, Change.Values values) {}

  /** The size in which the cut line moved most; where it moved in none, in which anything did. */
  private static Optional<Worst> worst(PieceMatch match) {
    List<Worst> cut = new ArrayList<>();
    List<Worst> other = new ArrayList<>();
    for (Change change : match.changes()) {
      for (Map.Entry<String, Change.Values> each : change.values().entrySet()) {
        (change.changed() == Changed.CUT_LINE ? cut : other)
            .add(new Worst(each.getKey(), each.getValue()));
      }
    }
    return (cut.isEmpty() ? other : cut)
        .stream().max(Comparator.comparingDouble(each -> each.values.apart()));
  }

  private void draw(PieceMatch match, Worst worst, List<Picture> pictures) {
    PieceMatch.Both both = match.sizes().get(worst.size);
    if (both == null) {
      return;
    }
    String title = both.now().card().title() + ", size " + worst.size;
    Optional<Overlay.Apart> apart =
        worst.values.at().map(at -> new Overlay.Apart(at, worst.values.apart()));
    Optional<Sheet> sheet =
        Overlay.of(
            both,
            title,
            line(old, "was"),
            line(now, "is"),
            apart,
            now.pattern().details().lengths());
    if (sheet.isPresent()) {
      String name = "compare-" + slug(match.name()) + "-size-" + slug(worst.size);
      Details details = now.pattern().details();
      DocumentFacts facts =
          new DocumentFacts(
              title,
              details.by(),
              title + ", old line against new.",
              "en",
              details.dated(),
              List.of());
      pictures.add(new Picture(name + ".svg", SvgWriter.write(facts, sheet.get())));
      double longest = Math.max(sheet.get().frame().width(), sheet.get().frame().height());
      pictures.add(new Picture(name + ".png", PngWriter.write(sheet.get(), MOST_PIXELS / longest)));
    }
  }

  private String line(SizeRun run, String which) {
    boolean alike = old.pattern().details().version().equals(now.pattern().details().version());
    String version = "Version " + run.pattern().details().version();
    return alike ? version + ", as it " + which : version;
  }

  private static String slug(String text) {
    return text.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }
}
