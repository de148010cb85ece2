package org.hemwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.hemwright.cloth.rule.ClothItem;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.LayingStore;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Point;
import org.hemwright.paper.cutting.LayingSheets;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.type.HouseType;
import org.hemwright.pattern.SizeRun;
import org.hemwright.workbench.folder.DiskFolder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Layouts that a person can read, in every fold and on cloth so wide that the pieces come out small
 * (common practice, no source): each piece has its number, clear of every cut line; where it stands
 * beside the piece, a line leads to a dot on it.
 */
class DrawnLayingsTest {
  private static final double CUT_LINE = 0.4;
  private static final double LEADER = 0.25;
  private static final double BRACKET = 0.35;

  /** A piece on the fold that is slimmer (mm) may have no room for a bracket on a layout. */
  private static final double SLIM = 100;

  /** White between the ink of a number and the ink of a cut line (mm). */
  private static final double WHITE = 0.45;

  private static final Map<String, SizeRun> RUNS = new TreeMap<>();

  private static SizeRun run(String example) throws IOException {
    SizeRun known = RUNS.get(example);
    if (known == null) {
      known =
          Workbench.evaluate(new DiskFolder(Path.of("..", "examples", example)))
              .run()
              .orElseThrow();
      RUNS.put(example, known);
    }
    return known;
  }

  private static List<YardageRow> rows(SizeRun run, String size, List<Double> widths) {
    YardageRequest quick =
        YardageRequest.everything()
            .ofFabrics(List.of("main"))
            .onWidths(widths)
            .inSizes(List.of(size))
            .working(4_000)
            .onThreads(1);
    return YardageTable.of(run, quick, LayingStore.NONE, YardageTable.Watcher.SILENT)
        .rows()
        .stream()
        .filter(YardageRow::fits)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "shingle-shirt, 82",
    "shingle-shirt, 162",
    "inlet-tee, 00",
    "eddy-skirt, 42",
    "marram-trousers, 2",
    "brackish-skirt, 0P"
  })
  void numbersAreClearOfCutLinesAndLeadToTheirPieces(String example, String size)
      throws IOException {
    SizeRun run = run(example);
    List<YardageRow> rows = new ArrayList<>(rows(run, size, List.of()));
    rows.addAll(rows(run, size, List.of(3_000.0)));
    assertThat(rows.stream().map(YardageRow::fold).distinct().count()).isGreaterThan(1);
    for (YardageRow row : rows) {
      assertReadable(LayingSheets.single(run, row), row);
    }
    for (YardageRow row : rows) {
      LayingSheets.pages(run, List.of(row), Optional.empty(), HouseType.OURS)
          .forEach(page -> assertReadable(page, row));
    }
  }

  private static void assertReadable(Sheet sheet, YardageRow row) {
    List<Inked> inked = sheet.inked();
    List<Stroke> cuts = new ArrayList<>();
    List<Words> numbers = new ArrayList<>();
    for (Inked each : inked) {
      if (each instanceof Stroke stroke
          && stroke.pen().width() == CUT_LINE
          && stroke.subject().piece().isPresent()) {
        cuts.add(stroke);
      }
      if (each instanceof Words words && words.subject().piece().isPresent()) {
        numbers.add(words);
      }
    }
    ClothLaying laying = row.need().orElseThrow().laying();
    assertThat(numbers).as(row.toString()).hasSameSizeAs(laying.pieces());
    for (Words number : numbers) {
      Box ink = ink(number).grown(WHITE + CUT_LINE / 2);
      for (Stroke cut : cuts) {
        assertThat(meets(cut, ink))
            .as("%s at %s, %s", number.line().text(), number.at(), row)
            .isFalse();
      }
      assertThat(isInside(number, inked) || isLed(number, inked))
          .as("%s at %s has a leader, %s", number.line().text(), number.at(), row)
          .isTrue();
    }
  }

  /** The box of the capitals, upright or lying. */
  private static Box ink(Words words) {
    double wide = words.line().width();
    double high = words.line().capitalHeight();
    Point at = words.at();
    return words.angle() == 0
        ? Box.of(at, new Point(at.x() + wide, at.y() + high))
        : Box.of(at, new Point(at.x() - high, at.y() + wide));
  }

  /** Whether a line of straight parts comes into a box, looked at every tenth of a millimetre. */
  private static boolean meets(Stroke cut, Box box) {
    if (!cut.bounds().overlaps(box)) {
      return false;
    }
    for (Curve curve : cut.path().curves()) {
      double far = curve.start().distanceTo(curve.end());
      int steps = 1 + (int) (far * 10);
      for (int i = 0; i <= steps; i++) {
        if (box.contains(curve.start().toward(curve.end(), (double) i / steps))) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean isInside(Words number, List<Inked> inked) {
    return inked.stream()
        .anyMatch(
            each ->
                each instanceof Fill fill
                    && fill.subject().equals(number.subject())
                    && holds(fill, ink(number).centre()));
  }

  /** Whether a point lies on a piece, which is larger than the dot of a leader. */
  private static boolean holds(Fill fill, Point point) {
    Box bounds = fill.bounds();
    return Math.max(bounds.width(), bounds.height()) > 2 && fill.outline().contains(point);
  }

  /** Whether a line runs from beside it to a point on its piece. */
  private static boolean isLed(Words number, List<Inked> inked) {
    Box near = ink(number).grown(1);
    return inked.stream()
        .anyMatch(
            each ->
                each instanceof Stroke stroke
                    && stroke.pen().width() == LEADER
                    && stroke.subject().equals(number.subject())
                    && near.contains(stroke.path().end())
                    && inked.stream()
                        .anyMatch(
                            other ->
                                other instanceof Fill fill
                                    && fill.subject().equals(number.subject())
                                    && holds(fill, stroke.path().start())));
  }

  @ParameterizedTest
  @CsvSource({"shingle-shirt, 118", "marram-trousers, 20", "eddy-skirt, 4"})
  void whatAFoldLeavesOpenIsSaid(String example, String size) throws IOException {
    SizeRun run = run(example);
    for (YardageRow row : rows(run, size, List.of())) {
      TreeSet<String> said = new TreeSet<>();
      for (Inked each : LayingSheets.single(run, row).inked()) {
        if (each instanceof Words words) {
          said.add(words.line().text());
        }
      }
      ClothLaying laying = row.need().orElseThrow().laying();
      boolean opened = laying.pieces().stream().anyMatch(LaidPiece::open);
      boolean deep = row.fold() == Fold.PARTIAL || (row.fold() == Fold.CROSSWISE && opened);
      String all = String.join(" ", said);
      assertThat(all.contains(" deep")).as(row.toString()).isEqualTo(deep);
      assertThat(all)
          .contains(row.fold() == Fold.SINGLE ? "right side up" : "right sides together");
      boolean turnedOver =
          laying.pieces().stream()
              .anyMatch(
                  laid ->
                      laid.piece().onFold() && laid.item().layers() != ClothItem.Layers.ON_FOLD);
      assertThat(all.contains("other half")).as(row.toString()).isEqualTo(turnedOver);
    }
  }

  /**
   * A piece on the fold bears the bracket of its printed pattern, its feet at the fold; one that
   * only lies beside the fold, as half of a pair, bears none (handbook section 6, "fold bracket").
   */
  @ParameterizedTest
  @CsvSource({"eddy-skirt, 16", "brackish-skirt, 0P", "shingle-shirt, 118", "inlet-tee, 00"})
  void piecesOnAFoldAreToldFromThoseBesideIt(String example, String size) throws IOException {
    SizeRun run = run(example);
    for (YardageRow row : rows(run, size, List.of())) {
      ClothLaying laying = row.need().orElseThrow().laying();
      List<LaidPiece> onFold =
          laying.pieces().stream()
              .filter(laid -> laid.item().layers() == ClothItem.Layers.ON_FOLD)
              .toList();
      List<Inked> inked = LayingSheets.single(run, row).inked();
      List<Stroke> brackets =
          inked.stream()
              .filter(Stroke.class::isInstance)
              .map(Stroke.class::cast)
              .filter(stroke -> stroke.pen().width() == BRACKET)
              .filter(stroke -> stroke.path().curves().size() == 3)
              .filter(stroke -> stroke.subject().piece().isPresent())
              .toList();
      List<String> marked =
          brackets.stream().map(each -> each.subject().piece().orElseThrow()).toList();
      String what = row.size().name() + " " + row.width() + " " + row.fold();
      assertThat(names(onFold, 0)).as(what).containsAll(marked);
      assertThat(marked).as(what).containsAll(names(onFold, SLIM));
      assertThat(marked.size()).isBetween(names(onFold, SLIM).size(), onFold.size());
      for (Inked each : inked) {
        if (each instanceof Words words && words.subject().piece().isPresent()) {
          assertThat(brackets).noneMatch(bracket -> bracket.bounds().overlaps(ink(words)));
        }
      }
    }
  }

  /** The pieces that reach so far from their fold (mm). */
  private static List<String> names(List<LaidPiece> onFold, double reach) {
    return onFold.stream()
        .map(LaidPiece::piece)
        .filter(piece -> piece.half().high() >= reach)
        .map(ClothPiece::name)
        .toList();
  }
}
