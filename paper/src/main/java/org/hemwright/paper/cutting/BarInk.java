package org.hemwright.paper.cutting;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.cloth.rule.ClothItem;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.rule.Striped;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.pattern.fabric.Fabric;

/** The bars of a striped or checked cloth, faint, and the notches that lie on them. */
final class BarInk {
  /** Bars nearer to each other than this on paper (mm) are left out but for every so many. */
  private static final double CLOSEST = 1.6;

  /** Where in a repeat the line is that tells on which side an uneven bar goes on; a share. */
  static final double BESIDE = 0.3;

  private static final double NOTCH = 0.9;

  private BarInk() {}

  /**
   * The bars of a part of the table.
   *
   * @param left where the part begins, on paper (mm)
   * @param right where it ends
   * @param low its near side
   * @param high its far side
   * @param fold where across it a bar runs along the cloth: the fold, or the cloth's middle
   * @param scale millimetres on paper for one of cloth
   */
  static List<Inked> bars(
      ClothLaying laying,
      double left,
      double right,
      double low,
      double high,
      double fold,
      double scale) {
    List<Inked> bars = new ArrayList<>();
    if (laying.repeat().isEmpty()) {
      return bars;
    }
    Fabric.Repeat repeat = laying.repeat().get();
    double bar = laying.barAlong() * scale;
    for (double x : every(bar, repeat.along(), scale, left, right)) {
      bars.add(ClothInk.line(x, low, x, high, ClothInk.BAR));
    }
    for (double y : every(fold, repeat.across(), scale, low, high)) {
      bars.add(ClothInk.line(left, y, right, y, ClothInk.BAR));
    }
    if (repeat.unevenAlong()) {
      for (double x :
          every(bar + beside(repeat.along(), scale), repeat.along(), scale, left, right)) {
        bars.add(ClothInk.line(x, low, x, high, ClothInk.BESIDE_BAR));
      }
    }
    if (repeat.unevenAcross()) {
      for (double y :
          every(fold + beside(repeat.across(), scale), repeat.across(), scale, low, high)) {
        bars.add(ClothInk.line(left, y, right, y, ClothInk.BESIDE_BAR));
      }
    }
    return bars;
  }

  private static double beside(OptionalDouble repeat, double scale) {
    return BESIDE * step(repeat, scale);
  }

  /** From one bar that is drawn to the next, on paper (mm). */
  private static double step(OptionalDouble repeat, double scale) {
    double step = repeat.orElseThrow() * scale;
    return step * Math.ceil(CLOSEST / step);
  }

  private static List<Double> every(
      double bar, OptionalDouble repeat, double scale, double from, double to) {
    List<Double> places = new ArrayList<>();
    if (repeat.isPresent()) {
      double step = step(repeat, scale);
      for (double n = Math.ceil((from - bar) / step); bar + n * step <= to; n++) {
        places.add(bar + n * step);
      }
    }
    return places;
  }

  /**
   * A small diamond at each matched notch whose mate, on the same laying, lies on the same place
   * between the bars.
   *
   * @param ids of the pieces on the laying
   * @param down by how much the figure draws a piece lower than it lies on the table (mm of cloth)
   */
  static List<Inked> notches(LaidPiece laid, Set<String> ids, double down, double scale) {
    List<Inked> notches = new ArrayList<>();
    boolean half = laid.item().layers() == ClothItem.Layers.ON_FOLD;
    List<Striped.Mate> mates = laid.piece().striped().map(Striped::mates).orElse(List.of());
    Set<Point> places = new LinkedHashSet<>();
    for (Striped.Mate mate : mates) {
      if (ids.contains(mate.meets().piece()) && (!half || mate.at().y() >= 0)) {
        places.add(laid.motion().apply(mate.at()));
      }
    }
    for (Point at : places) {
      Subject subject = Subject.piece(laid.piece().name());
      notches.add(diamond(at.x() * scale, (at.y() - down) * scale, subject));
    }
    return notches;
  }

  static Fill diamond(double x, double y, Subject subject) {
    Path round =
        Path.polyline(
            List.of(
                new Point(x - NOTCH, y),
                new Point(x, y - NOTCH),
                new Point(x + NOTCH, y),
                new Point(x, y + NOTCH),
                new Point(x - NOTCH, y)));
    return new Fill(Outline.of(round), ClothInk.NOTCH, Layer.COMMON, subject);
  }
}
