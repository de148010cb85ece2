package org.hemwright.workbench.booklet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.assertj.core.data.Offset;
import org.hemwright.booklet.BookletMaking;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Booklet;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.write.BookletHtml;
import org.hemwright.booklet.write.BookletPdf;
import org.hemwright.booklet.write.PrintForm;
import org.hemwright.paper.type.Face;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.folder.PatternFolder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** The printed booklet, as other programs see it: veraPDF, qpdf, poppler. */
@Tag("whole")
class BookletPdfTest {
  private static final PrintForm A4 = new PrintForm(PrintForm.Paper.A4, false);
  private static final PrintForm LARGE = new PrintForm(PrintForm.Paper.LETTER, true);
  private static final Map<String, byte[]> WRITTEN = new ConcurrentHashMap<>();

  @TempDir private static Path folder;

  @BeforeAll
  static void start() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  private static byte[] pdf(String example) {
    return WRITTEN.computeIfAbsent(example, name -> write(name, A4));
  }

  private static byte[] write(String example, PrintForm form) {
    return BookletPdf.write(Examples.booklet(example).booklet(), form, Optional.empty()).bytes();
  }

  private static ValidationResult judged(byte[] pdf) throws Exception {
    try (PDFAParser parser =
        Foundries.defaultInstance()
            .createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1)) {
      return Foundries.defaultInstance()
          .createValidator(PDFAFlavour.PDFUA_1, false)
          .validate(parser);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void itIsPdfUa1(String example) throws Exception {
    // ISO 14289-1:2014, as veraPDF 1.28 judges it.
    ValidationResult result = judged(pdf(example));
    assertThat(result.getTestAssertions()).isEmpty();
    assertThat(result.isCompliant()).isTrue();
  }

  @Test
  void largePrintOnLetterIsPdfUa1Too() throws Exception {
    assertThat(judged(write("eddy-skirt", LARGE)).isCompliant()).isTrue();
  }

  @Test
  void setInTheHousesOwnFontsItIsPdfUa1TooAndHoldsThem() throws Exception {
    Path own = Files.createDirectory(folder.resolve("own"));
    Files.createDirectory(own.resolve("fonts"));
    PackedFolder tee = new PackedFolder("inlet-tee");
    for (String name : List.of("sizes.csv", "booklet.md")) {
      Files.write(own.resolve(name), ((FolderFile.Content) tee.file(name)).bytes());
    }
    String document =
        new String(
            ((FolderFile.Content) tee.file(PatternFolder.DOCUMENT)).bytes(),
            StandardCharsets.UTF_8);
    Files.writeString(
        own.resolve(PatternFolder.DOCUMENT),
        document.replaceFirst("\nby ", "\nfont \"her.ttf\"\nfont \"heavy.ttf\" for titles\nby "));
    // Open fonts of the library that ours are from (SIL Open Font License 1.1).
    Files.write(own.resolve("fonts/her.ttf"), font("ExtraLight"));
    Files.write(own.resolve("fonts/heavy.ttf"), font("Black"));
    Evaluated evaluated = Workbench.evaluate(new DiskFolder(own));
    assertThat(evaluated.problems()).isEmpty();
    BookletMaking made = Examples.booklet(new DiskFolder(own), "");
    assertThat(made.findings()).isEmpty();
    byte[] pdf = BookletPdf.write(made.booklet(), A4, Optional.empty()).bytes();
    ValidationResult result = judged(pdf);
    assertThat(result.getTestAssertions()).isEmpty();
    assertThat(result.isCompliant()).isTrue();
    Set<String> embedded = new TreeSet<>();
    try (PDDocument read = Loader.loadPDF(pdf)) {
      for (PDPage page : read.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertThat(font.isEmbedded()).as(font.getName()).isTrue();
          embedded.add(font.getName().replaceFirst("^[A-Z]{6}[+]", ""));
        }
      }
    }
    assertThat(embedded)
        .contains("SourceSansPro-ExtraLight", "SourceSansPro-Black")
        .doesNotContain("SourceSansPro-Light");
    assertThat(BookletHtml.of(made.booklet(), Optional.empty()))
        .contains("@font-face { font-family: OwnTitles;");
    assertThat(made.posts(Optional.of("A proof")))
        .filteredOn(file -> file.name().endsWith(".html"))
        .isNotEmpty()
        .allSatisfy(
            file ->
                assertThat(new String(file.bytes(), StandardCharsets.UTF_8))
                    .contains("@font-face { font-family: Own;", "<p class=\"proof\">A proof</p>"));
  }

  private static byte[] font(String style) throws IOException {
    String file = "/fonts/ttf/SourceSansPro/SourceSansPro-" + style + ".ttf";
    try (InputStream stream = Face.class.getResourceAsStream(file)) {
      return stream.readAllBytes();
    }
  }

  @Test
  void theSameBookletIsTheSameBytes() {
    assertThat(write("inlet-tee", A4)).isEqualTo(pdf("inlet-tee"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void qpdfFindsNothingAmiss(String example) throws Exception {
    Path file = Files.write(folder.resolve(example + ".pdf"), pdf(example));
    Optional<Answer> answer = run("qpdf", "--check", file.toString());
    assumeTrue(answer.isPresent(), "qpdf is not installed");
    assertThat(answer.get().code()).as(answer.get().text()).isZero();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"eddy-skirt", "inlet-tee", "marram-trousers", "brackish-skirt", "shingle-shirt"})
  void popplerReadsItsTextInTheOrderOfTheBooklet(String example) throws Exception {
    Path file = Files.write(folder.resolve(example + "-text.pdf"), pdf(example));
    Optional<Answer> answer = run("pdftotext", "-raw", file.toString(), "-");
    assumeTrue(answer.isPresent(), "poppler is not installed");
    String text = plain(answer.get().text());
    int from = 0;
    for (Block block : Examples.booklet(example).booklet().blocks()) {
      if (block instanceof Block.Step step) {
        String title = plain(Inline.plain(step.title()));
        int at = text.indexOf(title, from);
        assertThat(at).as(title).isNotNegative();
        from = at + title.length();
        for (Block words : step.words()) {
          if (words instanceof Block.Paragraph paragraph) {
            String told = plain(Inline.plain(paragraph.text()));
            int next = text.indexOf(told, from);
            assertThat(next).as(told).isNotNegative();
            from = next + told.length();
          }
        }
      }
    }
    assertThat(from).isPositive();
  }

  /**
   * Without blanks and line ends, where a hyphen may stand at the end of a line; fractions as their
   * digits (Unicode Standard Annex 15, form KC).
   */
  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKC)
        .replaceAll("[\\s\\u00a0]+", "")
        .replace("-", "");
  }

  @ParameterizedTest
  @ValueSource(strings = {"eddy-skirt", "inlet-tee", "shingle-shirt"})
  void everyFigureIsTaggedWithWhatItShows(String example) throws Exception {
    Path file = Files.write(folder.resolve(example + "-tags.pdf"), pdf(example));
    Optional<Answer> answer = run("pdfinfo", "-struct", file.toString());
    assumeTrue(answer.isPresent(), "poppler is not installed");
    long figures = answer.get().text().lines().filter(l -> l.strip().startsWith("Figure")).count();
    Booklet booklet = Examples.booklet(example).booklet();
    long logo = booklet.logo().stream().count();
    assertThat(figures).isEqualTo(booklet.figures().size() + logo);
    String raw = new String(qdf(file), StandardCharsets.ISO_8859_1);
    assertThat(raw.split("/Alt ", -1).length - 1).isGreaterThanOrEqualTo((int) figures);
  }

  private static byte[] qdf(Path file) throws Exception {
    Path open = folder.resolve("open.pdf");
    Optional<Answer> answer =
        run("qpdf", "--qdf", "--object-streams=disable", file.toString(), open.toString());
    assumeTrue(answer.isPresent(), "qpdf is not installed");
    return Files.readAllBytes(open);
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void theStretchGaugeIsRightOnTheRaster(boolean letter) throws Exception {
    // Handbook section 4: held over 10 cm; the eddy skirt asks for 45 %.
    PrintForm form = letter ? LARGE : A4;
    Path file = Files.write(folder.resolve("gauge-" + letter + ".pdf"), write("eddy-skirt", form));
    int page = pageOf(file, "of it must stretch by");
    Path picture = folder.resolve("gauge-" + letter);
    Optional<Answer> answer =
        run(
            "pdftoppm",
            "-r",
            "600",
            "-gray",
            "-png",
            "-singlefile",
            "-f",
            Integer.toString(page),
            "-l",
            Integer.toString(page),
            file.toString(),
            picture.toString());
    assumeTrue(answer.isPresent(), "poppler is not installed");
    BufferedImage image = ImageIO.read(Path.of(picture + ".png").toFile());
    double[] reached = longestRule(image);
    // The rule runs from the outside of one end line to the outside of the other: half of 0.3 mm
    // each.
    assertThat(reached[1] - 0.3).isCloseTo(145, Offset.offset(0.1));
    assertThat(upright(image, (int) reached[0], (int) reached[2]) - 0.15)
        .isCloseTo(100, Offset.offset(0.1));
  }

  private static int pageOf(Path file, String words) throws Exception {
    for (int page = 1; page < 60; page++) {
      String number = Integer.toString(page);
      Optional<Answer> answer = run("pdftotext", "-f", number, "-l", number, file.toString(), "-");
      assumeTrue(answer.isPresent(), "poppler is not installed");
      if (answer.get().text().replace('\n', ' ').contains(words)) {
        return page;
      }
    }
    throw new IllegalStateException("no page says " + words);
  }

  /** The row and the length (mm) and the start of the longest unbroken dark row. */
  private static double[] longestRule(BufferedImage image) {
    double[] longest = {0, 0, 0};
    for (int y = 0; y < image.getHeight(); y++) {
      int run = 0;
      for (int x = 0; x <= image.getWidth(); x++) {
        boolean dark = x < image.getWidth() && (image.getRGB(x, y) & 0xff) < 100;
        double mm = run * 25.4 / 600;
        // Rules of tables are as wide as the page's text; the gauge is narrower.
        if (!dark && mm > longest[1] && mm < 150) {
          longest = new double[] {y, mm, x - run};
        }
        run = dark ? run + 1 : 0;
      }
    }
    return longest;
  }

  /** How far from the rule's start the line of the cloth at rest stands (mm). */
  private static double upright(BufferedImage image, int row, int start) {
    int y = row - (int) Math.round(8 * 600 / 25.4);
    int first = start + (int) Math.round(60 * 600 / 25.4);
    int from = -1;
    for (int x = first; x < start + (int) Math.round(120 * 600 / 25.4); x++) {
      boolean dark = (image.getRGB(x, y) & 0xff) < 100;
      if (dark && from < 0) {
        from = x;
      } else if (!dark && from >= 0) {
        double middle = (from + x) / 2.0;
        if (Math.abs((middle - start) * 25.4 / 600 - 100) < 3) {
          return (middle - start) * 25.4 / 600;
        }
        from = -1;
      }
    }
    return 0;
  }

  /** What a program said. */
  private record Answer(int code, String text) {}

  private static Optional<Answer> run(String... command) throws Exception {
    try {
      Process process = new ProcessBuilder(List.of(command)).redirectErrorStream(true).start();
      String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return Optional.of(new Answer(process.waitFor(), text));
    } catch (IOException absent) {
      return Optional.empty();
    }
  }
}
