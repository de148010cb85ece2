package org.hemwright.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import org.hemwright.geometry.Box;
import org.hemwright.paper.nest.GroupDrawing;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.type.HouseType;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.junit.jupiter.api.Test;

class PicturesTest {
  private static Sheet sheet(double scale) {
    SizeRun run = SandlingSkirt.run();
    List<Size> sizes = run.pattern().chart().sizes();
    return Pictures.of(
        new GroupDrawing(run, sizes, Nest.of(run, sizes, false, true), false),
        false,
        HouseType.OURS,
        scale);
  }

  @Test
  void everyPieceIsShownWithItsNumberTitleAndCut() {
    assertThat(
            sheet(4).inked().stream()
                .filter(Words.class::isInstance)
                .map(item -> ((Words) item).line().text()))
        .contains(
            "Sandling skirt",
            "Sizes 8 to 24",
            "1",
            "Skirt front and back",
            "Cut\u00a02 on the fold",
            "2",
            "Waistband",
            "Cut\u00a01",
            "8",
            "24");
  }

  @Test
  void everythingLiesOnThePicture() {
    for (double scale : new double[] {1, 3, 5}) {
      Sheet sheet = sheet(scale);
      Box frame = sheet.frame();
      for (Inked item : sheet.inked()) {
        Box box = item.bounds();
        assertThat(frame.union(box)).as(item.toString()).isEqualTo(frame);
      }
    }
  }

  @Test
  void aPngHasTheAskedPixelsAndAnSvgItsTrueSize() throws IOException {
    SizeRun run = SandlingSkirt.run();
    PrintedFile png =
        Paper.pictures(run, PaperOptions.everything(), Paper.PictureKind.PNG, 1).get(0);
    assertThat(png.name()).isEqualTo("sandling-skirt-1.0-sizes-8-to-24.png");
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png.bytes()));
    assertThat(image.getWidth()).isEqualTo((int) Math.ceil(sheet(4.5).frame().width()));
    PrintedFile svg =
        Paper.pictures(run, PaperOptions.everything(), Paper.PictureKind.SVG, 1).get(0);
    assertThat(new String(svg.bytes(), StandardCharsets.UTF_8))
        .contains("mm\" height=")
        .contains("aria-label=\"Waistband\"");
  }

  @Test
  void twentyFourSizesMakeAPictureForEachGroup() {
    SizeRun run = SandlingSkirt.run(24, new PaperChoices(List.of(), false, false, false));
    assertThat(
            Paper.pictures(run, PaperOptions.everything(), Paper.PictureKind.PNG, 1).stream()
                .map(PrintedFile::name))
        .containsExactly(
            "sandling-skirt-1.0-sizes-8-to-24.png",
            "sandling-skirt-1.0-sizes-24-to-40.png",
            "sandling-skirt-1.0-sizes-40-to-54.png");
  }
}
