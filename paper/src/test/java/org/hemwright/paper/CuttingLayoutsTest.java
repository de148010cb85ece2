package org.hemwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.LayingStore;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.geometry.Box;
import org.hemwright.paper.cutting.LayingPrint;
import org.hemwright.paper.cutting.LayingSheets;
import org.hemwright.paper.cutting.LayingWords;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.type.HouseType;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.piece.PieceCard;
import org.junit.jupiter.api.Test;

/** What a person needs to see on a cutting layout, on every layout of a skirt. */
class CuttingLayoutsTest {
  private static final SizeRun RUN = SandlingSkirt.run();
  private static final YardageTable TABLE = table(EnumSet.allOf(Fold.class));

  private static YardageTable table(Set<Fold> folds) {
    YardageRequest quick = YardageRequest.everything().inFolds(folds).working(3_000);
    return YardageTable.of(RUN, quick, LayingStore.NONE, YardageTable.Watcher.SILENT);
  }

  private static List<Words> words(Sheet sheet) {
    List<Words> words = new ArrayList<>();
    sheet
        .inked()
        .forEach(
            item -> {
              if (item instanceof Words each) {
                words.add(each);
              }
            });
    return words;
  }

  @Test
  void nothingIsCutOffAndNoWordsLieOnOthers() {
    for (YardageRow row : TABLE.rows()) {
      if (row.fits()) {
        Sheet sheet = LayingSheets.single(RUN, row);
        for (Item item : sheet.items()) {
          Box box = item.bounds();
          assertThat(sheet.frame().grown(0.5).contains(box.centre())).isTrue();
          assertThat(sheet.frame().union(box)).as(row.toString()).isEqualTo(sheet.frame());
        }
        assertApart(words(sheet), row.toString());
      }
    }
  }

  @Test
  void onPagesToo() {
    List<YardageRow> rows = TABLE.rows().stream().filter(YardageRow::fits).toList();
    List<Sheet> pages = LayingSheets.pages(RUN, rows, Optional.empty(), HouseType.OURS);
    assertThat(pages).hasSizeGreaterThan(1);
    for (Sheet page : pages) {
      assertApart(words(page), "a page");
      for (Item item : page.items()) {
        assertThat(page.frame().union(item.bounds())).isEqualTo(page.frame());
      }
    }
  }

  /** Handbook section 6 asks for a large-print version; its tables are set in 16 pt. */
  @Test
  void inLargePrintWordsAreLargeAndAPageOfA4OrLetterHoldsTheLayout() {
    double times = LayingPrint.LARGE.enlarged();
    LayingWords english = LayingWords.english(RUN);
    List<YardageRow> rows = TABLE.rows().stream().filter(YardageRow::fits).toList();
    List<Sheet> sheets =
        new ArrayList<>(List.of(LayingSheets.key(rows, english, LayingPrint.LARGE)));
    rows.forEach(row -> sheets.add(LayingSheets.withoutKey(RUN, row, english, LayingPrint.LARGE)));
    for (Sheet sheet : sheets) {
      assertApart(words(sheet), "large print");
      assertThat(words(sheet)).allMatch(each -> each.line().points() * times >= 16);
      for (Item item : sheet.items()) {
        assertThat(sheet.frame().union(item.bounds())).isEqualTo(sheet.frame());
      }
      // 8 1/2 by 11 in without its margins of 23 mm, and of 17 and 19 mm
      assertThat(sheet.frame().width() * times).isLessThan(215.9 - 2 * 23);
      assertThat(sheet.frame().height() * times).isLessThan(279.4 - 17 - 19);
    }
    YardageRow first = rows.get(0);
    assertThat(words(LayingSheets.withoutKey(RUN, first, english, LayingPrint.USUAL)))
        .anyMatch(each -> each.line().points() < 16 / times + 0.1);
  }

  /** A key in another language has longer words. */
  @Test
  void whatAKeySaysAtLengthIsBrokenIntoLines() {
    LayingWords english = LayingWords.english(RUN);
    LayingWords wordy =
        new LayingWords() {
          @Override
          public String sign(Sign sign) {
            return english.sign(sign) + " and so on, at greater length than there is room for";
          }

          @Override
          public String piece(PieceCard card) {
            return card.title();
          }

          @Override
          public String title(YardageRow row) {
            return english.title(row);
          }

          @Override
          public String facts(YardageRow row, boolean named) {
            return english.facts(row, named);
          }

          @Override
          public Optional<String> stripes(YardageRow row) {
            return Optional.empty();
          }
        };
    List<YardageRow> rows = TABLE.rows().stream().filter(YardageRow::fits).toList();
    Sheet key = LayingSheets.key(rows, wordy, LayingPrint.LARGE);
    assertApart(words(key), "the key");
    for (Item item : key.items()) {
      assertThat(key.frame().union(item.bounds())).isEqualTo(key.frame());
    }
  }

  private static void assertApart(List<Words> words, String where) {
    for (int i = 0; i < words.size(); i++) {
      for (int k = i + 1; k < words.size(); k++) {
        boolean apart = !words.get(i).bounds().overlaps(words.get(k).bounds());
        assertThat(apart)
            .as(words.get(i).line().text() + " on " + words.get(k).line().text() + ", " + where)
            .isTrue();
      }
    }
  }

  @Test
  void everyPieceBearsItsNumberAndTheSizeAndWhatToBuyAreSaid() {
    for (YardageRow row : TABLE.rows()) {
      if (row.fits()) {
        Set<String> said = new TreeSet<>();
        words(LayingSheets.single(RUN, row)).forEach(each -> said.add(each.line().text()));
        row.need()
            .orElseThrow()
            .laying()
            .pieces()
            .forEach(
                laid ->
                    assertThat(said)
                        .contains(Integer.toString(laid.piece().piece().card().number())));
        assertThat(String.join(" ", said))
            .containsIgnoringCase("size " + row.size().name())
            .contains("buy")
            .contains(row.fold() == Fold.SINGLE ? "Selvedge" : "Fold");
      }
    }
  }

  @Test
  void filesAreNamedApartAndComeOutTheSameAgain() {
    List<PrintedFile> files = CuttingLayouts.pages(RUN, TABLE);
    List<PrintedFile> pictures = CuttingLayouts.pictures(RUN, TABLE, Paper.PictureKind.SVG);
    assertThat(files).isEqualTo(CuttingLayouts.pages(RUN, TABLE));
    assertThat(pictures).isEqualTo(CuttingLayouts.pictures(RUN, TABLE, Paper.PictureKind.SVG));
    assertThat(pictures).extracting(PrintedFile::name).doesNotHaveDuplicates();
    assertThat(new String(pictures.get(0).bytes(), StandardCharsets.UTF_8)).startsWith("<?xml");
    assertThat(new String(files.get(0).bytes(), 0, 5, StandardCharsets.US_ASCII))
        .isEqualTo("%PDF-");
  }
}
