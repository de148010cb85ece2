package org.hemwright.paper;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.paper.cutting.LayingSheets;
import org.hemwright.paper.pdf.PdfWriter;
import org.hemwright.paper.png.PngWriter;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.paper.type.HouseType;
import org.hemwright.paper.words.ClothWords;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.fabric.Fabric;

/**
 * The cutting layouts of a yardage table as files: of each view, fabric, width and size the best
 * fold. The same bytes for the same table on one installation.
 */
public final class CuttingLayouts {
  private static final double PIXELS_PER_MM = 8;

  private CuttingLayouts() {}

  /** A PDF file for each fabric and nap, all its layouts on pages for A4 and Letter. */
  public static List<PrintedFile> pages(SizeRun run, YardageTable table) {
    return pages(run, table, Optional.empty(), HouseType.OURS);
  }

  /**
   * The same in the fonts of a house.
   *
   * @param proof the word that marks each page as a proof, if anything does
   */
  public static List<PrintedFile> pages(
      SizeRun run, YardageTable table, Optional<String> proof, HouseType type) {
    Map<List<Object>, List<YardageRow>> byFabric = new LinkedHashMap<>();
    for (YardageRow row : drawn(table)) {
      byFabric
          .computeIfAbsent(List.of(row.fabric(), row.nap()), unused -> new ArrayList<>())
          .add(row);
    }
    FileNames names = new FileNames(run);
    List<PrintedFile> files = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    byFabric.forEach(
        (fabric, rows) -> {
          List<Sheet> sheets = LayingSheets.pages(run, rows, proof, type);
          byte[] bytes = PdfWriter.write(facts(run, "cutting layouts"), sheets);
          String own = free(fabric(rows.get(0)), taken);
          String name = names.file(Optional.empty(), "layouts-" + own, "pdf");
          files.add(new PrintedFile(name, "A4 or Letter", bytes, sheets.size(), List.of()));
        });
    return files;
  }

  /** A picture of each layout. */
  public static List<PrintedFile> pictures(
      SizeRun run, YardageTable table, Paper.PictureKind kind) {
    FileNames names = new FileNames(run);
    List<PrintedFile> files = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (YardageRow row : drawn(table)) {
      Sheet sheet = LayingSheets.single(run, row);
      String title = title(run, row);
      byte[] bytes =
          kind == Paper.PictureKind.PNG
              ? PngWriter.write(sheet, PIXELS_PER_MM)
              : SvgWriter.write(facts(run, title), sheet);
      files.add(
          new PrintedFile(
              "layouts/" + free(name(run, names, row), taken) + "." + kind.ending(),
              "",
              bytes,
              1,
              List.of()));
    }
    return files;
  }

  /** A name that no other file has: two widths may read alike, two fabrics differ by case only. */
  private static String free(String name, Set<String> taken) {
    String free = name;
    for (int i = 2; !taken.add(free); i++) {
      free = name + "-" + i;
    }
    return free;
  }

  private static List<YardageRow> drawn(YardageTable table) {
    return table.rows().stream().filter(row -> row.best() && row.fits()).toList();
  }

  private static String fabric(YardageRow row) {
    boolean other = row.nap() != row.fabric().laidWith();
    String name = row.fabric().name().toLowerCase(Locale.ROOT);
    return other ? name + "-with-nap" : name;
  }

  private static String name(SizeRun run, FileNames names, YardageRow row) {
    String view =
        run.pattern().views().size() > 1 ? FileNames.slug("view " + row.view().name()) + "-" : "";
    return view
        + FileNames.slug(fabric(row))
        + "-"
        + names.group(List.of(row.size().name()))
        + "-"
        + FileNames.slug(new ClothWords(run, false).length(row.width()).replace("/", " "));
  }

  /** What a layout shows, for who cannot see it: "View B, size 14, 150 cm wide". */
  private static String title(SizeRun run, YardageRow row) {
    ClothWords words = new ClothWords(run, false);
    String nap = row.nap() == Fabric.Nap.ONE_WAY ? ", with nap" : "";
    return "cutting layout, view "
        + row.view().name()
        + ", size "
        + row.size().name()
        + ", "
        + row.fabric().title()
        + " "
        + words.length(row.width())
        + " wide, "
        + ClothWords.fold(row.fold())
        + nap;
  }

  private static DocumentFacts facts(SizeRun run, String what) {
    Details details = run.pattern().details();
    return new DocumentFacts(
        details.title() + ", version " + details.version() + ", " + what,
        details.by(),
        "How the pieces of a sewing pattern by " + details.by() + " are laid on the cloth.",
        Speech.of(run).language(),
        details.dated(),
        List.of());
  }
}
