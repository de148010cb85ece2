package org.hemwright.paper.svg;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.PathIterator;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Line;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Clip;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Hatch;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Picture;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.type.GlyphShape;

/** Writes one sheet as one SVG picture. */
public final class SvgWriter {
  private final StringBuilder out = new StringBuilder();
  private final Map<String, Integer> ids = new HashMap<>();
  private String open = "";
  private final String prefix;
  private final Function<Ink, String> paint;
  private int clips;

  private SvgWriter(String prefix, Function<Ink, String> paint) {
    this.prefix = prefix;
    this.paint = paint;
  }

  /** The picture's bytes, UTF-8. */
  public static byte[] write(DocumentFacts facts, Sheet sheet) {
    return new SvgWriter("", Ink::hex).picture(facts, sheet).getBytes(StandardCharsets.UTF_8);
  }

  /**
   * The picture as a part of a page: without a size of its own, its inks as custom properties
   * {@code --ink-rrggbb} of the page, which may give them other colours on a dark ground.
   *
   * @param prefix goes before every id, so that several pictures may stand on one page
   * @param label says what it shows to who cannot see it
   * @param over marks of the page to be put over the picture, written as SVG
   */
  public static String inline(String prefix, String label, Sheet sheet, String over) {
    Function<Ink, String> paint =
        ink -> "var(--ink-" + ink.hex().substring(1) + "," + ink.hex() + ")";
    SvgWriter writer = new SvgWriter(prefix, paint);
    Box frame = sheet.frame();
    writer
        .out
        .append("<svg viewBox=\"")
        .append(writer.viewBox(frame))
        .append("\" role=\"")
        .append(over.isEmpty() ? "img" : "group")
        .append("\" aria-label=\"")
        .append(escaped(label))
        .append("\">\n<g fill=\"none\" stroke-miterlimit=\"")
        .append(n(Stroke.MITRE_LIMIT))
        .append("\">\n");
    writer.draw(sheet.items());
    writer.closeGroup();
    return writer.out.append("</g>\n").append(over).append("</svg>\n").toString();
  }

  private String viewBox(Box frame) {
    return "%s %s %s %s"
        .formatted(n(frame.minX()), n(-frame.maxY()), n(frame.width()), n(frame.height()));
  }

  private String picture(DocumentFacts facts, Sheet sheet) {
    Box frame = sheet.frame();
    out.append(
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\"")
        .append(" width=\"%smm\" height=\"%smm\"".formatted(n(frame.width()), n(frame.height())))
        .append(" viewBox=\"")
        .append(viewBox(frame))
        .append("\" xml:lang=\"")
        .append(escaped(facts.language()))
        .append("\" role=\"img\">\n");
    out.append("<title>").append(escaped(facts.title())).append("</title>\n");
    out.append("<desc>").append(escaped(facts.about())).append("</desc>\n");
    out.append("<g fill=\"none\" stroke-miterlimit=\"")
        .append(n(Stroke.MITRE_LIMIT))
        .append("\">\n");
    draw(sheet.items());
    closeGroup();
    out.append("</g>\n</svg>\n");
    return out.toString();
  }

  private void draw(List<Item> items) {
    for (Item item : items) {
      if (item instanceof Clip clip) {
        closeGroup();
        String id = prefix + "window-" + ++clips;
        out.append("<clipPath id=\"").append(id).append("\">");
        Box box = clip.window();
        out.append(
            "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/></clipPath>\n"
                .formatted(n(box.minX()), n(-box.maxY()), n(box.width()), n(box.height())));
        out.append("<g clip-path=\"url(#").append(id).append(")\">\n");
        draw(clip.items());
        closeGroup();
        out.append("</g>\n");
      } else if (item instanceof Inked inked) {
        openGroup(inked);
        put(inked);
      }
    }
  }

  private void openGroup(Inked item) {
    Layer layer = item.layer();
    String piece = item.subject().piece().orElse("");
    String sizes = String.join(" ", layer.sizes());
    String key = piece + "|" + layer.sizes();
    if (key.equals(open)) {
      return;
    }
    closeGroup();
    String name = piece.isEmpty() ? "sheet" : piece;
    String id = prefix + slug(name + (layer.isCommon() ? "" : "-size-" + sizes));
    int count = ids.merge(id, 1, Integer::sum);
    out.append("<g id=\"").append(id).append(count == 1 ? "" : "-" + count).append('"');
    if (!layer.isCommon()) {
      out.append(" data-sizes=\"").append(escaped(sizes)).append('"');
    }
    out.append("><title>").append(escaped(title(name, layer))).append("</title>\n");
    open = key;
  }

  private static String title(String name, Layer layer) {
    String shown = name.replace('_', ' ');
    if (layer.isCommon()) {
      return shown;
    }
    String word = layer.sizes().size() == 1 ? ", size " : ", sizes ";
    return shown + word + String.join(", ", layer.sizes());
  }

  private void closeGroup() {
    if (!open.isEmpty()) {
      out.append("</g>\n");
      open = "";
    }
  }

  private void put(Inked item) {
    if (item instanceof Stroke stroke) {
      out.append("<path").append(edge(item)).append(" d=\"").append(data(stroke.path()));
      out.append('"').append(pen(stroke.pen())).append("/>\n");
    } else if (item instanceof Fill fill) {
      out.append("<path d=\"").append(data(fill.outline().path()));
      out.append("\" fill=\"").append(paint.apply(fill.ink())).append("\"/>\n");
    } else if (item instanceof Hatch hatch) {
      String id = prefix + "window-" + ++clips;
      out.append("<clipPath id=\"").append(id).append("\"><path d=\"");
      out.append(data(hatch.outline().path())).append("\"/></clipPath>\n");
      out.append("<path clip-path=\"url(#").append(id).append(")\" d=\"");
      out.append(hatch.lines().stream().map(SvgWriter::data).collect(Collectors.joining()));
      out.append('"').append(pen(hatch.pen())).append("/>\n");
    } else if (item instanceof Words words) {
      AffineTransform place = AffineTransform.getScaleInstance(1, -1);
      place.translate(words.at().x(), words.at().y());
      place.rotate(StrictMath.cos(words.angle()), StrictMath.sin(words.angle()));
      out.append("<g role=\"img\" aria-label=\"").append(escaped(words.line().text()));
      out.append("\"><path d=\"").append(data(GlyphShape.of(words.line()), place));
      out.append("\" fill=\"").append(paint.apply(words.ink())).append("\"/></g>\n");
    } else if (item instanceof Picture picture) {
      Box box = picture.box();
      out.append(
          "<image x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" href=\"data:image/png;base64,"
              .formatted(n(box.minX()), n(-box.maxY()), n(box.width()), n(box.height())));
      out.append(Base64.getEncoder().encodeToString(picture.raster().png())).append("\"/>\n");
    }
  }

  private static String edge(Inked item) {
    return item.subject().edge().map(edge -> " data-edge=\"" + escaped(edge) + "\"").orElse("");
  }

  private String pen(Pen pen) {
    StringBuilder text = new StringBuilder();
    text.append(" stroke=\"").append(paint.apply(pen.ink()));
    text.append("\" stroke-width=\"").append(n(pen.width())).append('"');
    if (!pen.dashes().isEmpty()) {
      text.append(" stroke-dasharray=\"");
      text.append(pen.dashes().stream().map(SvgWriter::n).collect(Collectors.joining(" ")));
      text.append('"');
    }
    return text.toString();
  }

  private static String data(Path path) {
    StringBuilder text = new StringBuilder("M").append(at(path.start()));
    for (Curve curve : path.curves()) {
      if (curve instanceof Cubic cubic) {
        text.append('C').append(at(cubic.control1())).append(' ').append(at(cubic.control2()));
        text.append(' ').append(at(cubic.end()));
      } else {
        text.append('L').append(at(curve.end()));
      }
    }
    return text.append(path.isClosed() ? "Z" : "").toString();
  }

  private static String data(Line line) {
    return "M" + at(line.start()) + "L" + at(line.end());
  }

  private static String data(Shape shape, AffineTransform place) {
    StringBuilder text = new StringBuilder();
    double[] c = new double[6];
    for (PathIterator i = shape.getPathIterator(place); !i.isDone(); i.next()) {
      switch (i.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> text.append('M').append(numbers(c, 2));
        case PathIterator.SEG_LINETO -> text.append('L').append(numbers(c, 2));
        case PathIterator.SEG_QUADTO -> text.append('Q').append(numbers(c, 4));
        case PathIterator.SEG_CUBICTO -> text.append('C').append(numbers(c, 6));
        default -> text.append('Z');
      }
    }
    return text.toString();
  }

  private static String numbers(double[] values, int count) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < count; i++) {
      text.append(i == 0 ? "" : " ").append(n(values[i], 3));
    }
    return text.toString();
  }

  private static String at(Point point) {
    return n(point.x()) + " " + n(-point.y());
  }

  /** A number to a ten-thousandth, without needless noughts. */
  private static String n(double value) {
    return n(value, 4);
  }

  private static String n(double value, int places) {
    long unit = places == 3 ? 1000 : 10_000;
    long scaled = Math.round(value * unit);
    StringBuilder text = new StringBuilder(scaled < 0 ? "-" : "");
    text.append(Math.abs(scaled) / unit);
    long rest = Math.abs(scaled) % unit;
    if (rest != 0) {
      text.append('.');
      for (long digit = unit / 10; rest != 0; digit /= 10) {
        text.append((char) ('0' + rest / digit));
        rest %= digit;
      }
    }
    return text.toString();
  }

  private static String slug(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
