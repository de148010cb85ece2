package org.hemwright.paper.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.hemwright.paper.SandlingSkirt;
import org.hemwright.paper.words.PieceWords;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is printed of a piece on the fold: as a half, unless its cloth is never folded, as uneven
 * checks are not (handbook section 5, [31]).
 */
class StripedPiecesTest {
  @ParameterizedTest
  @CsvSource({"false, false", "true, false", "false, true"})
  void aHalfOfClothThatIsNeverFoldedIsPrintedWhole(boolean unevenAlong, boolean unevenAcross) {
    SizeRun run =
        SandlingSkirt.striped(
            new Fabric.Repeat(
                OptionalDouble.of(110),
                OptionalDouble.of(80),
                unevenAlong,
                unevenAcross,
                List.of()));
    List<Size> sizes = run.sizes().stream().map(sized -> sized.size()).toList();
    Nest panel = Nest.of(run, sizes, false, false).get(0);
    double half = run.sizes().get(0).pieces().get(0).stitchLine().bounds().width();
    assertThat(panel.whole()).isEqualTo(unevenAcross);
    assertThat(panel.smallest().fold().isPresent()).isEqualTo(!unevenAcross);
    double wide = panel.smallest().cut().bounds().width();
    assertThat(wide > 1.9 * half).as("%s of a half %s", wide, half).isEqualTo(unevenAcross);
    String cut = PieceWords.cut(run, panel.card().cuts().get(0), panel.whole());
    assertThat(cut.contains("on the fold")).isEqualTo(!unevenAcross);
  }
}
