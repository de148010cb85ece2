package org.hemwright.workroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.FileChooser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.hemwright.exchange.drawing.DrawingReader;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.traced.ReferenceCard;
import org.hemwright.pattern.traced.TracedDrawing;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A paper piece photographed, corrected on its picture, and taken into the pattern as a drawing.
 */
class PhotographPageTest {
  @TempDir Path folder;
  @TempDir Path elsewhere;

  @SuppressWarnings("NullAway.Init")
  private Page page;

  @SuppressWarnings("NullAway.Init")
  private Hands hands;

  @Test
  void aPaperPieceIsCorrectedOnItsPictureAndBecomesADrawing() throws Exception {
    Path photograph = photograph(true);
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      page = chromium.page(open.address(), 1280, 800, false);
      page.setDefaultTimeout(25_000);
      toPhotographs();
      Axe axe = Axe.in(page, 1280, false);
      axe.picture("photograph-open");
      choose(photograph);
      page.waitForSelector(".photo-joint");
      assertThat(page.locator(".photo-joint").count()).isEqualTo(5);
      assertThat(page.locator(".photo-doubt").textContent()).contains("may be off by up to");

      Locator joint = page.locator(".photo-joint").nth(1);
      BoundingBox before = joint.boundingBox();
      drag(joint, 30, 12);
      BoundingBox after = page.locator(".photo-joint").nth(1).boundingBox();
      assertThat(after.x - before.x).isBetween(28.0, 32.0);
      hands.press("Take the last change back");
      assertThat(page.locator(".photo-joint").nth(1).boundingBox().x)
          .isBetween(before.x - 1, before.x + 1);

      hands.press("Mark a notch");
      BoundingBox from = page.locator(".photo-joint").nth(0).boundingBox();
      BoundingBox to = page.locator(".photo-joint").nth(4).boundingBox();
      page.mouse().click((from.x + to.x) / 2 + 6, (from.y + to.y) / 2 + 6);
      page.waitForSelector(".photo-notch", attached());
      hands.press("Draw the grain");
      BoundingBox picture = page.locator(".bring-picture").boundingBox();
      page.mouse().click(picture.x + picture.width / 2, picture.y + picture.height * 0.7);
      page.mouse().click(picture.x + picture.width / 2, picture.y + picture.height * 0.4);
      page.waitForSelector(".photo-grain", attached());
      page.locator(".photo-joint").nth(2).focus();
      page.keyboard().press("Shift+ArrowRight");
      axe.look("photograph-correct");

      hands.press("It is so: say what its edges are");
      page.waitForSelector(".bring-parts select");
      assertThat(page.locator(".sheet").textContent())
          .contains("Drawing: My panel.svg", "The drawing says how large it is.");
      assertThat(page.locator("[data-part='outline']").inputValue()).isEqualTo("cut line");
      assertThat(page.locator("[data-part='notches']").inputValue()).isEqualTo("notches");
      assertThat(page.locator("[data-part='grain']").inputValue()).isEqualTo("grain");
      page.waitForSelector(".bring-lines:has-text('outline traced')");
      axe.picture("photograph-drawing");
      hands.press("It is so: write the piece");
      String document = open.documentOnce(text -> text.contains("traced/My panel.svg"));
      assertThat(document)
          .contains(
              "outline traced \"outline\"",
              "notch edge_4 traced \"notches\"",
              "grain traced \"grain\"");
      TracedDrawing drawing =
          DrawingReader.read(
                  "My panel.svg", Files.readAllBytes(folder.resolve("traced/My panel.svg")))
              .drawing()
              .orElseThrow();
      // The paper is 200 by 300 mm, its upper right corner cut off from 140 and 240 mm on.
      double truth = 200 + 240 + Math.sqrt(2 * 60 * 60) + 140 + 300;
      assertThat(drawing.called("outline").get(0).path().length())
          .isCloseTo(truth, org.assertj.core.data.Offset.offset(0.6));
      assertThat(chromium.complaints()).isEmpty();
      assertThat(open.log()).isEmpty();
    }
  }

  @Test
  void theCardIsPointedAtByKeysWhereItIsNotFound() throws Exception {
    try (OpenFolder open = OpenFolder.example(folder, "eddy-skirt");
        Chromium chromium = Chromium.start()) {
      page = chromium.page(open.address(), 820, 1180, true);
      page.setDefaultTimeout(25_000);
      toPhotographs();
      Axe axe = Axe.in(page, 820, true);
      choose(photograph(false));
      page.waitForSelector(".photo-cross", attached());
      assertThat(page.locator(".sheet").textContent())
          .contains("The reference card is not seen in the picture", "lower left corner");
      axe.look("photograph-pointing");
      page.getByLabel("What tells how large things are")
          .selectOption("two marks of a ruler (a scan)");
      page.getByLabel("Between the two marks it is").fill("hand");
      page.locator(".bring-picture").focus();
      page.keyboard().press("Enter");
      for (int k = 0; k < 10; k++) {
        page.keyboard().press("ArrowRight");
      }
      page.keyboard().press("Enter");
      hands.press("Straighten the picture");
      page.waitForSelector(".grid-problem.fail:has-text('30 cm or 12 in')");
      page.getByLabel("Between the two marks it is").fill("80 mm");
      hands.press("Straighten the picture");
      page.waitForSelector(".photo-joint");
      assertThat(page.locator(".photo-joint").count()).isEqualTo(5);
      assertThat(chromium.complaints()).isEmpty();
    }
  }

  private static Page.WaitForSelectorOptions attached() {
    return new Page.WaitForSelectorOptions()
        .setState(com.microsoft.playwright.options.WaitForSelectorState.ATTACHED);
  }

  private void toPhotographs() {
    hands = new Hands(page);
    page.waitForSelector(".cm-line");
    hands.job("Bring in");
    hands.press("A paper piece, photographed");
    page.waitForSelector(".file-label");
  }

  private void choose(Path file) {
    FileChooser chooser = page.waitForFileChooser(() -> page.locator(".file-label").click());
    chooser.setFiles(file);
  }

  private void drag(Locator what, double dx, double dy) {
    BoundingBox box = what.boundingBox();
    page.mouse().move(box.x + box.width / 2, box.y + box.height / 2);
    page.mouse().down();
    page.mouse().move(box.x + box.width / 2 + dx / 2, box.y + box.height / 2 + dy / 2);
    page.mouse().move(box.x + box.width / 2 + dx, box.y + box.height / 2 + dy);
    page.mouse().up();
  }

  /**
   * A sheet of paper, 200 by 300 mm with a corner cut off, beside the card, four pixels a
   * millimetre.
   */
  private Path photograph(boolean card) throws IOException {
    double scale = 4;
    BufferedImage image = new BufferedImage(2000, 1480, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setColor(new Color(0x6a4a35));
    pen.fillRect(0, 0, 2000, 1480);
    pen.translate(0, 1480);
    pen.scale(scale, -scale);
    pen.translate(30, 30);
    pen.setColor(new Color(0xf2efe6));
    Path2D piece = new Path2D.Double();
    piece.moveTo(0, 0);
    piece.lineTo(200, 0);
    piece.lineTo(200, 240);
    piece.lineTo(140, 300);
    piece.lineTo(0, 300);
    piece.closePath();
    pen.fill(piece);
    if (card) {
      pen.translate(260, 30);
      pen.fill(new Rectangle2D.Double(-15, -15, 200, 260));
      pen.setColor(new Color(0x181818));
      for (List<Point> square : ReferenceCard.squares()) {
        Point corner = square.get(0);
        pen.fill(
            new Rectangle2D.Double(corner.x(), corner.y(), ReferenceCard.SIDE, ReferenceCard.SIDE));
      }
    }
    pen.dispose();
    Path file = elsewhere.resolve("My panel.png");
    ImageIO.write(image, "png", file.toFile());
    return file;
  }
}
