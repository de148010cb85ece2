package org.hemwright.paper;

import java.time.LocalDate;
import java.util.List;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.CircularArc;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Clip;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Hatch;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.type.Face;

/** Hand-made sheets with one of everything. */
public final class TestSheets {
  public static final Ink BLACK = new Ink(0, 0, 0);

  public static final DocumentFacts FACTS =
      new DocumentFacts(
          "Sandling skirt <1.0>",
          "Tern Cove Patterns",
          "A skirt & its band",
          "en-GB",
          LocalDate.of(2026, 11, 25),
          List.of("14", "16"));

  private TestSheets() {}

  /** One of everything on a paper of the given size. */
  public static Sheet oneOfEach(double width, double height) {
    Outline box = square(20, 100, 40);
    Path arc = CircularArc.about(new Point(110, 110), new Point(135, 110), 6);
    return new Sheet(
        new Box(0, 0, width, height),
        List.of(
            new Stroke(
                Path.straight(new Point(10, 20), new Point(110, 20)),
                Pen.solid(0.6, BLACK),
                Layer.of("14"),
                Subject.piece("panel").edge("side").size("14")),
            new Stroke(
                Path.straight(new Point(10, 30), new Point(110, 30)),
                new Pen(0.6, List.of(8.0, 2.0), BLACK),
                new Layer(List.of("14", "16")),
                Subject.piece("panel")),
            new Fill(box, BLACK.tint(0.1), Layer.COMMON, Subject.NONE),
            new Hatch(box, 0.7, 3, Pen.solid(0.2, BLACK), Layer.COMMON, Subject.NONE),
            new Clip(
                new Box(90, 90, 130, 130),
                List.of(
                    new Stroke(arc, Pen.solid(1, BLACK), Layer.of("16"), Subject.piece("band")))),
            new Words(
                Face.SEMIBOLD.set("Tern Cove & “1 ¼ in”", 12),
                new Point(20, 60),
                0.2,
                BLACK,
                Layer.COMMON,
                Subject.NONE)));
  }

  /** A square by its lower left corner and side (mm). */
  public static Outline square(double x, double y, double side) {
    Point start = new Point(x, y);
    return Outline.of(
        Path.polyline(
            List.of(
                start,
                new Point(x + side, y),
                new Point(x + side, y + side),
                new Point(x, y + side),
                start)));
  }
}
