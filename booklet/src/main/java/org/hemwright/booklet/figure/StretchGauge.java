package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.style.Inks;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.quantity.LengthKind;

/**
 * A gauge to hold cloth against, in true size: from the left end to the first mark the cloth lies
 * at rest, and it must reach the second mark when it is pulled (handbook section 4: over 10 cm or 4
 * in).
 */
public final class StretchGauge {
  /** How much cloth is held at rest (mm); handbook section 4. */
  public static final double REST = 100;

  private static final double HIGH = 22;
  private static final double LONGEST = 168;
  private static final double SHORTER = 50;

  private StretchGauge() {}

  /** A gauge for each fabric that must stretch. */
  public static List<Figure> of(Telling telling) {
    List<Figure> gauges = new ArrayList<>();
    for (Fabric fabric : telling.run().pattern().fabrics()) {
      fabric
          .stretchAcross()
          .ifPresent(share -> gauges.add(gauge(telling, fabric, share, "stretch-across")));
      fabric
          .stretchAlong()
          .ifPresent(share -> gauges.add(gauge(telling, fabric, share, "stretch-along")));
    }
    return gauges;
  }

  /** How much cloth is held for a stretch, so that the gauge fits the page (mm). */
  public static double rest(double share) {
    return REST * (1 + share) <= LONGEST ? REST : SHORTER;
  }

  private static Figure gauge(Telling telling, Fabric fabric, double share, String which) {
    double rest = rest(share);
    double reach = rest * (1 + share);
    Provenance restFrom = Provenance.of(Source.SETTING, "gauge", "rest", fabric.name(), which);
    Slots slots =
        Slots.of("fabric", telling.fabric(fabric.name()))
            .and(
                "share", telling.percent(share, Provenance.of(Source.FABRIC, fabric.name(), which)))
            .and("rest", telling.words().length(rest, LengthKind.FINISHED, restFrom));
    List<Item> items = new ArrayList<>();
    Pen edge = Pen.solid(0.3, Inks.BLACK);
    items.add(Draw.line(0, 0, reach, 0, edge));
    items.add(Draw.line(0, 0, 0, HIGH, edge));
    items.addAll(Draw.cloth(Draw.box(0, 0.3, rest, 7), true, Subject.NONE));
    items.add(Draw.line(rest, 0, rest, HIGH * 0.62, edge));
    items.add(Draw.line(reach, 0, reach, HIGH, edge));
    for (int i = 1; i * 10 < reach; i++) {
      items.add(Draw.line(i * 10, 0, i * 10, i % 5 == 0 ? -2.6 : -1.5, Draw.FINE));
    }
    items.addAll(Draw.arrow(new Point(rest + 1.2, 10.2), new Point(reach - 0.6, 10.2)));
    String start = Inline.plain(telling.say("gauge.start"));
    String here = Inline.plain(telling.say("gauge.rest", slots));
    String there = Inline.plain(telling.say("gauge.reach", slots));
    items.add(Draw.plain(start, 1.2, HIGH - 3));
    items.add(Draw.plain(here, Math.max(1.2, rest - Draw.width(here) - 1.2), 9));
    items.add(Draw.plain(there, Math.max(20, reach - Draw.width(there) - 1.2), HIGH - 3));
    return new Figure(
        "gauge-" + fabric.name() + "-" + which,
        new Sheet(new Box(-1, -4, Math.max(reach + 1, 60), HIGH + 1), items),
        Inline.plain(telling.say("gauge.alt", slots)),
        telling.say("gauge.caption", slots));
  }
}
