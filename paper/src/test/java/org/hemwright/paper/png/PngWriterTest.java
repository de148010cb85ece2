package org.hemwright.paper.png;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.hemwright.paper.TestSheets.oneOfEach;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PngWriterTest {
  @Test
  void linesFallOnTheirPixels() throws Exception {
    byte[] bytes = PngWriter.write(oneOfEach(210, 297), 10);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
    assertThat(image.getWidth()).isEqualTo(2100);
    assertThat(image.getHeight()).isEqualTo(2970);
    int dark = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      if ((image.getRGB(x, 2770) & 0xFF) < 128) {
        dark++;
      }
    }
    assertThat(dark).as("a line 100 mm long, 20 mm from the foot").isEqualTo(1000);
  }

  @Test
  void theSameSheetMakesTheSameBytes() {
    assertThat(PngWriter.write(oneOfEach(210, 297), 4))
        .isEqualTo(PngWriter.write(oneOfEach(210, 297), 4));
  }

  @Test
  void aPictureTooLargeToDrawIsRefused() {
    assertThatThrownBy(() -> PngWriter.write(oneOfEach(210, 297), 400))
        .hasMessageContaining("fewer");
  }
}
