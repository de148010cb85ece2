package org.hemwright.exchange.photograph;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;

class PictureReaderTest {
  @Test
  void whatIsNoPictureIsRefusedInWords() throws IOException {
    assertThat(refusal("not a picture".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo("photograph-no-picture");
    assertThat(refusal(new byte[0])).isEqualTo("photograph-no-picture");
    // A telephone's container begins so (ISO/IEC 14496-12: a box of type ftyp).
    assertThat(refusal("\0\0\0\030ftypheic\0\0\0\0".getBytes(StandardCharsets.ISO_8859_1)))
        .isEqualTo("photograph-high-efficiency");
    assertThat(refusal(new byte[PictureReader.MOST_BYTES + 1])).isEqualTo("photograph-too-large");
    assertThat(refusal(png(10, 10))).isEqualTo("photograph-too-small");
    byte[] whole = jpeg();
    assertThat(refusal(Arrays.copyOf(whole, 60))).startsWith("photograph-");
  }

  /**
   * A head that promises four thousand million pixels: refused before any room is made for them.
   */
  @Test
  void aPictureThatClaimsToBeVastIsRefusedByItsHead() throws IOException {
    byte[] vast = png(100, 100);
    for (int k = 16; k < 24; k++) {
      vast[k] = (byte) (k % 4 == 2 ? 0xff : 0);
    }
    CRC32 sum = new CRC32();
    sum.update(vast, 12, 17);
    for (int k = 0; k < 4; k++) {
      vast[29 + k] = (byte) (sum.getValue() >>> (24 - 8 * k));
    }
    assertThat(refusal(vast)).isEqualTo("photograph-too-many-pixels");
  }

  @Test
  void aBrokenPictureIsReadOrRefusedButNeverThrows() throws IOException {
    byte[] whole = jpeg();
    Random random = new Random(2);
    for (int round = 0; round < 200; round++) {
      byte[] broken = whole.clone();
      for (int k = 0; k < 1 + random.nextInt(20); k++) {
        broken[random.nextInt(broken.length)] = (byte) random.nextInt(256);
      }
      List<Finding> findings = new ArrayList<>();
      Optional<Picture> read = PictureReader.read("broken.jpg", broken, findings);
      assertThat(read.isPresent()).isEqualTo(findings.isEmpty());
    }
  }

  /** The eight ways a camera can be held (CIPA DC-008, Exif, tag 274), each turned upright. */
  @Test
  void aPictureIsTurnedUprightAsTheCameraWasHeld() throws IOException {
    // Held upright, the red corner is at the upper left of what is stored.
    int[][] redAt = {{0, 0}, {1, 0}, {1, 1}, {0, 1}, {0, 0}, {1, 0}, {1, 1}, {0, 1}};
    for (int turn = 1; turn <= 8; turn++) {
      Picture picture = read(withOrientation(jpeg(), turn));
      boolean sideways = turn >= 5;
      assertThat(picture.width()).as("turn " + turn).isEqualTo(sideways ? 100 : 160);
      int x = redAt[turn - 1][0] * (picture.width() - 1);
      int y = redAt[turn - 1][1] * (picture.height() - 1);
      assertThat(picture.colour(x, y) >> 16).as("turn " + turn).isGreaterThan(200);
      assertThat(picture.colour(picture.width() - 1 - x, y) >> 16).isLessThan(80);
    }
  }

  private static Picture read(byte[] bytes) {
    List<Finding> findings = new ArrayList<>();
    Optional<Picture> picture = PictureReader.read("held.jpg", bytes, findings);
    assertThat(findings).isEmpty();
    return picture.orElseThrow();
  }

  private static String refusal(byte[] bytes) {
    List<Finding> findings = new ArrayList<>();
    assertThat(PictureReader.read("some.jpg", bytes, findings)).isEmpty();
    assertThat(findings).hasSize(1);
    assertThat(Wording.of(PhotographReader.messages()).message(findings.get(0))).isNotBlank();
    return findings.get(0).code();
  }

  private static byte[] png(int width, int height) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB), "png", bytes);
    return bytes.toByteArray();
  }

  /** Black, 160 by 100, with a red upper left quarter. */
  private static byte[] jpeg() throws IOException {
    BufferedImage image = new BufferedImage(160, 100, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 50; y++) {
      for (int x = 0; x < 80; x++) {
        image.setRGB(x, y, 0xff0000);
      }
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "jpg", bytes);
    return bytes.toByteArray();
  }

  /** The same with a segment of Exif that holds the one tag. */
  private static byte[] withOrientation(byte[] jpeg, int turn) throws IOException {
    byte[] segment = {
      (byte) 0xff,
      (byte) 0xe1,
      0,
      34,
      'E',
      'x',
      'i',
      'f',
      0,
      0,
      'M',
      'M',
      0,
      42,
      0,
      0,
      0,
      8,
      0,
      1,
      1,
      0x12,
      0,
      3,
      0,
      0,
      0,
      1,
      0,
      (byte) turn,
      0,
      0,
      0,
      0,
      0,
      0
    };
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.write(jpeg, 0, 2);
    bytes.write(segment);
    bytes.write(jpeg, 2, jpeg.length - 2);
    return bytes.toByteArray();
  }
}
