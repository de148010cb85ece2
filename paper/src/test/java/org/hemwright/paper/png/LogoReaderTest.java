package org.hemwright.paper.png;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.hemwright.paper.sheet.Raster;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LogoReaderTest {
  @TempDir Path folder;

  @Test
  void aDrawingIsPaintedInItsOwnProportions() throws IOException {
    Raster logo =
        LogoReader.read(
                svg("<rect width='60' height='40' fill='#ff0000'/>")
                    .getBytes(StandardCharsets.UTF_8))
            .orElseThrow();
    assertThat((double) logo.width() / logo.height()).isEqualTo(3, within(0.01));
    BufferedImage image = image(logo);
    assertThat(image.getRGB(logo.width() / 4, logo.height() / 2)).isEqualTo(0xffff0000);
    assertThat(image.getRGB(3 * logo.width() / 4, logo.height() / 2) >>> 24).isZero();
  }

  /** A picture that lies beside it would turn the middle green. */
  @Test
  void aDrawingReadsNoFileAndNoAddress() throws IOException {
    BufferedImage green = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 64; i++) {
      green.setRGB(i % 8, i / 8, 0x00ff00);
    }
    Path beside = folder.resolve("green.png");
    ImageIO.write(green, "png", beside.toFile());
    assertThat(Files.size(beside)).isPositive();
    for (String address : new String[] {beside.toUri().toString(), beside.toString()}) {
      String drawing = svg("<image href='" + address + "' width='120' height='40'/>");
      Raster logo = LogoReader.read(drawing.getBytes(StandardCharsets.UTF_8)).orElseThrow();
      assertThat(image(logo).getRGB(logo.width() / 2, logo.height() / 2) >>> 24)
          .as(address)
          .isZero();
    }
  }

  @Test
  void whatIsNoPictureOrFarTooLargeIsNoLogo() throws IOException {
    assertThat(LogoReader.read(new byte[0])).isEmpty();
    assertThat(LogoReader.read("no picture".getBytes(StandardCharsets.UTF_8))).isEmpty();
    assertThat(LogoReader.read("<svg".getBytes(StandardCharsets.UTF_8))).isEmpty();
    ByteArrayOutputStream large = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(9000, 5000, BufferedImage.TYPE_BYTE_BINARY), "png", large);
    assertThat(LogoReader.read(large.toByteArray())).isEmpty();
  }

  private static String svg(String inside) {
    return "<svg xmlns='http://www.w3.org/2000/svg' width='120' height='40'>" + inside + "</svg>";
  }

  private static BufferedImage image(Raster raster) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(raster.png()));
  }

  private static org.assertj.core.data.Offset<Double> within(double offset) {
    return org.assertj.core.api.Assertions.within(offset);
  }
}
