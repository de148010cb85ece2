package org.hemwright.cloth.byhand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.hemwright.cloth.SmallRun;
import org.hemwright.cloth.rule.ClothItem;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.yardage.FurtherSearch;
import org.hemwright.cloth.yardage.LayingFollower;
import org.hemwright.cloth.yardage.LayingStore;
import org.hemwright.cloth.yardage.YardageRequest;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.fabric.Fabric;
import org.junit.jupiter.api.Test;

/** Layings by hand, held against the rules that every laying is held against. */
class OwnLayingsTest {
  private static final SizeRun RUN = SmallRun.of(Fabric.Nap.EITHER_WAY, 1400.0);
  private static final YardageTable TABLE = table(RUN, 3_000);

  /** One size in every fold. */
  private static YardageTable table(SizeRun run, long work) {
    return YardageTable.of(
        run,
        YardageRequest.everything()
            .inSizes(List.of(run.sizes().get(2).size().name()))
            .working(work),
        LayingStore.NONE,
        YardageTable.Watcher.SILENT);
  }

  private static List<YardageRow> fitting() {
    return TABLE.rows().stream().filter(YardageRow::fits).toList();
  }

  private static ClothLaying laying(YardageRow row) {
    return row.need().orElseThrow().laying();
  }

  @Test
  void aLayingReadBackFromItsTableIsAsLongAsItWasAndWithinTheRules() {
    OwnLayings own = OwnLayings.NONE;
    for (YardageRow row : fitting()) {
      own = own.with(new OwnLaying(OwnLaying.OfCloth.of(row), OwnLaying.places(laying(row))));
    }
    OwnLayings read = OwnLayings.read(own.text());
    assertThat(read).isEqualTo(own);
    YardageTable applied = read.applied(TABLE);
    assertThat(applied.findings()).isEmpty();
    assertThat(applied.rows()).hasSameSizeAs(TABLE.rows());
    for (YardageRow row : applied.rows()) {
      TABLE.rows().stream()
          .filter(was -> OwnLaying.OfCloth.of(was).equals(OwnLaying.OfCloth.of(row)))
          .filter(YardageRow::fits)
          .forEach(
              was ->
                  assertThat(laying(row).length())
                      .isCloseTo(laying(was).length(), org.assertj.core.data.Offset.offset(0.02)));
    }
  }

  /** On stripes a piece that is put beside its bar goes to the nearest place on one. */
  @Test
  void onStripesAPieceMovesByWholeRepeats() {
    Fabric.Repeat checks =
        new Fabric.Repeat(OptionalDouble.of(60), OptionalDouble.of(50), List.of("cap", "hem"));
    YardageTable table = table(SmallRun.striped(checks, 1400.0), 3_000);
    SplittableRandom random = new SplittableRandom(11);
    int elsewhere = 0;
    for (YardageRow row : table.rows().stream().filter(YardageRow::fits).toList()) {
      HandMoves moves = new HandMoves(row);
      List<OwnPlace> places = OwnLaying.places(laying(row));
      for (int round = 0; round < 12; round++) {
        int at = random.nextInt(places.size());
        OwnPlace was = places.get(at);
        HandMoves.Moved moved =
            moves.move(
                places,
                at,
                was.along() + random.nextInt(400) - 100,
                was.across() + random.nextInt(300) - 150);
        places = moved.places();
        assertThat(OwnLayings.objections(row, moves.laying(places).orElseThrow())).isEmpty();
        OwnPlace now = places.get(at);
        if (item(row, was).piece().striped().isPresent() && !now.equals(was)) {
          elsewhere++;
          assertThat(beside(now.along() - was.along(), 60)).isLessThan(0.02);
          assertThat(beside(now.across() - was.across(), 50)).isLessThan(0.02);
        }
      }
    }
    assertThat(elsewhere).isGreaterThan(5);
  }

  private static ClothItem item(YardageRow row, OwnPlace place) {
    return laying(row).pieces().stream()
        .map(LaidPiece::item)
        .filter(item -> item.id().equals(place.item()))
        .findFirst()
        .orElseThrow();
  }

  private static double beside(double apart, double repeat) {
    return Math.abs(apart / repeat - Math.rint(apart / repeat)) * repeat;
  }

  @Test
  void whereverAPieceIsPutAllIsWithinTheRulesAfterwards() {
    SplittableRandom random = new SplittableRandom(7);
    int refused = 0;
    int moved = 0;
    for (YardageRow row : fitting()) {
      HandMoves moves = new HandMoves(row);
      List<OwnPlace> places = OwnLaying.places(laying(row));
      for (int i = 0; i < 4; i++) {
        int at = random.nextInt(places.size());
        double along = random.nextDouble(-100, laying(row).length() + 200);
        HandMoves.Moved result =
            moves.move(places, at, along, random.nextDouble(0, laying(row).sheet().tableWidth()));
        ClothLaying now = moves.laying(result.places()).orElseThrow();
        assertThat(OwnLayings.objections(row, now)).isEmpty();
        boolean onFold = laying(row).pieces().get(at).item().layers() == ClothItem.Layers.ON_FOLD;
        if (onFold) {
          assertThat(result.places().get(at).across()).isEqualTo(places.get(at).across());
        }
        if (result.objection().isEmpty()) {
          moved++;
          assertThat(result.places().get(at).along()).isEqualTo(OwnPlace.rounded(along));
        } else {
          refused++;
        }
        places = result.places();
      }
    }
    assertThat(refused).isGreaterThan(10);
    assertThat(moved).isGreaterThan(3);
  }

  @Test
  void aPieceOnAnotherIsRefusedByNameAndComesToTouchIt() {
    YardageRow row =
        fitting().stream().filter(each -> each.fold() == Fold.SINGLE).findFirst().orElseThrow();
    HandMoves moves = new HandMoves(row);
    List<OwnPlace> places = OwnLaying.places(laying(row));
    OwnPlace other = places.get(0);
    int last = places.size() - 1;
    HandMoves.Moved result = moves.move(places, last, other.along() + 20, other.across());
    assertThat(result.objection()).contains(HandMoves.Objection.OVERLAP);
    assertThat(result.on()).isPresent();
    assertThat(moves.laying(places)).isPresent();
    List<OwnPlace> forced = new ArrayList<>(places);
    forced.set(last, forced.get(last).at(other.along() + 20, other.across()));
    OwnLaying overlapping = new OwnLaying(OwnLaying.OfCloth.of(row), forced);
    YardageTable applied = new OwnLayings(List.of(overlapping), List.of()).applied(TABLE);
    assertThat(applied.findings()).extracting("code").containsExactly("laying-idle");
    assertThat(applied.rows()).isEqualTo(TABLE.rows());
  }

  @Test
  void aKeptLayingIsTheOneThatIsDrawnThoughAnotherFoldBuysLess() {
    YardageRow row = fitting().stream().filter(each -> !each.best()).findFirst().orElseThrow();
    OwnLaying own = new OwnLaying(OwnLaying.OfCloth.of(row), OwnLaying.places(laying(row)));
    List<YardageRow> rows = new OwnLayings(List.of(own), List.of()).applied(TABLE).rows();
    List<YardageRow> drawn =
        rows.stream()
            .filter(YardageRow::best)
            .filter(
                each ->
                    each.view().equals(row.view())
                        && each.fabric().equals(row.fabric())
                        && each.nap() == row.nap()
                        && each.width() == row.width())
            .toList();
    assertThat(drawn).hasSize(1);
    assertThat(drawn.get(0).fold()).isEqualTo(row.fold());
  }

  @Test
  void whereHersTakesMoreOfAWiderClothThanANarrowerNeedsThatIsTold() {
    YardageTable table = table(SmallRun.of(Fabric.Nap.ONE_WAY, 1120.0, 1400.0), 3_000);
    YardageRow wide =
        table.rows().stream()
            .filter(row -> row.best() && row.width() == 1400)
            .findFirst()
            .orElseThrow();
    List<OwnPlace> apart =
        OwnLaying.places(laying(wide)).stream()
            .map(place -> place.at(place.along() + 900, place.across()))
            .toList();
    OwnLayings own =
        new OwnLayings(List.of(new OwnLaying(OwnLaying.OfCloth.of(wide), apart)), List.of());
    assertThat(own.applied(table).findings()).extracting("code").containsExactly("laying-longer");
    assertThat(own.setAside(table).rows()).isEqualTo(table.rows());
    assertThat(own.setAside(table).findings())
        .extracting("code")
        .containsExactly("laying-set-aside");
    assertThat(OwnLayings.NONE.setAside(table)).isEqualTo(table);
  }

  @Test
  void linesThatAreNoPlacesAreToldWithTheirLine() {
    OwnLayings read =
        OwnLayings.read(
            """
            # mine
            view,fabric,nap
            A,main,one way,14,1500,lengthwise,front.fold,1,no,no,0,0
            A,main,sideways,14,1500,lengthwise,front.fold,1,no,no,0,0
            "A""b",main,one way,14,1500,lengthwise,front.fold,1,maybe,no,0,0
            short
            """);
    assertThat(read.layings()).hasSize(1);
    assertThat(read.findings()).hasSize(3);
    assertThat(read.findings().get(0).origin().orElseThrow().line()).isEqualTo(4);
  }

  private static YardageTable quickly(Double... widths) {
    return table(SmallRun.of(Fabric.Nap.EITHER_WAY, widths), 300);
  }

  /** What is found by a longer search is kept as hers, and no wider cloth then needs more. */
  @Test
  void aKeptLayingIsHandedOnToWhereItHoldsAsWell() {
    SizeRun run = SmallRun.of(Fabric.Nap.EITHER_WAY, 1000.0, 1020.0);
    YardageTable table = quickly(1000.0, 1020.0);
    int handed = 0;
    for (YardageRow row : table.rows()) {
      Optional<ClothLaying> better =
          row.width() > 1000 || !row.fits()
              ? Optional.empty()
              : FurtherSearch.of(run, row, ClothSettings.HANDBOOK)
                  .orElseThrow()
                  .lay(200_000, 1, LayingFollower.NOBODY);
      if (better.isEmpty()) {
        continue;
      }
      assertThat(better.get().length()).isLessThan(laying(row).length());
      OwnLaying own = new OwnLaying(OwnLaying.OfCloth.of(row), OwnLaying.places(better.get()));
      YardageTable applied = new OwnLayings(List.of(own), List.of()).applied(table);
      assertThat(applied.findings()).isEmpty();
      assertThat(applied.rows()).hasSameSizeAs(table.rows());
      for (YardageRow to : applied.rows()) {
        boolean like =
            to.fits()
                && to.view().equals(row.view())
                && to.fold() == row.fold()
                && to.nap() == row.nap()
                && to.width() >= row.width();
        if (like) {
          assertThat(laying(to).length()).isLessThanOrEqualTo(better.get().length() + 0.02);
          assertThat(OwnLayings.objections(to, laying(to))).isEmpty();
          handed += to.width() > row.width() ? 1 : 0;
        }
      }
      for (View view : run.pattern().views()) {
        for (double width : new double[] {1000, 1020}) {
          assertThat(
                  applied.rows().stream()
                      .filter(each -> each.view().equals(view) && each.width() == width)
                      .filter(each -> each.nap() == row.nap() && each.best()))
              .hasSize(1);
        }
      }
    }
    assertThat(handed).isGreaterThan(1);
  }

  @Test
  void aLongerSearchIsSeenToImproveAndMayBeStopped() {
    SizeRun run = SmallRun.of(Fabric.Nap.EITHER_WAY, 1000.0);
    YardageRow row =
        quickly(1000.0).rows().stream()
            .filter(each -> each.fold() == Fold.SINGLE)
            .findFirst()
            .orElseThrow();
    FurtherSearch further = FurtherSearch.of(run, row, ClothSettings.HANDBOOK).orElseThrow();
    List<Double> seen = new ArrayList<>();
    ClothLaying found = further.lay(200_000, 1, laying -> seen.add(laying.length())).orElseThrow();
    assertThat(seen).isNotEmpty().isSortedAccordingTo(java.util.Comparator.reverseOrder());
    assertThat(seen).doesNotHaveDuplicates().allMatch(length -> length < laying(row).length());
    assertThat(found.length()).isLessThanOrEqualTo(seen.get(seen.size() - 1));
    assertThat(further.lay(200_000, 1, LayingFollower.NOBODY)).contains(found);

    List<Double> first = new ArrayList<>();
    Optional<ClothLaying> stopped =
        further.lay(
            Long.MAX_VALUE / 4,
            1,
            new LayingFollower() {
              @Override
              public void shorter(ClothLaying laying) {
                first.add(laying.length());
              }

              @Override
              public boolean hasEnough() {
                return !first.isEmpty();
              }
            });
    assertThat(stopped.orElseThrow().length()).isLessThanOrEqualTo(first.get(0));
  }

  @Test
  void whoLooksOnChangesNothing() {
    SizeRun run = SmallRun.of(Fabric.Nap.EITHER_WAY, 1000.0);
    List<Double> seen = java.util.Collections.synchronizedList(new ArrayList<>());
    YardageTable.Watcher watcher =
        new YardageTable.Watcher() {
          @Override
          public void laid(int done, int of) {}

          @Override
          public void shorter(YardageTable.Cloth cloth, ClothLaying laying) {
            seen.add(laying.length());
          }
        };
    YardageRequest request =
        YardageRequest.everything().inSizes(List.of(run.sizes().get(2).size().name()));
    YardageTable watched = YardageTable.of(run, request, LayingStore.NONE, watcher);
    assertThat(watched)
        .isEqualTo(YardageTable.of(run, request, LayingStore.NONE, YardageTable.Watcher.SILENT));
    assertThat(seen).hasSizeGreaterThan(5);
  }
}
