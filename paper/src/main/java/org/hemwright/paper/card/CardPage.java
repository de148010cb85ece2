package org.hemwright.paper.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.pdf.PdfWriter;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.tile.PageFormat;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.pattern.traced.ReferenceCard;

/** Prints the reference card. */
public final class CardPage {
  private static final double MIDDLE = ReferenceCard.WIDTH / 2;
  private static final double TEN_CENTIMETRES = 100;
  private static final double FOUR_INCHES = 101.6;
  private static final double END = 4;

  private static final List<String> HOW =
      List.of(
          "Print at 100 %. Both lines must measure as they say.",
          "Lay the card flat beside the paper piece, or upon the",
          "middle of a large one, on something dark or coloured.",
          "Take the picture from above, from as far as shows the",
          "whole piece well, in even light without shadows.");

  private final List<Item> items = new ArrayList<>();

  private CardPage() {}

  /** The card as a file of one page. */
  public static byte[] pdf() {
    return PdfWriter.write(
        new DocumentFacts(
            "Reference card for photographs of paper pieces",
            "Hemwright",
            "A card to lay beside a paper pattern piece, by which a photograph is straightened.",
            "en",
            LocalDate.of(2026, 11, 28),
            List.of()),
        List.of(new CardPage().sheet()));
  }

  private Sheet sheet() {
    for (List<Point> square : ReferenceCard.squares()) {
      List<Point> round = new ArrayList<>(square);
      round.add(square.get(0));
      items.add(new Fill(Outline.of(Path.polyline(round)), Inks.BLACK, Layer.COMMON, Subject.NONE));
    }
    about(150, "Reference card", Face.LIGHT, 26);
    double down = 138;
    for (String line : HOW) {
      about(down, line, Face.REGULAR, 10);
      down -= 5.4;
    }
    measure(92, TEN_CENTIMETRES, "10 cm");
    measure(74, FOUR_INCHES, "4 in");
    double besideWidth = (PageFormat.EITHER.paperWidth() - ReferenceCard.WIDTH) / 2;
    double besideHeight = (PageFormat.EITHER.paperHeight() - ReferenceCard.HEIGHT) / 2;
    return new Sheet(
        new Box(
            -besideWidth,
            -besideHeight,
            ReferenceCard.WIDTH + besideWidth,
            ReferenceCard.HEIGHT + besideHeight),
        items);
  }

  private void measure(double height, double length, String words) {
    double left = MIDDLE - length / 2;
    double right = MIDDLE + length / 2;
    line(new Point(left, height), new Point(right, height));
    line(new Point(left, height - END), new Point(left, height + END));
    line(new Point(right, height - END), new Point(right, height + END));
    about(height + 2, words, Face.REGULAR, 10);
  }

  private void line(Point from, Point to) {
    items.add(new Stroke(Path.straight(from, to), Pens.SIGN, Layer.COMMON, Subject.NONE));
  }

  private void about(double height, String text, Face face, double points) {
    SetLine line = face.set(text, points);
    items.add(
        new Words(
            line,
            new Point(MIDDLE - line.width() / 2, height),
            0,
            Inks.BLACK,
            Layer.COMMON,
            Subject.NONE));
  }
}
