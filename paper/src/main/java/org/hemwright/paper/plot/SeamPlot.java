package org.hemwright.paper.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.type.Face;

/**
 * By how much the first layer of a seam is longer than meant, size by size: a band in which nothing
 * is said, a paler one round it in which it is worth a look, and beyond both it fails. What is out
 * is marked by shape: a triangle for a look, a square for a failure.
 */
public final class SeamPlot {
  private static final double WIDTH = 140;
  private static final double HEIGHT = 44;
  private static final double LEFT = 17;
  private static final double FOOT = 9;
  private static final double HEAD = 6;
  private static final double RIGHT = 4;
  private static final double ROUND = 0.75;
  private static final double SIGN = 1.5;
  private static final Pen CURVE = Pen.solid(0.35, Inks.BLACK);
  private static final Pen ZERO = Pen.solid(0.25, Inks.QUIET);
  private static final Pen EDGE = new Pen(0.2, List.of(1.2, 0.9), Inks.QUIET);

  private SeamPlot() {}

  /**
   * One size.
   *
   * @param size its name
   * @param beyond how much longer the first layer is than the middle of what is meant (mm)
   * @param meant how far to either side of that is meant (mm), 0 or more
   */
  public record At(String size, double beyond, double meant) {}

  /**
   * The figure.
   *
   * @param sizes in the chart's order, at least one
   * @param warn beyond what is meant and this much it is worth a look (mm)
   * @param fail beyond what is meant and this much it fails (mm), more than {@code warn}
   */
  public static Sheet of(List<At> sizes, double warn, double fail) {
    double most = fail * 1.3;
    for (At size : sizes) {
      most = Math.max(most, Math.max(Math.abs(size.beyond) * 1.12, (size.meant + fail) * 1.1));
    }
    int count = sizes.size();
    Box area = new Box(LEFT, FOOT, WIDTH - RIGHT, HEIGHT - HEAD);
    PlotArea plot = new PlotArea(area, new Box(-0.5, -most, count - 0.5, most));
    band(plot, sizes, fail, Inks.RUST.tint(0.14));
    band(plot, sizes, warn, Inks.CHALK.tint(0.2));
    plot.line(ZERO, plot.at(-0.5, 0), plot.at(count - 0.5, 0));
    ticks(plot, area, most);
    List<Point> curve = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      curve.add(plot.at(i, sizes.get(i).beyond));
    }
    if (count > 1) {
      plot.line(CURVE, curve);
    }
    for (int i = 0; i < count; i++) {
      sign(plot, curve.get(i), sizes.get(i), warn, fail);
    }
    names(plot, area, sizes);
    plot.words("mm longer than meant", Face.REGULAR, Inks.QUIET, new Point(0, HEIGHT - 2.4), 0);
    return plot.sheet(new Box(0, 0, WIDTH, HEIGHT));
  }

  /** What is meant and so much more to either side, a step for each size. */
  private static void band(PlotArea plot, List<At> sizes, double more, Ink ink) {
    for (int i = 0; i < sizes.size(); i++) {
      double high = sizes.get(i).meant + more;
      Point low = plot.at(i - 0.5, -high);
      Point top = plot.at(i + 0.5, high);
      plot.fill(ink, new Box(low.x() - 0.02, low.y(), top.x() + 0.02, top.y()));
    }
  }

  private static void ticks(PlotArea plot, Box area, double most) {
    double step = 1;
    double[] nice = {1, 2, 5, 10, 20, 50, 100, 200, 500};
    for (double each : nice) {
      step = each;
      if (most / each <= 3.5) {
        break;
      }
    }
    for (int i = (int) -Math.floor(most / step); i <= most / step; i++) {
      double value = i * step;
      Point at = plot.at(-0.5, value);
      if (i != 0) {
        plot.line(EDGE, at, new Point(area.maxX(), at.y()));
      }
      String text = String.format(Locale.ROOT, "%.0f", Math.abs(value));
      String signed = value > 0 ? "+" + text : value < 0 ? "\u2212" + text : "0";
      plot.words(signed, Face.REGULAR, Inks.BLACK, new Point(area.minX() - 2, at.y()), 1);
    }
    plot.rule(Pens.RULE, new Point(area.minX(), area.minY()), new Point(area.maxX(), area.minY()));
  }

  private static void sign(PlotArea plot, Point at, At size, double warn, double fail) {
    double out = Math.abs(size.beyond) - size.meant;
    if (out > fail) {
      plot.mark(
          Inks.RED,
          PlotArea.corners(new Box(at.x() - SIGN, at.y() - SIGN, at.x() + SIGN, at.y() + SIGN)));
    } else if (out > warn) {
      plot.mark(
          Inks.RUST,
          List.of(
              new Point(at.x() - SIGN, at.y() - SIGN),
              new Point(at.x() + SIGN, at.y() - SIGN),
              new Point(at.x(), at.y() + SIGN * 1.2)));
    } else {
      List<Point> round = new ArrayList<>();
      for (int i = 0; i < 16; i++) {
        double angle = i * Math.PI / 8;
        round.add(
            new Point(
                at.x() + ROUND * StrictMath.cos(angle), at.y() + ROUND * StrictMath.sin(angle)));
      }
      plot.mark(Inks.BLACK, round);
    }
  }

  /** As many names as stand apart, the first and every so many after it. */
  private static void names(PlotArea plot, Box area, List<At> sizes) {
    double widest = 0;
    for (At size : sizes) {
      widest = Math.max(widest, Face.REGULAR.set(size.size, PlotArea.POINTS).width());
    }
    int every = Math.max(1, (int) Math.ceil((widest + 1.5) * sizes.size() / area.width()));
    for (int i = 0; i < sizes.size(); i += every) {
      Point at = new Point(plot.at(i, 0).x(), area.minY() - 3.6);
      plot.words(sizes.get(i).size, Face.REGULAR, Inks.BLACK, at, 0.5);
    }
    plot.words(
        "size", Face.REGULAR, Inks.QUIET, new Point(area.minX() - 3.5, area.minY() - 3.6), 1);
  }
}
