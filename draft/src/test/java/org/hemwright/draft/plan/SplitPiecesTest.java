package org.hemwright.draft.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.hemwright.geometry.Outline;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.CutLine;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;
import org.hemwright.pattern.split.Divided;
import org.hemwright.pattern.split.PieceParts;
import org.hemwright.pattern.split.SplitChoice;
import org.hemwright.pattern.split.SplitRun;
import org.junit.jupiter.api.Test;

/** Pieces cut apart: lengths and areas by school geometry, seams by what they join. */
class SplitPiecesTest {
  private static final Offset<Double> EXACT = within(1e-6);

  private static final String BAND =
      """
      piece band "Waistband" number 1
        cut 1 of main
        rectangle 1200 mm by 80 mm, edges lower, end_right, upper, end_left
        allowance 1 cm
        notch lower at quarters
        grain along end_left
        point a on lower at 50% from start
        point b on upper at 50% from start
        point c on lower at 300 mm from start
        point d on upper at 300 mm from start
        point e on lower at 900 mm from start
        point f on upper at 900 mm from start
        point fold_left on end_left at 50% from start
        point fold_right on end_right at 50% from start
        inner fold_line is fold_left to fold_right "Fold"
        split halves is a to b, allowance 1.5 cm into left_band, right_band
        split thirds is e to f and c to d, allowance 1 cm
      """;

  private static final String SKIRT =
      """
      piece panel "Panel" number 2
        cut 2 of main, on the fold
        copies front, back
        point cw at 0 cm, 0 cm
        point ch from cw down 50 cm
        point sw from cw right 30 cm
        point sh from ch right 40 cm
        outline waist is cw to sw, side is sw to sh, hem is sh to ch, centre is straight
        fold centre
        allowance 1 cm, hem 2 cm turned back
        notch side at 20 cm from start
        grain along centre
        split centre_seam on the fold, allowance 1.5 cm into half_panel
        point yoke_centre on centre at 40 cm from start
        point yoke_side on side at 10 cm from start
        split yoke is yoke_side to yoke_centre, allowance 1 cm
        point low_waist on waist at 20 cm from start
        point low_hem on hem at 20 cm from start
        split gore is low_waist to low_hem, allowance 1 cm into middle, gore_piece
      seam sides panel.side with panel.side
      seam ring band.end_right with band.end_left
      seam waist_seam band.lower with every panel.waist
      elastic loop in band, width 3 cm, length waist, overlap 2 cm
      make
        usual stitch straight stitch 2.5 mm
        sew sides
        fold band wrong sides together
        sew ring
        sew waist_seam
      """;

  private static SizeRun run() {
    Sketch sketch = Sketch.of(BAND + SKIRT);
    assertThat(sketch.drafted().findings()).isEmpty();
    return sketch.drafted().run().orElseThrow();
  }

  private static PieceParts parts(String piece, String split) {
    Piece whole = run().size("14").flatMap(sized -> sized.piece(piece)).orElseThrow();
    return Divided.of(whole, split).orElseThrow();
  }

  private static double length(Piece piece, String edge) {
    return piece.edge(edge).orElseThrow().path().length();
  }

  private static double cutArea(Piece piece) {
    AddedAllowance added = AddedAllowance.to(piece);
    assertThat(added.findings()).isEmpty();
    return added.cutLine().map(CutLine::outline).map(Outline::signedArea).orElseThrow();
  }

  @Test
  void aBandInHalvesHasTwoNewEndsWithTheirAllowance() {
    PieceParts parts = parts("band", "halves");
    assertThat(parts.parts()).extracting(Piece::name).containsExactly("left_band", "right_band");
    for (Piece part : parts.parts()) {
      assertThat(part.stitchLine().signedArea()).isCloseTo(600 * 80, EXACT);
      assertThat(length(part, "lower")).isCloseTo(600, EXACT);
      assertThat(length(part, "upper")).isCloseTo(600, EXACT);
      assertThat(length(part, "halves")).isCloseTo(80, EXACT);
      assertThat(part.edge("halves").map(Edge::allowance).orElseThrow().width()).isEqualTo(15);
      // 1 cm round three sides, 1.5 cm at the new end
      assertThat(cutArea(part)).isCloseTo((600 + 10 + 15) * 100.0, within(0.01));
      assertThat(part.marks(Mark.Inner.class)).hasSize(1);
      assertThat(part.marks(Mark.Inner.class).get(0).path().length()).isCloseTo(600, EXACT);
      assertThat(part.marks(Mark.Split.class)).isEmpty();
    }
    Piece left = parts.parts().get(0);
    assertThat(left.edge("end_left")).isPresent();
    assertThat(left.edge("end_right")).isEmpty();
    // the quarter notch stays, that at the half is where the new seam ends
    assertThat(left.notches().stream().filter(notch -> notch.edge().equals("lower")))
        .extracting(Notch::distance)
        .allSatisfy(at -> assertThat(at).isCloseTo(300, EXACT))
        .hasSize(1);
    assertThat(left.notches().stream().filter(notch -> notch.edge().equals("halves")))
        .extracting(Notch::distance)
        .containsExactly(40.0);
    assertThat(left.card().mark()).isEqualTo("1a");
    assertThat(parts.parts().get(1).card().mark()).isEqualTo("1b");
    assertThat(parts.parts().get(1).card().title()).isEqualTo("Waistband, part 2 of 2");
  }

  @Test
  void severalLinesCutSeveralTimesAndPartsAreNumberedAlongThePiece() {
    PieceParts parts = parts("band", "thirds");
    assertThat(parts.parts()).extracting(Piece::name).containsExactly("band_1", "band_2", "band_3");
    assertThat(parts.parts().stream().map(part -> length(part, "lower")).toList())
        .satisfiesExactly(
            first -> assertThat(first).isCloseTo(300, EXACT),
            second -> assertThat(second).isCloseTo(600, EXACT),
            third -> assertThat(third).isCloseTo(300, EXACT));
    assertThat(parts.joins())
        .containsExactlyInAnyOrder(
            new PieceParts.Join("thirds_1", 1, 2), new PieceParts.Join("thirds_2", 0, 1));
    // so that the two seams cannot be taken for each other
    assertThat(
            parts.parts().get(1).notches().stream()
                .filter(notch -> notch.edge().startsWith("thirds"))
                .map(Notch::kind))
        .containsExactlyInAnyOrder(Notch.Kind.SINGLE, Notch.Kind.DOUBLE);
  }

  @Test
  void alongTheFoldEachHalfIsCutByItselfAndMirrored() {
    PieceParts parts = parts("panel", "centre_seam");
    Piece half = parts.parts().get(0);
    assertThat(half.foldEdge()).isEmpty();
    assertThat(half.card().cuts())
        .allSatisfy(
            cut -> {
              assertThat(cut.count()).isEqualTo(4);
              assertThat(cut.mirrored()).isTrue();
              assertThat(cut.onFold()).isFalse();
            });
    assertThat(half.card().copies())
        .containsExactly(
            new Copy("front_drawn", false),
            new Copy("front_mirrored", true),
            new Copy("back_drawn", false),
            new Copy("back_mirrored", true));
    Seam centre =
        SplitRun.of(run(), List.of(new SplitChoice("panel", "centre_seam")))
            .sizes()
            .get(0)
            .seams()
            .stream()
            .filter(seam -> seam.name().equals("centre_seam"))
            .findFirst()
            .orElseThrow();
    assertThat(centre.joins()).as("one for the front, one for the back").hasSize(2);
    assertThat(centre.joins().get(0).layers())
        .extracting(layer -> layer.run().get(0).copy())
        .containsExactly("front_drawn", "front_mirrored");
  }

  @Test
  void whereALineMeetsTheFoldBothPartsStayHalves() {
    PieceParts parts = parts("panel", "yoke");
    assertThat(parts.parts()).allMatch(part -> part.foldEdge().isPresent());
    double area = parts.parts().stream().mapToDouble(part -> part.stitchLine().signedArea()).sum();
    assertThat(area).isCloseTo((300 + 400) / 2.0 * 500, EXACT);
  }

  @Test
  void aGoreIsCutTwiceForEachPanel() {
    PieceParts parts = parts("panel", "gore");
    Piece middle = parts.part("middle").orElseThrow();
    Piece gore = parts.part("gore_piece").orElseThrow();
    assertThat(middle.foldEdge()).isPresent();
    assertThat(middle.card().cuts().get(0).count()).isEqualTo(2);
    assertThat(gore.foldEdge()).isEmpty();
    assertThat(gore.card().cuts().get(0).count()).isEqualTo(4);
    assertThat(length(gore, "waist")).isCloseTo(100, EXACT);
    assertThat(length(gore, "hem")).isCloseTo(200, EXACT);
    assertThat(length(middle, "waist")).isCloseTo(200, EXACT);
  }

  @Test
  void seamsRunAlongThePartsAsLongAsBefore() {
    SizeRun whole = run();
    for (SplitChoice choice : SplitChoice.declared(whole)) {
      SizeRun split = SplitRun.of(whole, List.of(choice));
      for (int i = 0; i < whole.sizes().size(); i++) {
        SizedPattern before = whole.sizes().get(i);
        SizedPattern after = split.sizes().get(i);
        for (Seam seam : before.seams()) {
          Seam now =
              after.seams().stream()
                  .filter(each -> each.name().equals(seam.name()))
                  .findFirst()
                  .orElseThrow();
          assertThat(lengths(now, after))
              .as(choice.text() + " " + seam.name())
              .isEqualTo(lengths(seam, before));
          assertThat(now.joins().stream().flatMap(join -> join.layers().stream()))
              .allSatisfy(layer -> assertThat(places(layer, after)).isNotEmpty());
        }
        assertThat(after.piece(choice.piece())).isEmpty();
      }
      assertThat(split.pattern().views().get(0).pieces()).doesNotContain(choice.piece());
      assertThat(split.pattern().pieces())
          .extracting(PieceCard::name)
          .containsExactlyElementsOf(split.pattern().views().get(0).pieces());
    }
  }

  private static List<Long> lengths(Seam seam, SizedPattern sized) {
    List<Long> lengths = new ArrayList<>();
    for (Seam.Join join : seam.joins()) {
      for (Seam.Layer layer : join.layers()) {
        lengths.add(Math.round(1000 * LayerWalk.of(layer, sized).length()));
      }
    }
    return lengths;
  }

  /** Every place of a layer is there: piece, copy and edge. */
  private static List<EdgePlace> places(Seam.Layer layer, SizedPattern sized) {
    for (EdgePlace place : layer.run()) {
      Piece piece = sized.piece(place.piece()).orElseThrow();
      assertThat(piece.edge(place.edge())).isPresent();
      assertThat(piece.card().copies()).extracting(Copy::name).contains(place.copy());
      assertThat(place.half() == EdgePlace.Half.WHOLE).isEqualTo(piece.foldEdge().isEmpty());
    }
    return layer.run();
  }

  @Test
  void theJoiningSeamIsSewnBeforeThePieceIsUsed() {
    SizeRun split = SplitRun.of(run(), List.of(new SplitChoice("band", "halves")));
    assertThat(split.pattern().making().steps())
        .extracting(Step::id)
        .containsExactly("sew_sides", "sew_halves", "fold_band", "sew_ring", "sew_waist_seam");
    assertThat(split.sizes().get(0).seams().get(0).name()).isEqualTo("halves");
    assertThat(split.sizes().get(0).elastics().get(0).piece()).isEqualTo("left_band");
  }

  private static List<Step> madeInParts(String steps) {
    Sketch sketch = Sketch.of(BAND + SKIRT.replace("sew sides\n", steps));
    assertThat(sketch.drafted().findings()).isEmpty();
    SizeRun whole = sketch.drafted().run().orElseThrow();
    return SplitRun.of(whole, List.of(new SplitChoice("panel", "centre_seam")))
        .pattern()
        .making()
        .steps();
  }

  @Test
  void interfacingIsFusedToPartsBeforeTheyAreJoined() {
    assertThat(madeInParts("fuse panel\n  sew sides\n"))
        .extracting(Step::id)
        .startsWith("fuse_panel", "sew_centre_seam", "sew_sides");
  }

  @Test
  void whereASeamOfThePieceIsFinishedSoIsThatOfItsParts() {
    List<Step> steps = madeInParts("sew sides\n  finish sides together with overlock\n");
    assertThat(steps)
        .extracting(Step::id)
        .startsWith("sew_centre_seam", "finish_centre_seam", "sew_sides", "finish_sides");
    Step finish = steps.get(1);
    assertThat(finish.act()).isEqualTo(new Act.Finish(false));
    assertThat(finish.sewing()).isEqualTo(steps.get(3).sewing());
    assertThat(finish.work()).containsExactly(new Work.OfSeam("centre_seam"));
  }

  @Test
  void whatAStepInHerOwnWordsDealsWithIsDoneToTheParts() {
    Step own = madeInParts("do \"Turn it up\", hemming panel.hem\n  sew sides\n").get(1);
    assertThat(((Act.Own) own.act()).deals())
        .containsExactly(
            new Act.Dealing(
                Act.Dealing.How.HEMMING, new Work.OfEdge("half_panel", Optional.empty(), "hem")));
  }

  @Test
  void aLineThatDoesNotRunAcrossIsFound() {
    Sketch sketch =
        Sketch.inPiece(
            """
            point inside at 500 mm, 500 mm
            point below on low at 50% from start
            split half_way is below to inside, allowance 1 cm
            split folded on the fold, allowance 1 cm
            """);
    Piece piece = sketch.piece("14", "sheet");
    List<String> codes = new ArrayList<>();
    for (Mark.Split split : piece.marks(Mark.Split.class)) {
      Divided.of(piece, split).findings().stream().map(Finding::code).forEach(codes::add);
    }
    assertThat(codes).containsExactly("split-beside", "split-no-fold");
  }
}
