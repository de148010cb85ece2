package org.hemwright.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.paper.tile.PatternPages;
import org.hemwright.pattern.PaperChoices;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PaperTest {
  private static final PaperOptions ALL = PaperOptions.everything().withSingles(List.of("14"));
  private static final PrintedPattern PRINTED = Paper.of(SandlingSkirt.run(), ALL);
  private static final String STEM = "sandling-skirt-1.0";

  private static PrintedFile file(String name) {
    return PRINTED.file(name).orElseThrow();
  }

  private static PrintedFile pages(PageFormat format) {
    return file(STEM + "-" + format.fileName() + ".pdf");
  }

  private static String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper = new PDFTextStripper();
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document).replace('\u00a0', ' ');
  }

  @Test
  void everyPaperAndEverySingleSizeHasAFile() {
    List<String> names = new ArrayList<>();
    for (PageFormat format : PageFormat.values()) {
      names.add(STEM + "-" + format.fileName() + ".pdf");
    }
    names.add(STEM + "-sizes-8-to-24.svg");
    for (PageFormat format : PageFormat.values()) {
      names.add("size-14/" + STEM + "-size-14-" + format.fileName() + ".pdf");
    }
    names.add("size-14/" + STEM + "-size-14.svg");
    assertThat(PRINTED.files().stream().map(PrintedFile::name)).containsExactlyElementsOf(names);
    assertThat(PRINTED.findings()).isEmpty();
  }

  // Handbook check values 30 and 34, in points.
  @ParameterizedTest
  @EnumSource(PageFormat.class)
  void pagesHaveTheirPapersSize(PageFormat format) throws IOException {
    double width = format.paperWidth() * 72 / 25.4;
    double height = format.paperHeight() * 72 / 25.4;
    try (PDDocument document = Loader.loadPDF(pages(format).bytes())) {
      assertThat(document.getNumberOfPages()).isEqualTo(pages(format).pages());
      for (int i = 0; i < document.getNumberOfPages(); i++) {
        PDRectangle page = document.getPage(i).getMediaBox();
        assertThat((double) page.getWidth()).isCloseTo(width, within(0.001));
        if (format == PageFormat.ROLL) {
          assertThat((double) page.getHeight()).isBetween(1000.0, 14_400.0);
        } else {
          assertThat((double) page.getHeight()).isCloseTo(height, within(0.001));
        }
      }
    }
  }

  @Test
  void blankPagesAreLeftOutAndCounted() throws IOException {
    PrintedFile file = pages(PageFormat.EITHER);
    assertThat(file.groups()).hasSize(1);
    PrintedFile.GroupPages group = file.groups().get(0);
    assertThat(file.pages()).as("key, map and pages with pieces").isEqualTo(2 + group.pages());
    assertThat(group.pagesOfSize().keySet()).containsExactlyElementsOf(group.sizes());
    assertThat(group.pagesOfSize().values()).allMatch(count -> count <= group.pages());
    try (PDDocument document = Loader.loadPDF(file.bytes())) {
      assertThat(text(document, 2)).contains("How the pages lie");
      int all = document.getNumberOfPages();
      for (int page = 1; page <= all; page++) {
        assertThat(text(document, page))
            .contains("Sandling skirt, version 1.0, Tern Cove Patterns")
            .contains("Sizes 8 to 24")
            .contains("Page " + page + " of " + all);
      }
      assertThat(text(document, 3)).containsPattern("[A-Z]\\d+ Sandling skirt");
    }
  }

  @Test
  void theFirstPageTellsHowToPrint() throws IOException {
    try (PDDocument document = Loader.loadPDF(pages(PageFormat.EITHER).bytes())) {
      assertThat(text(document, 1))
          .contains("10 cm × 10 cm")
          .contains("1 in × 1 in")
          .contains("from outside edge to outside edge")
          .contains("A4 or Letter")
          .contains("actual size")
          .contains("map on page 2, pieces on pages 3 to");
    }
  }

  @Test
  void everySizeHasALayerThatHidesItsLinesOnly() throws IOException {
    byte[] bytes = pages(PageFormat.EITHER).bytes();
    try (PDDocument document = Loader.loadPDF(bytes)) {
      PDOptionalContentProperties layers = document.getDocumentCatalog().getOCProperties();
      assertThat(layers.getGroupNames())
          .containsExactly(
              Stream.concat(
                      Stream.of("All sizes"),
                      IntStream.rangeClosed(4, 12).mapToObj(i -> "Size " + 2 * i))
                  .toArray(String[]::new));
      int all = ink(document);
      layers.setGroupEnabled("Size 24", false);
      int withoutOne = ink(document);
      layers.getOptionalContentGroups().stream()
          .filter(group -> !group.getName().equals("All sizes"))
          .forEach(group -> layers.setGroupEnabled(group, false));
      int common = ink(document);
      layers.setGroupEnabled("Size 14", true);
      int one = ink(document);
      assertThat(withoutOne).isLessThan(all);
      assertThat(common).isLessThan(withoutOne).isPositive();
      assertThat(one).isGreaterThan(common).isLessThan(withoutOne);
    }
  }

  /** Dark pixels on the first page with pieces. */
  private static int ink(PDDocument document) throws IOException {
    var image = new PDFRenderer(document).renderImageWithDPI(2, 60);
    int dark = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        dark += (image.getRGB(x, y) >> 8 & 0xFF) < 200 ? 1 : 0;
      }
    }
    return dark;
  }

  @Test
  void theSameRunMakesTheSameBytes() {
    PrintedPattern again = Paper.of(SandlingSkirt.run(), ALL);
    assertThat(again).isEqualTo(PRINTED);
  }

  @ParameterizedTest
  @EnumSource(PageFormat.class)
  void outsideReadersFindEveryFileSound(PageFormat format, @TempDir Path folder)
      throws IOException {
    Files.write(folder.resolve("a.pdf"), pages(format).bytes());
    assertThat(OutsideTool.run(folder, "qpdf", "--check", "a.pdf"))
        .contains("No syntax or stream encoding errors");
    Stream<String> fonts = OutsideTool.run(folder, "pdffonts", "a.pdf").lines().skip(2);
    assertThat(fonts).isNotEmpty().allMatch(line -> line.contains(" yes yes yes "));
    assertThat(OutsideTool.run(folder, "pdfinfo", "a.pdf"))
        .contains("Title:           Sandling skirt, version 1.0, sizes 8 to 24")
        .contains("Author:          Tern Cove Patterns");
  }

  @Test
  void aProofIsMarkedOnEveryPage() throws IOException {
    PrintedPattern proof =
        Paper.of(SandlingSkirt.run(), PaperOptions.everything().on(PageFormat.A4).asProof("PROOF"));
    try (PDDocument document = Loader.loadPDF(proof.files().get(0).bytes())) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        assertThat(text(document, page)).contains("PROOF");
      }
    }
  }

  /** Every drawing too, and no mark lies where anything is drawn. */
  @Test
  void aProofIsMarkedOnEveryDrawingClearOfItsLines() throws IOException {
    String word = "Proof, not for sale";
    PaperOptions options = PaperOptions.everything().withPictures();
    List<PrintedFile> plain = drawings(options);
    List<PrintedFile> marked = drawings(options.asProof(word));
    assertThat(marked).hasSameSizeAs(plain).hasSizeGreaterThanOrEqualTo(5);
    for (int i = 0; i < marked.size(); i++) {
      PrintedFile file = marked.get(i);
      if (file.name().endsWith("svg")) {
        assertThat(text(file)).as(file.name()).contains(word);
        assertThat(text(plain.get(i))).doesNotContain(word);
      } else {
        BufferedImage before = ImageIO.read(new ByteArrayInputStream(plain.get(i).bytes()));
        BufferedImage after = ImageIO.read(new ByteArrayInputStream(file.bytes()));
        int strip = (after.getHeight() - before.getHeight()) / 2;
        assertThat(after.getWidth()).isEqualTo(before.getWidth());
        assertThat(ink(after, 0, strip)).as("above " + file.name()).isPositive();
        assertThat(ink(after, after.getHeight() - strip, after.getHeight())).isPositive();
        assertThat(ink(before, 0, before.getHeight()))
            .as("what is drawn in " + file.name())
            .isCloseTo(ink(after, strip, after.getHeight() - strip), withinPercentage(1));
      }
    }
  }

  private static List<PrintedFile> drawings(PaperOptions options) {
    return Paper.jobs(SandlingSkirt.run(), options).stream()
        .filter(job -> !job.name().endsWith("pdf"))
        .map(Paper.Job::make)
        .toList();
  }

  private static String text(PrintedFile file) {
    return new String(file.bytes(), StandardCharsets.UTF_8);
  }

  /** How much ink lies on some rows; pixels that are part covered count in part. */
  private static long ink(BufferedImage image, int from, int to) {
    long ink = 0;
    for (int y = from; y < to; y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        ink += 255 - (image.getRGB(x, y) >> 8 & 0xFF);
      }
    }
    return ink;
  }

  /** The head of a page says sizes and number too; the mark keeps off them. */
  @Test
  void theMarkOfAPageTouchesNoOtherWords() {
    for (PageFormat format : PageFormat.values()) {
      PatternPages pages =
          Printing.of(SandlingSkirt.run(), PaperOptions.everything().asProof("Proof, not for sale"))
              .pages(format);
      for (Sheet sheet : pages.sheets()) {
        List<Words> words =
            sheet.items().stream().filter(Words.class::isInstance).map(Words.class::cast).toList();
        Words mark =
            words.stream()
                .filter(each -> each.line().text().equals("Proof, not for sale"))
                .findFirst()
                .orElseThrow();
        assertThat(words)
            .filteredOn(each -> !each.equals(mark) && Math.abs(each.at().y() - mark.at().y()) < 1)
            .allMatch(
                each ->
                    each.bounds().maxX() < mark.bounds().minX()
                        || each.bounds().minX() > mark.bounds().maxX());
      }
    }
  }

  @Test
  void oneFileHoldsAllGroupsAndRectanglesMayBeATable() throws IOException {
    SizeRun run = SandlingSkirt.run(24, new PaperChoices(List.of(), false, false, true));
    PrintedPattern printed = Paper.of(run, PaperOptions.everything().on(PageFormat.EITHER));
    assertThat(printed.files()).hasSize(1);
    PrintedFile file = printed.files().get(0);
    assertThat(file.groups().stream().map(PrintedFile.GroupPages::sizes))
        .hasSize(3)
        .allMatch(sizes -> sizes.size() <= PaperChoices.MOST_SIZES_IN_A_GROUP);
    try (PDDocument document = Loader.loadPDF(file.bytes())) {
      String table = text(document, 2);
      double cut = SandlingSkirt.bandLength(run.pattern().chart().sizes().get(3)) + 20;
      assertThat(table)
          .contains("Pieces to cut by measure")
          .contains("Waistband")
          .contains("Grain along the width")
          .contains("14 %.1f cm".formatted(cut / 10))
          .contains("8.6 cm · 3 ⅜ in");
      for (int page = 3; page <= document.getNumberOfPages(); page++) {
        assertThat(text(document, page)).doesNotContain("Waistband");
      }
    }
  }

  @Test
  void everyFindingHasItsSentence() {
    Wording wording = Wording.of(Paper.messages());
    assertThat(
            wording.lacking(
                List.of(
                    "label-fit",
                    "words-left-out",
                    "paper-too-narrow",
                    "letters-missing",
                    "stitch-lines-close")))
        .isEmpty();
    List<Finding> findings = Paper.findings(SandlingSkirt.tiny(), PaperOptions.everything());
    assertThat(findings.stream().map(wording::message))
        .first()
        .isEqualTo(
            "The label “Belt tab” finds no room inside piece tab and stands beside it."
                + " That is so in sizes 8 and 10.");
  }

  // With 10 mm from size to size and 10 mm of allowance each stitch line lies on the next smaller
  // size's cut line.
  @Test
  void stitchLinesOnOtherSizesCutLinesAreFound() {
    SizeRun shown = SandlingSkirt.run(9, new PaperChoices(List.of(), true, false, false));
    SizeRun hidden = SandlingSkirt.run(9, new PaperChoices(List.of(), false, false, false));
    PaperOptions options = PaperOptions.everything().on(PageFormat.EITHER);
    assertThat(Paper.findings(shown, options).stream().map(Finding::code))
        .containsOnly("stitch-lines-close");
    assertThat(Paper.findings(shown, options).get(0).subject()).isEqualTo("panel");
    assertThat(Paper.findings(hidden, options)).isEmpty();
  }

  @Test
  void lettersThatTheTypeLacksAreFound() {
    List<Finding> findings =
        Paper.findings(SandlingSkirt.titled("Sandling 裙"), PaperOptions.everything());
    assertThat(findings.stream().map(Finding::code)).contains("letters-missing");
    assertThat(Wording.of(Paper.messages()).message(findings.get(0)))
        .isEqualTo(
            "“Sandling 裙” has letters that our type does not have, and that print as “?”: 裙.");
  }

  @Test
  void jobsMayBeMadeSideBySide() {
    List<PrintedFile> together =
        Printing.of(SandlingSkirt.run(), ALL).jobs().parallelStream().map(Paper.Job::make).toList();
    assertThat(together).isEqualTo(PRINTED.files());
  }
}
