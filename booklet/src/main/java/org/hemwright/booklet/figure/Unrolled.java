package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.measure.SeamWalk;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * A band and the opening that it is sewn to, both unrolled along the seam: the opening below with
 * the seams and folds that it passes, the band above with its notches, drawn out to the opening's
 * length, so that the marks that meet stand over each other.
 *
 * @param below length of the opening (mm)
 * @param band the walk along the band
 * @param opening the walk along the opening
 */
record Unrolled(
    double below,
    LayerWalk band,
    LayerWalk opening,
    SeamWalk walk,
    Seam.Join join,
    Telling telling) {
  static Unrolled of(Telling telling, Seam seam, Seam.Join join) {
    SeamWalk walk = SeamWalk.of(seam, join, join.layers().size() - 1, telling.drawn());
    return new Unrolled(walk.second().length(), walk.first(), walk.second(), walk, join, telling);
  }

  void draw(Scene scene, Set<String> shown) {
    double deep = Math.max(60, below * 0.16);
    double wide = below;
    double high = Math.max(30, below * 0.09);
    scene.shape(rectangle(0, -deep, wide, 0), false, Subject.NONE);
    List<Double> joints = new ArrayList<>(List.of(0.0));
    opening.stops().stream()
        .filter(stop -> stop.kind() == LayerWalk.Kind.SEAM)
        .forEach(stop -> joints.add(stop.distance()));
    joints.add(below);
    for (LayerWalk.Stop stop : opening.stops()) {
      boolean seam = stop.kind() == LayerWalk.Kind.SEAM;
      if (seam || stop.kind() == LayerWalk.Kind.FOLD) {
        scene.line(
            Path.straight(new Point(stop.distance(), -deep), new Point(stop.distance(), 0)),
            seam ? Draw.EDGE : Draw.FOLD);
      }
    }
    List<EdgePlace> run = join.layers().get(join.layers().size() - 1).run();
    names(scene, run, deep, shown);
    scene.shape(rectangle(0, -high * 0.35, wide, high), false, Subject.NONE);
    scene.line(Path.straight(new Point(0, 0), new Point(wide, 0)), Draw.STITCH);
    String piece = join.layers().get(0).run().get(0).piece();
    shown.add(piece);
    scene.words(number(piece), new Point(wide * 0.12, high * 0.5));
    // As long as the opening, the band shows its notches where they are pinned.
    double stretched = below / band.length();
    notches(scene, band.stops(), stretched, high * 0.3);
    notches(scene, opening.stops(), 1, -high * 0.3);
    for (LayerWalk.Stop stop : band.stops()) {
      if (isNotch(stop)) {
        mark(scene, stop.distance() * stretched, high);
      }
    }
    double from = 0;
    for (SeamWalk.Interval interval : walk.intervals()) {
      mark(scene, interval.secondFrom(), high);
      from = interval.secondTo();
    }
    mark(scene, from, high);
    for (int i = 0; i < walk.intervals().size(); i++) {
      SeamWalk.Interval interval = walk.intervals().get(i);
      if (interval.first() < interval.second() * 0.995) {
        double middle = (interval.secondFrom() + interval.secondTo()) / 2;
        double reach = (interval.secondTo() - interval.secondFrom()) * 0.18;
        scene.arrow(
            Path.straight(
                new Point(middle + reach * 0.3, high * 0.5),
                new Point(middle + reach, high * 0.5)));
        scene.arrow(
            Path.straight(
                new Point(middle - reach * 0.3, high * 0.5),
                new Point(middle - reach, high * 0.5)));
      }
    }
  }

  private static boolean isNotch(LayerWalk.Stop stop) {
    return stop.kind() == LayerWalk.Kind.NOTCH || stop.kind() == LayerWalk.Kind.DOUBLE_NOTCH;
  }

  /** Marks across the line where two edges meet, double ones as two. */
  private static void notches(
      Scene scene, List<LayerWalk.Stop> stops, double stretched, double reach) {
    for (LayerWalk.Stop stop : stops) {
      if (isNotch(stop)) {
        boolean twice = stop.kind() == LayerWalk.Kind.DOUBLE_NOTCH;
        double aside = twice ? Math.abs(reach) * 0.3 : 0;
        for (double at : twice ? new double[] {-aside, aside} : new double[] {0}) {
          double x = stop.distance() * stretched + at;
          scene.line(Path.straight(new Point(x, 0), new Point(x, reach)), Draw.EDGE);
        }
      }
    }
  }

  private void names(Scene scene, List<EdgePlace> run, double deep, Set<String> shown) {
    double walked = 0;
    String last = "";
    for (EdgePlace place : run) {
      double length = LayerWalk.of(new Seam.Layer(List.of(place)), telling.drawn()).length();
      String who = place.piece() + "." + place.copy();
      shown.add(place.piece());
      if (!who.equals(last)) {
        scene.words(number(place.piece()), new Point(walked + length * 0.5, -deep * 0.6));
      }
      last = who;
      walked += length;
    }
  }

  private static void mark(Scene scene, double at, double high) {
    scene.pin(new Point(at, high * 0.02), new Vector(0, 1));
  }

  private String number(String piece) {
    return telling.card(piece).map(card -> Integer.toString(card.number())).orElse("");
  }

  private static Path rectangle(double left, double low, double right, double high) {
    return Draw.box(left, low, right, high).path();
  }
}
