package org.hemwright.booklet.write;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/** Whether a picture of the designer's can be put on a maker's paper. */
public final class PictureCheck {
  /** More than a camera takes: 100 million. */
  private static final long MOST_PIXELS = 100_000_000;

  private static final int MOST_BYTES = 32 << 20;

  /** A drawing of more than 2 m is none for a page (mm). */
  private static final double LONGEST = 2000;

  private PictureCheck() {}

  /** What is wrong with a picture, if anything is. */
  public static Optional<Finding> problem(Picture picture) {
    return reason(picture)
        .map(
            reason ->
                Finding.fail("picture-" + reason, picture.name())
                    .at(new Origin(picture.name(), 1, 1))
                    .build());
  }

  private static Optional<String> reason(Picture picture) {
    if (picture.bytes().length > MOST_BYTES) {
      return Optional.of("large");
    }
    return picture.kind() == Picture.Kind.SVG ? drawing(picture) : pixels(picture);
  }

  private static Optional<String> drawing(Picture picture) {
    try {
      DrawingReader.read(picture.bytes());
      double[] size = VectorPicture.size(picture);
      double longest = Math.max(size[0], size[1]);
      double least = Math.min(size[0], size[1]);
      return !(least > 0.1) || !(longest < Double.MAX_VALUE)
          ? Optional.of("unreadable")
          : longest > LONGEST ? Optional.of("large") : Optional.empty();
    } catch (DrawingReader.Refused refused) {
      return Optional.ofNullable(refused.getMessage());
    } catch (RuntimeException broken) {
      return Optional.of("unreadable");
    }
  }

  /** Looks at the size before it takes the room. */
  private static Optional<String> pixels(Picture picture) {
    try (ImageInputStream in =
        ImageIO.createImageInputStream(new ByteArrayInputStream(picture.bytes()))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        return Optional.of("unreadable");
      }
      ImageReader reader = readers.next();
      try {
        reader.setInput(in);
        if ((long) reader.getWidth(0) * reader.getHeight(0) > MOST_PIXELS) {
          return Optional.of("large");
        }
        reader.read(0);
        return Optional.empty();
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException broken) {
      return Optional.of("unreadable");
    }
  }
}
