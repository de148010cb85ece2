package org.hemwright.cloth.yardage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import org.assertj.core.data.Offset;
import org.hemwright.cloth.SmallRun;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LayingRules;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.fabric.Fabric;
import org.junit.jupiter.api.Test;

/** Laws of the table, on a garment in six sizes and two views. */
class YardageTableTest {
  private static final SizeRun RUN = SmallRun.of(Fabric.Nap.EITHER_WAY, 1120.0, 1400.0, 1500.0);

  private static YardageRequest request(int threads, Double... widths) {
    return YardageRequest.everything().onWidths(List.of(widths)).working(5_000).onThreads(threads);
  }

  private static YardageTable table(YardageRequest request) {
    return YardageTable.of(RUN, request, LayingStore.NONE, YardageTable.Watcher.SILENT);
  }

  private static List<String> told(YardageTable table) {
    List<String> told = new ArrayList<>();
    for (YardageRow row : table.rows()) {
      told.add(
          key(row, row.width(), row.nap())
              + row.best()
              + row.need().map(need -> need.length() + " " + need.laying().pieces().toString()));
    }
    return told;
  }

  private static String key(YardageRow row, double width, Fabric.Nap nap) {
    return row.view().name() + " " + row.size().name() + " " + row.fold() + width + nap;
  }

  private static Optional<YardageRow> row(YardageTable table, String key) {
    return table.rows().stream()
        .filter(row -> key(row, row.width(), row.nap()).equals(key))
        .findFirst();
  }

  private static double length(YardageRow row) {
    return row.need().map(Need::length).orElse(Double.POSITIVE_INFINITY);
  }

  @Test
  void theTableIsTheSameOnOneThreadAndTwo() {
    assertThat(told(table(request(1)))).isEqualTo(told(table(request(2))));
  }

  @Test
  void neverMoreForWiderClothForFewerPiecesOrWithoutNap() {
    YardageTable table = table(request(2));
    assertThat(table.rows()).hasSizeGreaterThan(200);
    for (YardageRow row : table.rows()) {
      for (double wider : new double[] {1400, 1500}) {
        if (wider > row.width()) {
          row(table, key(row, wider, row.nap()))
              .ifPresent(
                  other -> assertThat(length(other)).isLessThanOrEqualTo(length(row) + 0.001));
        }
      }
      row(table, key(row, row.width(), Fabric.Nap.EITHER_WAY))
          .filter(other -> row.nap() == Fabric.Nap.ONE_WAY)
          .ifPresent(other -> assertThat(length(other)).isLessThanOrEqualTo(length(row) + 0.001));
      row(table, key(row, row.width(), row.nap()).replaceFirst("^A", "B"))
          .ifPresent(other -> assertThat(length(other)).isLessThanOrEqualTo(length(row) + 0.001));
    }
  }

  @Test
  void aWidthThatIsOnlyAskedAboutLiesBetweenItsNeighbours() {
    YardageTable sold = table(request(2));
    YardageTable asked = table(request(2, 1250.0, 1450.0));
    assertThat(asked.rows()).allMatch(row -> row.width() == 1250 || row.width() == 1450);
    for (YardageRow row : asked.rows()) {
      double narrower = row.width() == 1250 ? 1120 : 1400;
      double wider = row.width() == 1250 ? 1400 : 1500;
      row(sold, key(row, narrower, row.nap()))
          .ifPresent(other -> assertThat(length(row)).isLessThanOrEqualTo(length(other) + 0.001));
      row(sold, key(row, wider, row.nap()))
          .ifPresent(
              other -> assertThat(length(row)).isGreaterThanOrEqualTo(length(other) - 0.001));
    }
  }

  @Test
  void aFoldThatIsAskedForAloneNeedsWhatItNeedsAmongAllAndLaysNoOther() {
    YardageTable every = table(request(2, 1250.0));
    Set<Fold> shown = EnumSet.noneOf(Fold.class);
    for (Fold fold : Fold.values()) {
      YardageRequest asked = request(2, 1250.0).inFolds(Set.of(fold));
      YardageRequest laid = asked.inFoldsThatCount(RUN);
      assertThat(laid.folds())
          .isEqualTo(fold == Fold.SINGLE ? EnumSet.allOf(Fold.class) : Set.of(fold));
      YardageTable alone = table(laid).inFoldsOf(asked);
      assertThat(alone.rows()).allMatch(row -> row.fold() == fold);
      assertThat(told(alone)).isEqualTo(told(every.inFoldsOf(asked)));
      alone.rows().forEach(row -> shown.add(row.fold()));
    }
    assertThat(shown).contains(Fold.LENGTHWISE, Fold.CROSSWISE, Fold.SINGLE);
  }

  @Test
  void everyLayingKeepsTheRulesAndFitsItsLength() {
    for (YardageRow row : table(request(2)).rows()) {
      row.need()
          .ifPresent(
              need -> {
                List<ClothPiece> pieces =
                    need.laying().pieces().stream().map(laid -> laid.piece()).distinct().toList();
                assertThat(new LayingRules(pieces, row.nap()).objections(need.laying()))
                    .as(key(row, row.width(), row.nap()))
                    .isEmpty();
                assertThat(pieces)
                    .extracting(ClothPiece::name)
                    .containsExactlyInAnyOrderElementsOf(row.view().pieces());
                assertThat(need.density()).isBetween(0.1, 1.0);
              });
    }
  }

  @Test
  void theBestFoldComesFirstAndBuysLeast() {
    YardageRow best = null;
    for (YardageRow row : table(request(2)).rows()) {
      if (row.best()) {
        best = row;
      }
      assertThat(best).isNotNull();
      if (best != null && row.fits()) {
        assertThat(row.size()).isEqualTo(best.size());
        assertThat(best.need().orElseThrow().buy().tenths())
            .isLessThanOrEqualTo(row.need().orElseThrow().buy().tenths());
      }
    }
  }

  @Test
  void someSizesAloneComeOutAsAmongAll() {
    YardageRequest all = request(2);
    YardageRequest some = all.inSizes(List.of("12", "18"));
    List<String> alone = told(table(some));
    assertThat(alone).isNotEmpty();
    assertThat(told(table(all))).containsAll(alone);
  }

  @Test
  void clothThatShrinksIsBoughtLonger() {
    YardageRequest shrinking = request(2).inSizes(List.of("8")).shrinking(0.05);
    for (YardageRow row : table(shrinking).rows()) {
      row.need()
          .ifPresent(
              need ->
                  assertThat(need.bought()).isCloseTo(need.length() / 0.95, Offset.offset(1e-6)));
    }
  }

  @Test
  void whatIsKeptIsTakenAgainAndChangesNothing() {
    Map<String, String> kept = new ConcurrentHashMap<>();
    AtomicInteger laid = new AtomicInteger();
    LayingStore store =
        new LayingStore() {
          @Override
          public Optional<String> get(String key) {
            return Optional.ofNullable(kept.get(key));
          }

          @Override
          public void put(String key, String laying) {
            kept.put(key, laying);
            laid.incrementAndGet();
          }
        };
    YardageTable first = YardageTable.of(RUN, request(2), store, YardageTable.Watcher.SILENT);
    Map<String, String> whole = Map.copyOf(kept);
    int all = laid.getAndSet(0);
    assertThat(all).isGreaterThan(50);
    YardageTable again = YardageTable.of(RUN, request(2), store, YardageTable.Watcher.SILENT);
    assertThat(laid).hasValue(0);
    assertThat(told(again)).isEqualTo(told(first)).isEqualTo(told(table(request(1))));

    SizeRun changed = SmallRun.wider(Fabric.Nap.EITHER_WAY, 7, 1120.0, 1400.0, 1500.0);
    YardageTable.of(changed, request(2), store, YardageTable.Watcher.SILENT);
    assertThat(laid.get()).as("of one changed size").isPositive().isLessThan(all / 4);

    List<UnaryOperator<String>> damages =
        List.of(
            line -> line.substring(0, line.length() / 2),
            line -> line.replaceFirst("[.]0\\t", ".5\t"),
            line -> line.replaceFirst("\t(\\d+[.]\\d+)\t", "\t9$1\t"),
            line -> line.replaceFirst("[.]\\d+\t\\d+\t", ".0\t-1\t"),
            line -> line + "\tmore",
            line -> "",
            line -> whole.values().iterator().next());
    for (UnaryOperator<String> damage : damages) {
      kept.replaceAll((key, line) -> damage.apply(line));
      YardageTable broken = YardageTable.of(RUN, request(2), store, YardageTable.Watcher.SILENT);
      assertThat(told(broken)).isEqualTo(told(first));
      assertThat(kept.entrySet().containsAll(whole.entrySet())).as("mended").isTrue();
    }
  }
}
