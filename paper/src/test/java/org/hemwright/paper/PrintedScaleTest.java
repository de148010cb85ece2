package org.hemwright.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages measured with a ruler that is not ours: poppler's pixels at 600 to the inch. */
class PrintedScaleTest {
  private static final double PER_MM = 600 / 25.4;
  private static final double RIGHT = 0.1;

  @TempDir static Path folder;

  @BeforeAll
  static void print() throws IOException {
    SizeRun run = SandlingSkirt.run(9, new PaperChoices(List.of(), false, false, false));
    PrintedPattern printed =
        Paper.of(
            run,
            PaperOptions.everything()
                .on(PageFormat.EITHER, PageFormat.ROLL)
                .withoutGroups()
                .withSingles(List.of("14")));
    Files.write(folder.resolve("pages.pdf"), printed.files().get(0).bytes());
    Files.write(folder.resolve("roll.pdf"), printed.files().get(1).bytes());
  }

  /** A part of a page in pixels, counted from its upper left corner. */
  private static BufferedImage pixels(String file, int page, int x, int y, int width, int height)
      throws IOException {
    OutsideTool.run(
        folder,
        "pdftoppm",
        "-r",
        "600",
        "-f",
        Integer.toString(page),
        "-l",
        Integer.toString(page),
        "-x",
        Integer.toString(x),
        "-y",
        Integer.toString(y),
        "-W",
        Integer.toString(width),
        "-H",
        Integer.toString(height),
        "-gray",
        "-singlefile",
        "-png",
        file,
        "part");
    return ImageIO.read(folder.resolve("part.png").toFile());
  }

  /** Where dark runs begin and end along a row, in pixels. */
  private static List<int[]> darkAlongRow(BufferedImage image, int y) {
    List<int[]> runs = new ArrayList<>();
    for (int x = 0; x < image.getWidth(); x++) {
      if ((image.getRGB(x, y) & 0xFF) < 128) {
        int from = x;
        while (x < image.getWidth() && (image.getRGB(x, y) & 0xFF) < 128) {
          x++;
        }
        runs.add(new int[] {from, x});
      }
    }
    return runs;
  }

  private static List<int[]> darkAlongColumn(BufferedImage image, int x) {
    List<int[]> runs = new ArrayList<>();
    for (int y = 0; y < image.getHeight(); y++) {
      if ((image.getRGB(x, y) & 0xFF) < 128) {
        int from = y;
        while (y < image.getHeight() && (image.getRGB(x, y) & 0xFF) < 128) {
          y++;
        }
        runs.add(new int[] {from, y});
      }
    }
    return runs;
  }

  // Handbook check value 31: 10 cm is 283.465 pt, 1 in is 72 pt; outside edges, both ways.
  @Test
  void testSquaresAreTrue() throws IOException {
    int left = (int) (8 * PER_MM);
    int top = (int) ((12.7 + 55) * PER_MM);
    BufferedImage across = pixels("pages.pdf", 1, left, top, (int) (108 * PER_MM), 4);
    List<int[]> large = darkAlongRow(across, 1);
    assertThat(large).hasSize(2);
    assertThat((large.get(1)[1] - large.get(0)[0]) / PER_MM).isCloseTo(100, within(RIGHT));

    int column = (int) ((10 + 5) * PER_MM);
    BufferedImage down =
        pixels("pages.pdf", 1, column, (int) ((12.7 + 32) * PER_MM), 4, (int) (110 * PER_MM));
    List<int[]> sides = darkAlongColumn(down, 1);
    assertThat((sides.get(1)[1] - sides.get(0)[0]) / PER_MM).isCloseTo(100, within(RIGHT));

    int inch = (int) ((10 + 108) * PER_MM);
    BufferedImage small =
        pixels("pages.pdf", 1, inch, (int) ((12.7 + 40) * PER_MM), (int) (32 * PER_MM), 4);
    List<int[]> edges = darkAlongRow(small, 1);
    assertThat((edges.get(1)[1] - edges.get(0)[0]) / PER_MM).isCloseTo(25.4, within(RIGHT));
    int inchColumn = (int) ((10 + 115) * PER_MM);
    BufferedImage high =
        pixels("pages.pdf", 1, inchColumn, (int) ((12.7 + 33) * PER_MM), 4, (int) (32 * PER_MM));
    List<int[]> ends = darkAlongColumn(high, 1);
    assertThat((ends.get(1)[1] - ends.get(0)[0]) / PER_MM).isCloseTo(25.4, within(RIGHT));
  }

  // The waistband of size 14 lies upright on the roll: its long cut edges are 86 mm apart, its ends
  // its own length with 10 mm of allowance at both.
  @Test
  void aKnownSeamIsTrueOnTheRoll() throws IOException {
    Size size = new Size(3, "14");
    double length = SandlingSkirt.bandLength(size) + 20;
    String info = OutsideTool.run(folder, "pdfinfo", "roll.pdf");
    double points =
        Double.parseDouble(info.replaceAll("(?s).*Page size: +[0-9.]+ x ([0-9.]+) pts.*", "$1"));
    int high = (int) (points / 72 * 600);
    int[] band = band(high);
    assertThat((band[1] - band[0]) / PER_MM).isCloseTo(86, within(RIGHT));
    int inside = band[0] + (int) (62 * PER_MM);
    BufferedImage strip = pixels("roll.pdf", 1, inside, 0, 4, high);
    List<int[]> ends = longest(darkAlongColumn(strip, 1), length);
    double measured = (middle(ends.get(1)) - middle(ends.get(0))) / PER_MM;
    assertThat(measured).isCloseTo(length, within(RIGHT));
  }

  private static double middle(int[] run) {
    return (run[0] + run[1]) / 2.0;
  }

  /**
   * The two long edges of the band: lines 0.6 mm wide, 86 mm apart, in a row well down the roll.
   */
  private static int[] band(int high) throws IOException {
    for (double share = 0.55; share < 0.98; share += 0.01) {
      BufferedImage row = pixels("roll.pdf", 1, 0, (int) (high * share), (int) (914.4 * PER_MM), 3);
      List<int[]> runs = darkAlongRow(row, 1);
      for (int[] one : runs) {
        for (int[] other : runs) {
          double apart = (middle(other) - middle(one)) / PER_MM;
          boolean lines = isCutLine(one) && isCutLine(other);
          if (lines && Math.abs(apart - 86) < 0.5) {
            return new int[] {(int) Math.round(middle(one)), (int) Math.round(middle(other))};
          }
        }
      }
    }
    throw new AssertionError("no band of 86 mm is seen on the roll");
  }

  private static boolean isCutLine(int[] run) {
    double width = (run[1] - run[0]) / PER_MM;
    return width > 0.5 && width < 0.75;
  }

  /** The pair of cut lines whose distance is nearest to a length. */
  private static List<int[]> longest(List<int[]> runs, double length) {
    List<int[]> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    for (int[] one : runs) {
      for (int[] other : runs) {
        double off = Math.abs((middle(other) - middle(one)) / PER_MM - length);
        if (isCutLine(one) && isCutLine(other) && off < least) {
          least = off;
          best = List.of(one, other);
        }
      }
    }
    assertThat(best).as("both ends of the band").hasSize(2);
    return best;
  }
}
