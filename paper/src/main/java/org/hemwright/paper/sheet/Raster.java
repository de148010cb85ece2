package org.hemwright.paper.sheet;

import java.util.Arrays;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Pixels.
 *
 * @param width in pixels, at least 1
 * @param height in pixels, at least 1
 * @param png as a PNG file; not to be written to
 */
@SuppressWarnings("ArrayRecordComponent")
public record Raster(int width, int height, byte[] png) {
  public Raster {
    if (width < 1 || height < 1) {
      throw new IllegalArgumentException("a picture has a pixel at least");
    }
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Raster raster
        && width == raster.width
        && height == raster.height
        && Arrays.equals(png, raster.png);
  }

  @Override
  public int hashCode() {
    return Objects.hash(width, height, Arrays.hashCode(png));
  }

  @Override
  public String toString() {
    return "Raster[" + width + " × " + height + "]";
  }
}
