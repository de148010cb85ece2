package org.hemwright.booklet.write;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Shape;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.geometry.Box;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.png.SheetPainter;
import org.hemwright.paper.sheet.Sheet;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** Figures on printed pages: how large they are set, and drawn by us from the sheet itself. */
final class OnPaper implements BlockWriter.Pictures {
  /** What an object that is drawn here says that it is. */
  static final String FIGURE = "hemwright/figure";

  /** Columns of lengths in both units that fit the page, the first one of sizes. */
  private static final int MOST_COLUMNS = 6;

  private static final int MOST_COLUMNS_LARGE = 4;
  private static final double WIDEST = 168;

  /** A column of words beside a figure has room for five or six of them (mm). */
  private static final double LEAST_COLUMN = 48;

  private static final double LEAST_COLUMN_LARGE = 84;

  /**
   * A letter's width, a line's height and what follows a paragraph, as the style sets them (mm).
   */
  private static final double LETTER = 1.72;

  private static final double LINE = 5.1;
  private static final double AFTER = 2;

  /** Large print beside the usual one. */
  private static final double LARGER = 18 / 10.5;

  private static final double GUTTER = 6;
  private static final double HIGHEST_OWN = 90;

  private final PrintForm form;
  private final Map<String, Figure> figures = new HashMap<>();

  OnPaper(PrintForm form) {
    this.form = form;
  }

  @Override
  public int mostColumns() {
    return form.large() ? MOST_COLUMNS_LARGE : MOST_COLUMNS;
  }

  @Override
  public boolean onScreen() {
    return false;
  }

  @Override
  public Optional<Box> frame(Figure figure) {
    if (figure.own().isEmpty()) {
      Box drawn = sheet(figure).frame();
      double times = times(figure);
      return Optional.of(new Box(0, 0, drawn.width() * times, drawn.height() * times));
    }
    return figure.own().filter(own -> own.kind() == Picture.Kind.SVG).map(OnPaper::frame);
  }

  private static Box frame(Picture drawing) {
    double[] size = VectorPicture.size(drawing);
    double scale = Math.min(1, Math.min(HIGHEST_OWN / size[1], WIDEST / size[0]));
    return new Box(0, 0, size[0] * scale, size[1] * scale);
  }

  @Override
  public double roomBeside(double figureWidth) {
    double room = WIDEST - figureWidth - GUTTER;
    return room < (form.large() ? LEAST_COLUMN_LARGE : LEAST_COLUMN) ? -1 : room;
  }

  @Override
  public double high(int letters, double columnWidth) {
    double scale = form.large() ? LARGER : 1;
    double lines = StrictMath.ceil(letters * LETTER * scale / columnWidth);
    return (lines * LINE + AFTER) * scale;
  }

  @Override
  public double lineWidth() {
    return WIDEST;
  }

  @Override
  public String besideStyle(double figureWidth) {
    return "width:" + BookletHtml.mm(roomBeside(figureWidth));
  }

  @Override
  public void put(Markup out, Figure figure) {
    if (figure.own().isPresent()) {
      picture(out, figure.id(), figure.alt(), figure.own().get(), "own");
      return;
    }
    Box printed = frame(figure).orElseThrow();
    object(out, figure, printed.width(), printed.height(), "");
  }

  /** What is drawn of a figure in this form. */
  private Sheet sheet(Figure figure) {
    return enlarged(figure).map(Figure.Enlarged::sheet).orElse(figure.sheet());
  }

  /** How many times as large as it is drawn it is printed. */
  private double times(Figure figure) {
    return enlarged(figure).map(Figure.Enlarged::times).orElse(1.0);
  }

  private Optional<Figure.Enlarged> enlarged(Figure figure) {
    return form.large() ? figure.large() : Optional.empty();
  }

  private void object(Markup out, Figure figure, double wide, double high, String kind) {
    String key = figure.id() + "-" + figures.size();
    figures.put(key, figure);
    double scale = Math.min(1, WIDEST / wide);
    String size =
        "width:%s;height:%s".formatted(BookletHtml.mm(wide * scale), BookletHtml.mm(high * scale));
    out.open(
        "object",
        "type",
        FIGURE,
        "data",
        key,
        "alt",
        figure.alt(),
        "title",
        figure.alt(),
        "class",
        kind,
        "style",
        size);
    out.close("object");
  }

  /** A picture of the designer's, drawn or as data. */
  void picture(Markup out, String id, String alt, Picture picture, String kind) {
    if (picture.kind() == Picture.Kind.SVG) {
      Box box = frame(picture);
      Figure figure =
          new Figure(id, new Sheet(box, List.of()), alt, List.of(), Optional.of(picture));
      object(out, figure, box.width(), box.height(), kind);
    } else {
      out.open("img", "class", kind, "alt", alt, "src", BookletHtml.data(picture));
    }
  }

  /** Paints a figure where the page leaves room for it. */
  final class Drawer implements FSObjectDrawer {
    @Override
    public @Nullable Map<Shape, String> drawObject(
        Element e,
        double x,
        double y,
        double width,
        double height,
        OutputDevice device,
        RenderingContext context,
        int dotsPerPixel) {
      Figure figure = figures.get(e.getAttribute("data"));
      if (figure != null) {
        double wide = width / dotsPerPixel;
        double high = height / dotsPerPixel;
        device.drawWithGraphics(
            (float) x,
            (float) y,
            (float) wide,
            (float) high,
            graphics -> {
              if (figure.own().isPresent()) {
                VectorPicture.paint(figure.own().get(), graphics, wide, high);
              } else {
                Sheet sheet = sheet(figure);
                SheetPainter.paint(sheet, graphics, wide / sheet.frame().width());
              }
            });
      }
      return null;
    }
  }
}
