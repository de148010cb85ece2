package org.hemwright.cloth.yardage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.assertj.core.data.Offset;
import org.hemwright.cloth.CutPiece;
import org.hemwright.cloth.laying.NoFitStore;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.ClothPiece;
import org.hemwright.cloth.rule.ClothPlan;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.Silhouette;
import org.hemwright.pattern.fabric.Fabric;
import org.junit.jupiter.api.Test;

/** What is left of a cloth, where geometry says what that is. */
class RemnantTest {
  private static final Offset<Double> A_CELL = Offset.offset(2 * Remnant.CELL);

  private static ClothLaying lay(Fold fold, double width, ClothPiece... pieces) {
    return lay(ClothSettings.HANDBOOK, fold, width, pieces);
  }

  private static ClothLaying lay(
      ClothSettings settings, Fold fold, double width, ClothPiece... pieces) {
    List<ClothPlan> plans =
        ClothPlan.of(List.of(pieces), fold, width, settings, Fabric.Nap.ONE_WAY);
    return new PlanSearch(5_000, 1, new NoFitStore()).lay(plans).orElseThrow().laying();
  }

  @Test
  void theLargestRectangleBesideOnePieceAndBehindIt() {
    // a metre of cloth between its selvedges: 60 cm × 50 cm are cut from a corner of it
    ClothLaying laying = lay(Fold.SINGLE, 1030, CutPiece.rectangle("one", 600, 500).onCloth());
    Remnant.Rectangle beside = new Remnant(laying, 500).largest();
    assertThat(beside.along()).isCloseTo(500, A_CELL);
    assertThat(beside.across()).isCloseTo(400, A_CELL);
    Remnant.Rectangle behind = new Remnant(laying, 1000).largest();
    assertThat(behind.along()).isCloseTo(500, A_CELL);
    assertThat(behind.across()).isCloseTo(1000, A_CELL);
  }

  @Test
  void aFoldedLayingIsLookedAtUnfolded() {
    ClothLaying laying =
        lay(Fold.LENGTHWISE, 1030, CutPiece.rectangle("on fold", 300, 500).onFold().onCloth());
    // 60 cm in the middle are gone, and 20 cm are left along each selvedge
    Remnant.Rectangle left = new Remnant(laying, 500).largest();
    assertThat(left.across()).isCloseTo(200, A_CELL);
    assertThat(left.along()).isCloseTo(500, A_CELL);
  }

  @Test
  void whatIsTakenIsGoneAndWhatIsTooLargeFindsNoRoom() {
    ClothLaying laying = lay(Fold.SINGLE, 1030, CutPiece.rectangle("one", 600, 500).onCloth());
    Remnant remnant = new Remnant(laying, 500);
    ClothPiece half = CutPiece.rectangle("half", 380, 240).onCloth();
    assertThat(remnant.takes(CutPiece.rectangle("large", 380, 510).onCloth().shape())).isFalse();
    assertThat(remnant.takes(CutPiece.rectangle("wide", 420, 100).onCloth().shape())).isFalse();
    assertThat(remnant.takes(half.shape())).isTrue();
    assertThat(remnant.takes(half.shape())).isTrue();
    assertThat(remnant.takes(half.shape())).isFalse();
    assertThat(remnant.largest().across()).isLessThan(40);
  }

  @Test
  void aTriangleLeavesRoomForItsLike() {
    ClothLaying laying =
        lay(Fold.SINGLE, 530, CutPiece.polygon("gore", 0, 0, 500, 0, 0, 900).onCloth());
    ClothPiece like = CutPiece.polygon("like", 0, 0, 460, 0, 0, 820).onCloth();
    Remnant remnant = new Remnant(laying, 900);
    assertThat(remnant.takes(like.shape())).isFalse();
    assertThat(remnant.takes(like.shape().turned())).isTrue();
  }

  /** 40 cm are left beside the piece: by addition, with 2 cm and a cell or two between any two. */
  @Test
  void theGapIsKeptFromWhatIsCutAndBetweenWhatFindsRoom() {
    ClothSettings apart = ClothSettings.HANDBOOK.withGap(20);
    ClothLaying laying =
        lay(apart, Fold.SINGLE, 1030, CutPiece.rectangle("one", 600, 500).onCloth(20));
    double length = laying.length();
    assertThat(length).isCloseTo(500, A_CELL);
    assertThat(new Remnant(laying, length).takes(rectangle(370, 400))).isTrue();
    assertThat(new Remnant(laying, length).takes(rectangle(390, 400))).isFalse();
    Remnant filled = new Remnant(laying, length);
    assertThat(filled.takes(rectangle(180, 400))).isTrue();
    assertThat(filled.takes(rectangle(185, 400))).isFalse();
    assertThat(filled.takes(rectangle(165, 400))).isTrue();
    Remnant touching =
        new Remnant(lay(Fold.SINGLE, 1030, CutPiece.rectangle("one", 600, 500).onCloth()), length);
    assertThat(touching.takes(rectangle(390, 400))).isTrue();
  }

  @Test
  void whatIsLeftIsMeasuredToWhatIsCutWhateverTheGap() {
    ClothPiece one = CutPiece.rectangle("one", 600, 500).onCloth(20);
    ClothLaying laying = lay(ClothSettings.HANDBOOK.withGap(20), Fold.SINGLE, 1030, one);
    assertThat(new Remnant(laying, 500).largest().across()).isCloseTo(400, A_CELL);
  }

  /** A length that no bolt has, out of a slip of the pen, takes no more memory than a long bolt. */
  @Test
  void aHundredKilometresAreCountedInLargerCells() {
    ClothLaying laying = lay(Fold.SINGLE, 1030, CutPiece.rectangle("one", 600, 500).onCloth());
    double length = 1e8;
    Remnant.Rectangle behind = new Remnant(laying, length).largest();
    assertThat(behind.along()).isLessThan(length - 500).isGreaterThan(length - 1000);
    assertThat(behind.across()).isLessThanOrEqualTo(1000).isGreaterThan(800);
  }

  private static Silhouette rectangle(double across, double along) {
    return CutPiece.rectangle("other", across, along).onCloth().shape();
  }
}
