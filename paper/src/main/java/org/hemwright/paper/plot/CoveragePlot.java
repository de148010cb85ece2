package org.hemwright.paper.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.pattern.body.BodySurvey;
import org.hemwright.pattern.body.Coverage;
import org.hemwright.pattern.body.SizeSpan;
import org.hemwright.pattern.body.SurveyedMeasure;

/**
 * The bodies that a size chart serves among those of a survey. By two measurements: what each size
 * reaches as a box, and two rings within which half and nineteen in twenty of the bodies lie. By
 * one: how the bodies spread, and under the curve what each size reaches.
 */
public final class CoveragePlot {
  private static final double WIDTH = 130;
  private static final double HEIGHT = 112;
  private static final double LOW = 62;
  private static final double LEFT = 20;
  private static final double FOOT = 15;
  private static final double HEAD = 7;
  private static final double RIGHT = 4;

  /** The figure reaches so many deviations to either side, or to the outermost size held. */
  private static final double REACH = 3;

  /** Within so many deviations lie half, and 95 in 100, of a normal spread in two measurements. */
  private static final double HALF = 1.17741;

  private static final double MOST = 2.44775;
  private static final Pen RING = Pen.solid(0.35, Inks.BLACK);
  private static final Pen OUTER = new Pen(0.3, List.of(2.2, 1.2), Inks.BLACK);
  private static final Pen BOX = Pen.solid(0.25, Inks.CHALK);
  private static final Pen UNKNOWN = new Pen(0.25, List.of(1.2, 0.9), Inks.QUIET);
  private static final Pen GRID = Pen.solid(0.12, Inks.QUIET.tint(0.5));

  private final Coverage coverage;
  private final double unit;
  private final String unitName;

  private CoveragePlot(Coverage coverage, boolean inches) {
    this.coverage = coverage;
    unit = inches ? 25.4 : 10;
    unitName = inches ? "in" : "cm";
  }

  /**
   * The figure, by the first two measurements where there are several.
   *
   * @param inches whether its scales are in inches rather than centimetres
   */
  public static Sheet of(Coverage coverage, boolean inches) {
    CoveragePlot plot = new CoveragePlot(coverage, inches);
    return coverage.dimensions().size() == 1 ? plot.byOne() : plot.byTwo();
  }

  private SurveyedMeasure measure(int dimension) {
    return coverage.dimensions().get(dimension).measure();
  }

  /** From the least to the most that is shown (mm). */
  private SizeSpan shown(int dimension) {
    double from = measure(dimension).at(-REACH);
    double to = measure(dimension).at(REACH);
    for (Coverage.OfSize size : coverage.sizes()) {
      if (size.held()) {
        from = Math.min(from, size.spans().get(dimension).from());
        to = Math.max(to, size.spans().get(dimension).to());
      }
    }
    return new SizeSpan(from, to);
  }

  private Sheet byTwo() {
    Box area = new Box(LEFT, FOOT, WIDTH - RIGHT, HEIGHT - HEAD);
    SizeSpan across = shown(0);
    SizeSpan up = shown(1);
    PlotArea plot = new PlotArea(area, new Box(across.from(), up.from(), across.to(), up.to()));
    scaleAcross(plot, area, across);
    for (double value : ticks(up)) {
      Point at = plot.at(across.from(), value);
      plot.line(GRID, at, new Point(area.maxX(), at.y()));
      plot.words(figure(value), Face.REGULAR, Inks.BLACK, new Point(LEFT - 2, at.y()), 1);
    }
    plot.words(title(1), Face.REGULAR, Inks.QUIET, new Point(0, HEIGHT - 2.4), 0);
    for (Coverage.OfSize size : coverage.sizes()) {
      Point low = plot.at(size.spans().get(0).from(), size.spans().get(1).from());
      Point high = plot.at(size.spans().get(0).to(), size.spans().get(1).to());
      Box box = new Box(low.x(), low.y(), high.x(), high.y());
      if (size.held()) {
        plot.fill(Inks.CHALK.tint(0.25), box);
      }
      plot.box(size.held() ? BOX : UNKNOWN, box);
      label(plot, area, size.name(), box);
    }
    plot.line(RING, ring(plot, HALF));
    plot.line(OUTER, ring(plot, MOST));
    return plot.sheet(new Box(0, 0, WIDTH, HEIGHT));
  }

  private static void label(PlotArea plot, Box area, String name, Box box) {
    SetLine line = Face.REGULAR.set(name, PlotArea.POINTS);
    boolean fits = line.width() < box.width() - 0.6 && line.capitalHeight() < box.height() - 0.6;
    if (fits && area.contains(box.centre())) {
      plot.words(name, Face.REGULAR, Inks.BLACK, box.centre(), 0.5);
    }
  }

  /** A ring about the middle of the bodies, as wide as both measurements spread together. */
  private List<Point> ring(PlotArea plot, double deviations) {
    BodySurvey survey = coverage.survey();
    double together = survey.correlation(measure(0), measure(1));
    double apart = Math.sqrt(1 - together * together);
    List<Point> ring = new ArrayList<>();
    for (int i = 0; i <= 96; i++) {
      double angle = 2 * Math.PI * (i % 96) / 96;
      double one = deviations * StrictMath.cos(angle);
      double other = together * one + apart * deviations * StrictMath.sin(angle);
      ring.add(plot.at(measure(0).at(one), measure(1).at(other)));
    }
    return ring;
  }

  private Sheet byOne() {
    Box area = new Box(LEFT, FOOT, WIDTH - RIGHT, LOW - HEAD);
    SizeSpan across = shown(0);
    double highest = density(measure(0).at(0)) * 1.15;
    PlotArea plot = new PlotArea(area, new Box(across.from(), 0, across.to(), highest));
    for (Coverage.OfSize size : coverage.sizes()) {
      SizeSpan span = size.spans().get(0);
      if (size.held()) {
        List<Point> under = new ArrayList<>();
        under.add(plot.at(span.from(), 0));
        under.add(plot.at(span.to(), 0));
        for (int i = 8; i >= 0; i--) {
          double value = span.from() + (span.to() - span.from()) * i / 8;
          under.add(plot.at(value, density(value)));
        }
        plot.fill(Inks.CHALK.tint(0.25), under);
      }
      Point foot = plot.at(span.from(), 0);
      Point end = plot.at(span.to(), 0);
      plot.line(size.held() ? BOX : UNKNOWN, foot, plot.at(span.from(), density(span.from())));
      plot.line(size.held() ? BOX : UNKNOWN, end, plot.at(span.to(), density(span.to())));
      label(plot, area, size.name(), new Box(foot.x(), foot.y(), end.x(), foot.y() + 6));
    }
    List<Point> curve = new ArrayList<>();
    for (int i = 0; i <= 120; i++) {
      double value = across.from() + (across.to() - across.from()) * i / 120;
      curve.add(plot.at(value, density(value)));
    }
    plot.line(RING, curve);
    scaleAcross(plot, area, across);
    plot.words("bodies", Face.REGULAR, Inks.QUIET, new Point(0, LOW - 2.4), 0);
    return plot.sheet(new Box(0, 0, WIDTH, LOW));
  }

  /** How thickly bodies lie about a length, to a scale of its own. */
  private double density(double mm) {
    double z = measure(0).deviations(mm);
    return StrictMath.exp(-z * z / 2) / mm;
  }

  private void scaleAcross(PlotArea plot, Box area, SizeSpan across) {
    for (double value : ticks(across)) {
      Point at = new Point(plot.at(value, 0).x(), area.minY());
      plot.line(GRID, at, new Point(at.x(), area.maxY()));
      plot.words(figure(value), Face.REGULAR, Inks.BLACK, new Point(at.x(), FOOT - 3.6), 0.5);
    }
    plot.words(title(0), Face.REGULAR, Inks.QUIET, new Point(area.maxX(), 3), 1);
  }

  private String title(int dimension) {
    String name = coverage.dimensions().get(dimension).column().replace('_', ' ');
    return name + " (" + unitName + ")";
  }

  private String figure(double mm) {
    return String.format(Locale.ROOT, "%.0f", mm / unit);
  }

  /** Round figures within a span, at most nine (mm). */
  private List<Double> ticks(SizeSpan span) {
    double step = unit;
    for (double each : new double[] {1, 2, 5, 10, 20, 50}) {
      step = each * unit;
      if ((span.to() - span.from()) / step <= 9) {
        break;
      }
    }
    List<Double> ticks = new ArrayList<>();
    for (long i = (long) Math.ceil(span.from() / step); i * step <= span.to(); i++) {
      ticks.add(i * step);
    }
    return ticks;
  }
}
