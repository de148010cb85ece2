package org.hemwright.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.junit.jupiter.api.Test;

/** The skirt of the language guide, from text to pieces in every size. */
class SandlingSkirtTest {
  static final SizeChart CHART =
      Charts.of(
          """
          size,waist (cm),hip (cm),hip depth (cm),bust (cm)
          8,66,92,19.5,84
          10,70,96,19.8,88
          12,74,100,20,92
          14,78,104,20.2,96
          16,82,108,20.4,100
          18,88,114,20.6,106
          20,94,120,20.8,112
          22,100,126,21,118
          24,106,132,21.2,124
          """);

  static final String TEXT =
      """
      language 1
      pattern "Sandling skirt"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 14
      units centimetres
      spelling British

      fabric main knit "Cotton or viscose jersey"
        widths 115 cm, 150 cm
        stretch across at least 50%
        nap one way

      dial hip_ease      = 4 cm   from 0 cm to 12 cm   "Ease at the hip"
      dial skirt_length  = 58 cm  from 35 cm to 95 cm  "Waist to finished hem"
      dial flare         = 6 cm   from 0 cm to 20 cm   "Added to each quarter at the hem"
      dial elastic_width = 3 cm   from 1 cm to 6 cm    "Width of your elastic"
      let waist_rise = 1 cm, then 1.3 cm from size 22  # her own numbers, stepped

      piece panel "Skirt front and back" number 1
        cut 2 of main, on the fold
        let quarter = (hip + hip_ease) / 4
        point centre_waist at 0 cm, 0 cm
        point centre_hem   from centre_waist down skirt_length
        point side_hip     from centre_waist down hip_depth then right quarter
        point side_waist   from centre_waist right quarter then up waist_rise
        point side_hem     from centre_hem right quarter + flare then up 1 cm
        curve waist_line   from centre_waist leaving right to side_waist
        curve side_line    from side_waist to side_hip arriving down, then straight to side_hem
        curve hem_line     from side_hem to centre_hem arriving left
        outline waist is waist_line, side is side_line, hem is hem_line, centre is straight
        fold centre
        allowance 1 cm, hem 2.5 cm turned back
        notch side at side_hip
        grain along centre
        stretch across
        level hip at side_hip
        opening waist
        stack at centre_waist

      piece band "Waistband" number 2
        cut 1 of main
        let depth = 2 * (elastic_width + 3 mm)
        rectangle 4 * length of panel.waist by depth, edges lower, end_right, upper, end_left
        allowance 1 cm
        notch lower at quarters
        grain along end_left
        stretch across

      seam side_seams panel.side with panel.side
      seam band_ring  band.end_right with band.end_left
      seam band_fold  band.lower with band.upper
      seam waist_seam band.lower with every panel.waist, quarters at sides and centres

      elastic waist_elastic in band, width elastic_width, length 90% of waist, overlap 2.5 cm

      view A "Elastic waist"
        pieces panel, band

      paper
        groups 8 to 16, 16 to 24
        stitch lines hidden
      """;

  @Test
  void everyPieceIsDrawnInEverySize() {
    Drafted drafted = Drafting.draft("pattern.hem", TEXT, CHART);
    assertThat(drafted.findings()).isEmpty();
    SizeRun run = drafted.run().orElseThrow();
    assertThat(run.sizes()).hasSize(9);
    Piece panel = run.size("14").orElseThrow().piece("panel").orElseThrow();
    assertThat(panel.stitchLine().isCounterClockwise()).isTrue();
    assertThat(panel.edges().stream().map(Edge::name).toList())
        .isEqualTo(List.of("waist", "centre", "hem", "side"));
    assertThat(panel.foldEdge().orElseThrow().path().length()).isCloseTo(580, within(1e-9));
    Piece band = run.size("14").orElseThrow().piece("band").orElseThrow();
    assertThat(band.edge("lower").orElseThrow().path().length())
        .isCloseTo(4 * panel.edge("waist").orElseThrow().path().length(), within(1e-9));
  }
}
