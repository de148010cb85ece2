package org.hemwright.exchange.photograph;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Metadata;
import com.drew.metadata.MetadataException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.image.AffineTransformOp;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/** Reads the pixels of a JPEG or PNG, and turns them upright as the camera held them. */
public final class PictureReader {
  /** A larger file is refused unread. */
  public static final int MOST_BYTES = 40 << 20;

  /** A picture with more pixels is refused by what its head says, before any is read. */
  static final long MOST_PIXELS = 250_000_000;

  /** Of a larger picture every second, third, ... pixel is read: more would add nothing. */
  static final long ENOUGH_PIXELS = 16_000_000;

  /** A picture with fewer pixels on a side shows no piece. */
  private static final int FEWEST = 64;

  private PictureReader() {}

  /**
   * Reads a picture.
   *
   * @param file the name that findings carry
   * @param findings where is told why there is none
   */
  public static Optional<Picture> read(String file, byte[] content, List<Finding> findings) {
    if (content.length > MOST_BYTES) {
      findings.add(
          Finding.fail("photograph-too-large", file)
              .with("most", Argument.of((long) MOST_BYTES >> 20))
              .at(new Origin(file, 1, 1))
              .build());
      return Optional.empty();
    }
    if (isHighEfficiency(content)) {
      findings.add(plain("photograph-high-efficiency", file));
      return Optional.empty();
    }
    try (MemoryCacheImageInputStream stream =
        new MemoryCacheImageInputStream(new ByteArrayInputStream(content))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
      if (!readers.hasNext()) {
        findings.add(plain("photograph-no-picture", file));
        return Optional.empty();
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(stream, true, true);
        long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
        if (pixels > MOST_PIXELS) {
          findings.add(
              Finding.fail("photograph-too-many-pixels", file)
                  .with("most", Argument.of(MOST_PIXELS / 1_000_000))
                  .at(new Origin(file, 1, 1))
                  .build());
          return Optional.empty();
        }
        if (reader.getWidth(0) < FEWEST || reader.getHeight(0) < FEWEST) {
          findings.add(plain("photograph-too-small", file));
          return Optional.empty();
        }
        int every = 1;
        while (pixels / ((long) every * every) > ENOUGH_PIXELS) {
          every++;
        }
        ImageReadParam some = reader.getDefaultReadParam();
        some.setSourceSubsampling(every, every, 0, 0);
        return Optional.of(Picture.of(upright(reader.read(0, some), turn(content))));
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException broken) {
      // The decoders meet broken files with exceptions of many sorts.
      findings.add(plain("photograph-broken", file));
      return Optional.empty();
    }
  }

  private static Finding plain(String code, String file) {
    return Finding.fail(code, file).at(new Origin(file, 1, 1)).build();
  }

  /** The container of ISO/IEC 23008-12, in which some telephones keep pictures. */
  private static boolean isHighEfficiency(byte[] content) {
    return content.length > 12
        && content[4] == 'f'
        && content[5] == 't'
        && content[6] == 'y'
        && content[7] == 'p';
  }

  /** How the camera was held: the orientation of the Exif standard (CIPA DC-008), 1 to 8. */
  private static int turn(byte[] content) {
    try {
      Metadata facts = ImageMetadataReader.readMetadata(new ByteArrayInputStream(content));
      ExifIFD0Directory directory = facts.getFirstDirectoryOfType(ExifIFD0Directory.class);
      return directory != null && directory.containsTag(ExifIFD0Directory.TAG_ORIENTATION)
          ? directory.getInt(ExifIFD0Directory.TAG_ORIENTATION)
          : 1;
    } catch (ImageProcessingException | MetadataException | IOException unknown) {
      return 1;
    }
  }

  private static BufferedImage upright(BufferedImage image, int turn) {
    double width = image.getWidth();
    double height = image.getHeight();
    AffineTransform map =
        switch (turn) {
          case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
          case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
          case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
          case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
          case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
          case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
          case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
          default -> new AffineTransform();
        };
    if (map.isIdentity()) {
      return image;
    }
    boolean turned = turn >= 5;
    BufferedImage upright =
        new BufferedImage(
            turned ? image.getHeight() : image.getWidth(),
            turned ? image.getWidth() : image.getHeight(),
            BufferedImage.TYPE_INT_RGB);
    var pen = upright.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, upright.getWidth(), upright.getHeight());
    pen.drawImage(image, new AffineTransformOp(map, AffineTransformOp.TYPE_NEAREST_NEIGHBOR), 0, 0);
    pen.dispose();
    return upright;
  }
}
