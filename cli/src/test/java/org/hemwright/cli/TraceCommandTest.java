package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.hemwright.exchange.photograph.Guide;
import org.hemwright.exchange.photograph.PhotographReader;
import org.hemwright.exchange.photograph.Straightening;
import org.hemwright.geometry.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Outlines off photographs and scans, and the card that is printed for them. */
class TraceCommandTest {
  /** Ten pixels a millimetre, so that the edges of the squares fall between pixels. */
  private static final double DOTS_PER_INCH = 254;

  @TempDir Path folder;

  private final Console console = new Console();

  @Test
  void theCardPrintsInTrueSizeAndIsFoundOnItsPrint() throws IOException {
    Path card = folder.resolve("card.pdf");
    assertThat(run("trace", "--print-card", card.toString())).isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.err()).contains("Written to " + card);
    BufferedImage print;
    try (PDDocument document = Loader.loadPDF(card.toFile())) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      print = new PDFRenderer(document).renderImageWithDPI(0, (float) DOTS_PER_INCH);
    }
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    ImageIO.write(print, "png", png);
    Straightening seen =
        PhotographReader.read("card.png", png.toByteArray(), new Guide.Card())
            .straightening()
            .orElseThrow();
    for (Point corner : List.of(Point.ORIGIN, new Point(170, 0), new Point(85, 230))) {
      assertThat(seen.pixelsPerMm(corner)).isCloseTo(DOTS_PER_INCH / 25.4, within(0.005));
    }
    // A4 or Letter alike: 210 mm wide, the frame of 170 in its middle.
    assertThat(seen.pixel(Point.ORIGIN).x()).isCloseTo(20 * DOTS_PER_INCH / 25.4, within(0.3));
  }

  @Test
  void aScanWithARulerBecomesADrawingInTrueSize() throws IOException {
    Path scan = scan();
    Path drawing = folder.resolve("traced").resolve("cuff.svg");
    String[] asked = {
      "trace",
      scan.toString(),
      "--ruler",
      "4in",
      "--marks",
      "100,500 500,500",
      "--into",
      drawing.toString()
    };
    assertThat(run(asked)).isEqualTo(ExitCode.ALL_WELL);
    // 300 by 200 pixels at 100 pixels an inch: 76.2 by 50.8 mm.
    assertThat(console.out()).contains("\"outline\": closed, 25.4 cm long, 4 corners");
    assertThat(console.err()).contains("Written to " + drawing);
    assertThat(run("trace", drawing.toString())).isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.out())
        .startsWith("In true size.")
        .contains("closed, 25.4 cm long, 4 corners");
  }

  @Test
  void withoutAPlaceToKeepItNothingIsWritten() throws IOException {
    Path scan = scan();
    assertThat(run("trace", scan.toString(), "--ruler", "4in", "--marks", "100,500 500,500"))
        .isEqualTo(ExitCode.ALL_WELL);
    assertThat(console.err()).contains("Nothing is written yet.");
    try (var files = Files.list(folder)) {
      assertThat(files).containsExactly(scan);
    }
  }

  @Test
  void whatIsAmissIsToldAllAtOnce() throws IOException {
    String scan = scan().toString();
    assertThat(run("trace", scan, "--ruler", "long", "--marks", "100;500 5,5 7,7"))
        .isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err())
        .contains("\"100\" is no place")
        .contains("--ruler long: that is no length");
    assertThat(run("trace", scan, "--ruler", "30cm")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("say with --marks where the two marks are");
    assertThat(run("trace", scan, "--card", "1,1 2,2 3,3 4,4")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("in one row or on one spot");
    assertThat(run("trace", scan)).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("reference card is not seen");
    assertThat(run("trace")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("name a drawing or a photograph");
    assertThat(run("trace", "some.svg", "--into", "other.svg")).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("are of a photograph");
  }

  /** A white piece of 300 by 200 pixels on dark ground. */
  private Path scan() throws IOException {
    BufferedImage image = new BufferedImage(700, 600, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < 600; y++) {
      for (int x = 0; x < 700; x++) {
        boolean piece = x >= 180 && x < 480 && y >= 140 && y < 340;
        image.setRGB(x, y, piece ? 0xf4f2ea : 0x35302a);
      }
    }
    Path scan = folder.resolve("cuff.png");
    ImageIO.write(image, "png", scan.toFile());
    return scan;
  }

  private int run(String... args) {
    console.clear();
    return console.run(args);
  }
}
