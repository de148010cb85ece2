package org.hemwright.workbench.traced;

import java.util.List;
import java.util.Locale;
import org.hemwright.geometry.Cubic;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;

/**
 * Ten ways in which drawing programs write the same lines, after SVG 1.1 and SVG 2. Each is written
 * here from the standard alone, with none of the reader's own code.
 */
enum SvgDialect {
  /** Millimetres, absolute commands, one id. */
  PLAIN {
    @Override
    String write(List<Drawn> lines) {
      StringBuilder body = new StringBuilder();
      for (Drawn line : lines) {
        body.append("<path id=\"%s\" d=\"%s\"/>\n".formatted(line.name(), absolute(line, 1, 0, 0)));
      }
      return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1000mm\" height=\"1000mm\""
          + " viewBox=\"0 0 1000 1000\">\n"
          + body
          + "</svg>";
    }
  },

  /** Pixels of 96 to the inch without a view box, relative commands without blanks, no close. */
  PIXELS {
    @Override
    String write(List<Drawn> lines) {
      StringBuilder body = new StringBuilder();
      for (Drawn line : lines) {
        body.append("<path id=\"%s\" d=\"%s\"/>".formatted(line.name(), relative(line, 96 / 25.4)));
      }
      return "<?xml version=\"1.0\"?><svg xmlns=\"http://www.w3.org/2000/svg\" width=\"3000\""
          + " height=\"3000\">"
          + body
          + "</svg>";
    }
  },

  /** Groups in groups, each moved, turned, slanted or scaled. */
  NESTED {
    @Override
    String write(List<Drawn> lines) {
      // p = T(30,40) R(30) S(2,3) skewX(20) M(1 0.5 -0.25 2 7 8) q, with q worked out backward.
      StringBuilder body = new StringBuilder();
      for (Drawn line : lines) {
        Path back = mapped(line.path(), SvgDialect::undone);
        body.append(
            "<path id=\"%s\" d=\"%s\"/>"
                .formatted(line.name(), absolute(new Drawn(line.name(), back), 1, 0, 0)));
      }
      return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"100cm\" height=\"100cm\""
          + " viewBox=\"0 0 1000 1000\"><g transform=\"translate(30 40)\"><g"
          + " transform=\"rotate(30)\"><g transform=\"scale(2,3) skewX(20)\"><g"
          + " transform=\"matrix(1 0.5 -0.25 2 7 8)\">"
          + body
          + "</g></g></g></g></svg>";
    }
  },

  /** Layers with labels in a namespace of their own, shorthand commands, entities of XML itself. */
  LAYERS {
    @Override
    String write(List<Drawn> lines) {
      StringBuilder body = new StringBuilder();
      for (Drawn line : lines) {
        body.append(
            "<g id=\"layer%d\" d:groupmode=\"layer\" d:label=\"%s\"><path d=\"%s\"/></g>\n"
                .formatted(body.length(), line.name(), shorthand(line)));
      }
      return "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:d=\"http://example.org/drawing\""
          + " width=\"1000mm\" height=\"1000mm\" viewBox=\"0 0 1000 1000\"><d:view zoom=\"2\"/>\n"
          + body
          + "<text x=\"10\" y=\"10\">Cut &amp; sew</text></svg>";
    }
  },

  /** Classes of a style sheet, among them hidden things and a transform. */
  CLASSES {
    @Override
    String write(List<Drawn> lines) {
      StringBuilder body = new StringBuilder();
      for (Drawn line : lines) {
        body.append(
            "<path class=\"thin %s\" d=\"%s\"/>".formatted(line.name(), absolute(line, 1, -5, 3)));
        body.append("<path class=\"off %s\" d=\"M0 0L9 9\"/>".formatted(line.name()));
      }
      return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1000mm\" height=\"1000mm\""
          + " viewBox=\"0 0 1000 1000\"><style>/* a note { } */ .thin{stroke:#000;fill:none}"
          + " path.off{display:none} g.moved { transform: translate(5px, -3px) }</style>"
          + "<g class=\"moved\">"
          + body
          + "</g></svg>";
    }
  },

  /** Symbols shown by use. */
  SYMBOLS {
    @Override
    String write(List<Drawn> lines) {
      StringBuilder defs = new StringBuilder();
      StringBuilder body = new StringBuilder();
      for (Drawn line : lines) {
        String id = "s" + defs.length();
        defs.append(
            "<symbol id=\"%s\" viewBox=\"100 50 400 400\" preserveAspectRatio=\"xMinYMin\"><path"
                    .formatted(id)
                + " d=\"%s\"/></symbol>".formatted(absolute(line, 0.5, 100, 50)));
        body.append(
            "<g id=\"%s\"><use href=\"#%s\" width=\"800\" height=\"900\"/></g>"
                .formatted(line.name(), id));
      }
      return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1000mm\" height=\"1000mm\""
          + " viewBox=\"0 0 1000 1000\"><defs>"
          + defs
          + "</defs>"
          + body
          + "</svg>";
    }
  },

  /** Inches, a view box that starts elsewhere, drawings in a drawing, the old way to refer. */
  INCHES {
    @Override
    String write(List<Drawn> lines) {
      StringBuilder body = new StringBuilder();
      for (Drawn line : lines) {
        body.append(
            "<g><title>%s</title><path d=\"%s\"/></g>"
                .formatted(line.name(), absolute(line, 1000 / 25.4 / 10, 0, 0)));
      }
      return "<svg xmlns=\"http://www.w3.org/2000/svg\""
          + " xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"40in\" height=\"40in\""
          + " viewBox=\"-500 -500 4000 4000\"><svg x=\"-500\" y=\"-500\" width=\"4000\""
          + " height=\"4000\" overflow=\"visible\"><defs><g id=\"all\">"
          + body
          + "</g></defs><use xlink:href=\"#all\"/></svg></svg>";
    }
  },

  /** Points, a clip path round everything, a picture beneath, words between. */
  CLIPPED {
    @Override
    String write(List<Drawn> lines) {
      StringBuilder body = new StringBuilder();
      for (Drawn line : lines) {
        body.append(
            "<path clip-path=\"url(#c)\" id=\"%s\" d=\"%s\"/><text x=\"3\">%s</text>"
                .formatted(line.name(), absolute(line, 72 / 25.4, 0, 0), line.name()));
      }
      return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"2834pt\" height=\"2834pt\""
          + " viewBox=\"0 0 2834 2834\"><clipPath id=\"c\"><path d=\"M0"
          + " 0H2834V2834H0Z\"/></clipPath><image href=\"photo.png\" width=\"10\""
          + " height=\"10\"/>"
          + body
          + "</svg>";
    }
  },

  /** Uneven view box, stretched; numbers with exponents, glued. */
  STRETCHED {
    @Override
    String write(List<Drawn> lines) {
      StringBuilder body = new StringBuilder();
      for (Drawn line : lines) {
        Path back = mapped(line.path(), p -> new Point(p.x() * 2, p.y() / 2));
        body.append(
            "<path id=\"%s\" d=\"%s\"/>"
                .formatted(
                    line.name(),
                    absolute(new Drawn(line.name(), back), 1, 0, 0).replace(" -", "-")));
      }
      return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1000mm\" height=\"1000mm\""
          + " viewBox=\"0 0 2000 500\" preserveAspectRatio=\"none\">"
          + body
          + "</svg>";
    }
  },

  /** Open lines, one for each curve, their ends to be found again; names in data attributes. */
  LOOSE {
    @Override
    String write(List<Drawn> lines) {
      StringBuilder body = new StringBuilder();
      for (Drawn line : lines) {
        body.append("<g data-name=\"%s\">".formatted(line.name()));
        List<Curve> curves = line.path().curves();
        for (int i = 0; i < curves.size(); i++) {
          int place =
              (i * 2) % curves.size() + (curves.size() % 2 == 0 && i * 2 >= curves.size() ? 1 : 0);
          Curve curve = i % 2 == 0 ? curves.get(place) : curves.get(place).reversed();
          body.append(
              "<path d=\"%s\"/>"
                  .formatted(absolute(new Drawn(line.name(), Path.of(curve)), 1, 0, 0)));
        }
        body.append("</g>");
      }
      return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"1000mm\" height=\"1000mm\""
          + " viewBox=\"0 0 1000 1000\">"
          + body
          + "</svg>";
    }
  };

  /** A line in millimetres with y upward, and its name. */
  record Drawn(String name, Path path) {}

  /** The whole file. */
  abstract String write(List<Drawn> lines);

  interface Mapping {
    Point of(Point point);
  }

  static Path mapped(Path path, Mapping mapping) {
    return Path.of(
        path.curves().stream()
            .<Curve>map(
                curve ->
                    curve instanceof Cubic c
                        ? new Cubic(
                            mapping.of(c.start()),
                            mapping.of(c.control1()),
                            mapping.of(c.control2()),
                            mapping.of(c.end()))
                        : new org.hemwright.geometry.Line(
                            mapping.of(curve.start()), mapping.of(curve.end())))
            .toList());
  }

  /** Undoes the transforms of the nested dialect, which see y downward. */
  private static Point undone(Point p) {
    double x = p.x() - 30;
    double y = -p.y() - 40;
    double cos = StrictMath.cos(StrictMath.toRadians(30));
    double sin = StrictMath.sin(StrictMath.toRadians(30));
    double rx = (cos * x + sin * y) / 2;
    double ry = (-sin * x + cos * y) / 3;
    rx -= ry * StrictMath.tan(StrictMath.toRadians(20));
    double mx = rx - 7;
    double my = ry - 8;
    double det = 1 * 2 - 0.5 * -0.25;
    return new Point((2 * mx + 0.25 * my) / det, -(-0.5 * mx + my) / det);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.9f", value);
  }

  private static String at(Point p, double scale, double dx, double dy) {
    return number(p.x() * scale + dx) + " " + number(-p.y() * scale + dy);
  }

  static String absolute(Drawn line, double scale, double dx, double dy) {
    StringBuilder d = new StringBuilder("M" + at(line.path().start(), scale, dx, dy));
    for (Curve curve : line.path().curves()) {
      if (curve instanceof Cubic c) {
        d.append("C" + at(c.control1(), scale, dx, dy))
            .append("," + at(c.control2(), scale, dx, dy))
            .append("," + at(c.end(), scale, dx, dy));
      } else {
        d.append("L" + at(curve.end(), scale, dx, dy));
      }
    }
    return d + (line.path().isClosed() ? "Z" : "");
  }

  private static String step(Point from, Point to, double scale) {
    String dx = Double.toString((to.x() - from.x()) * scale);
    String dy = Double.toString(-(to.y() - from.y()) * scale);
    return dx + (dy.startsWith("-") ? "" : " ") + dy;
  }

  static String relative(Drawn line, double scale) {
    StringBuilder d = new StringBuilder("m" + at(line.path().start(), scale, 0, 0));
    char last = 0;
    for (Curve curve : line.path().curves()) {
      Point from = curve.start();
      if (curve instanceof Cubic c) {
        d.append(last == 'c' ? " " : "c")
            .append(step(from, c.control1(), scale))
            .append(' ')
            .append(step(from, c.control2(), scale))
            .append(' ')
            .append(step(from, c.end(), scale));
        last = 'c';
      } else {
        d.append(last == 'l' ? " " : "l").append(step(from, curve.end(), scale));
        last = 'l';
      }
    }
    return d + (line.path().isClosed() ? "z" : "");
  }

  /** Level and upright lines as H and V, curves that mirror the handle before them as S. */
  static String shorthand(Drawn line) {
    StringBuilder d = new StringBuilder("M" + at(line.path().start(), 1, 0, 0));
    Cubic before = null;
    for (Curve curve : line.path().curves()) {
      if (curve instanceof Cubic c) {
        Point mirror =
            before == null ? c.start() : c.start().plus(c.start().minus(before.control2()));
        if (mirror.distanceTo(c.control1()) < 1e-6) {
          d.append("S");
        } else {
          d.append("C" + at(c.control1(), 1, 0, 0)).append(" ");
        }
        d.append(at(c.control2(), 1, 0, 0)).append(" ").append(at(c.end(), 1, 0, 0));
        before = c;
      } else {
        before = null;
        Point end = curve.end();
        if (curve.start().y() == end.y()) {
          d.append("H" + number(end.x()));
        } else if (curve.start().x() == end.x()) {
          d.append("V" + number(-end.y()));
        } else {
          d.append("L" + at(end, 1, 0, 0));
        }
      }
    }
    return d + (line.path().isClosed() ? "Z" : "");
  }
}
