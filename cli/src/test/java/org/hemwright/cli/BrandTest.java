package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hemwright.paper.type.Face;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The house's logo and line on what a maker prints, as a PDF library reads them. */
class BrandTest {
  private static final String LINE = "terncove.example, for your own sewing";

  @TempDir Path folder;

  private final Console console = new Console();

  @BeforeEach
  void aSmallPattern() throws IOException {
    document("logo \"tern.svg\"\nfooter \"" + LINE + "\"");
    Files.writeString(folder.resolve("sizes.csv"), "size,hip (cm)\n8,92\n10,96\n");
    Files.createDirectories(folder.resolve("pictures"));
    Files.writeString(
        folder.resolve("pictures/tern.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' width='90' height='30'>"
            + "<path d='M0 0H90L45 30Z'/></svg>");
  }

  @Test
  void theLineStandsOnEveryPageAndTheLogoOnTheFirst() throws IOException {
    assertThat(console.run("paper", folder.toString(), "--on", "a4,a0"))
        .as(console.err())
        .isEqualTo(0);
    for (String paper : new String[] {"pages-a4", "a0"}) {
      byte[] bytes =
          Files.readAllBytes(folder.resolve("out/paper/small-square-1.0-" + paper + ".pdf"));
      try (PDDocument document = Loader.loadPDF(bytes)) {
        for (int page = 1; page <= document.getNumberOfPages(); page++) {
          PDFTextStripper text = new PDFTextStripper();
          text.setStartPage(page);
          text.setEndPage(page);
          assertThat(text.getText(document)).as(paper + " page " + page).contains(LINE);
        }
        assertThat(document.getPage(0).getResources().getXObjectNames()).hasSize(1);
      }
    }
  }

  @Test
  void aLogoThatIsNotThereOrNoPictureIsTold() throws IOException {
    document("logo \"turn.svg\"");
    assertThat(console.run("paper", folder.toString())).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err())
        .contains(
            "pattern.hem:6:1: There is no “turn.svg” among the pictures of the folder; did you mean"
                + " “tern.svg”?");

    console.clear();
    Files.writeString(folder.resolve("pictures/tern.png"), "no picture");
    document("logo \"tern.png\"");
    assertThat(console.run("paper", folder.toString())).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err())
        .contains("pattern.hem:6:1: “tern.png” is no picture that can be read");

    console.clear();
    document("logo \"../tern.svg\"");
    assertThat(console.run("paper", folder.toString())).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err()).contains("There is no “../tern.svg” among the pictures");
  }

  @Test
  void aFontThatCannotBeTakenIsToldAndNothingOutsideTheFolderIsRead() throws IOException {
    document("font \"../tern.ttf\"");
    Files.writeString(folder.resolve("tern.ttf"), "no font");
    assertThat(console.run("paper", folder.toString())).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err())
        .contains("pattern.hem:6:1: “fonts/../tern.ttf” leads out of the pattern folder");

    console.clear();
    document("font \"tern.ttf\"\nfont \"turn.ttf\"");
    Files.createDirectories(folder.resolve("fonts"));
    Files.writeString(folder.resolve("fonts/tern.ttf"), "no font");
    assertThat(console.run("paper", folder.toString())).isEqualTo(ExitCode.INPUT_WRONG);
    assertThat(console.err())
        .contains("pattern.hem:6:1: “tern.ttf” is no font that can be read")
        .contains("pattern.hem:7:1: There is no file “fonts/turn.ttf” in the pattern folder")
        .contains("pattern.hem:7:1: “tern.ttf” was already named for what “turn.ttf” is to set");
  }

  @Test
  void theHousesFontSetsTheTitleAndTheLineOnEveryPage() throws IOException {
    document("font \"tern.ttf\"\nfooter \"" + LINE + "\"");
    Files.createDirectories(folder.resolve("fonts"));
    // An open font of the library that ours are from (SIL Open Font License 1.1).
    try (InputStream black =
        Face.class.getResourceAsStream("/fonts/ttf/SourceSansPro/SourceSansPro-Black.ttf")) {
      Files.write(folder.resolve("fonts/tern.ttf"), black.readAllBytes());
    }
    assertThat(console.run("paper", folder.toString(), "--on", "a4"))
        .as(console.err())
        .isEqualTo(0);
    byte[] bytes = Files.readAllBytes(folder.resolve("out/paper/small-square-1.0-pages-a4.pdf"));
    try (PDDocument document = Loader.loadPDF(bytes)) {
      for (PDPage page : document.getPages()) {
        Set<String> fonts = new TreeSet<>();
        for (COSName name : page.getResources().getFontNames()) {
          fonts.add(page.getResources().getFont(name).getName());
        }
        assertThat(fonts).anyMatch(name -> name.endsWith("SourceSansPro-Black"));
      }
    }
  }

  @Test
  void aLineThatIsTooLongForAPageIsNotPublished() throws IOException {
    document("footer \"" + "for your own sewing ".repeat(8) + "\"");
    assertThat(console.run("publish", folder.toString())).isEqualTo(ExitCode.CHECK_FAILS);
    assertThat(console.err()).contains("The footer is wider than a page").contains("shorten it");
  }

  private void document(String brand) throws IOException {
    Files.writeString(
        folder.resolve("pattern.hem"),
        SmallSquare.DOCUMENT
            .replace("sizes from", brand + "\nsizes from")
            .replace("main knit", "main woven"));
  }
}
