package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.PathPlace;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.style.SizeStyle;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.body.Size;
import org.jspecify.annotations.Nullable;

/**
 * The cut lines of a nest: each run in its size's own dashes, or unbroken where sizes coincide,
 * with the size's name set into the line at intervals where its neighbours leave room.
 */
final class CutDrawing {
  private static final double POINTS = 9;
  private static final double APART = 170;
  private static final double STEP = 3;
  private static final double END_CLEAR = 5;
  private static final double GAP = 1.3;

  /** What a label wants of free space on either side of its line (mm). */
  private static final double CLEAR = 2.1;

  private static final double BEND = 0.5;

  /** Bare paper round a label that other lines run through (mm). */
  private static final double BARE = 0.5;

  private final Nest nest;
  private final Speech speech;
  private final Map<Size, NearLine> near = new LinkedHashMap<>();
  private final NearLine others;
  private final NearLine seams;
  private final List<Point> placed = new ArrayList<>();
  private final List<Inked> items = new ArrayList<>();

  private CutDrawing(Nest nest, Speech speech, List<Path> otherLines, List<Path> seams) {
    this.nest = nest;
    this.speech = speech;
    others = new NearLine(otherLines);
    this.seams = new NearLine(seams);
    for (PieceShape shape : nest.shapes()) {
      near.put(shape.size(), new NearLine(shape.cutLine()));
    }
  }

  /**
   * The cut lines and their labels.
   *
   * @param otherLines what else is drawn on the piece, which labels keep off where they can
   * @param seams where pages meet, which they keep off too
   */
  static List<Inked> of(Nest nest, Speech speech, List<Path> otherLines, List<Path> seams) {
    return new CutDrawing(nest, speech, otherLines, seams).drawn();
  }

  private List<Inked> drawn() {
    List<SizedPath> lines =
        nest.shapes().stream().map(shape -> new SizedPath(shape.size(), shape.cutLine())).toList();
    List<SharedLines.Run> runs = SharedLines.of(lines);
    Map<Size, Boolean> labelled = new LinkedHashMap<>();
    for (SharedLines.Run run : runs) {
      List<Spot> spots = spots(run);
      boolean any = false;
      List<Spot> taken = new ArrayList<>();
      for (Spot spot : spots) {
        if (spot.clear() >= CLEAR) {
          taken.add(spot);
          any = true;
        }
      }
      if (any) {
        run.sizes().forEach(size -> labelled.put(size, true));
      }
      draw(run, taken);
    }
    for (SharedLines.Run run : runs) {
      boolean lacking = run.sizes().size() == 1 && !labelled.containsKey(run.sizes().get(0));
      if (lacking) {
        spots(run).stream()
            .max(Comparator.comparingDouble(Spot::clear))
            .ifPresent(
                spot -> {
                  lift(run, spot);
                  labelled.put(run.sizes().get(0), true);
                });
      }
    }
    return items;
  }

  /** A place for a label on a run, and whether a line other than a cut line runs through it. */
  private record Spot(double distance, SetLine line, double clear, boolean crossed) {}

  private List<Spot> spots(SharedLines.Run run) {
    List<String> names = run.sizes().stream().map(Size::name).toList();
    String text = speech.shortSizes(names, nest.shapes().size());
    SetLine line = Face.SEMIBOLD.set(text, POINTS);
    double room = run.path().length() - line.width() - 2 * (GAP + END_CLEAR);
    if (room <= 0) {
      return List.of();
    }
    int count = Math.max(1, (int) Math.round(run.path().length() / APART));
    int order = indexOf(run.sizes().get(0));
    int all = nest.shapes().size();
    double share = run.path().length() / count;
    double stagger = all == 1 ? 0 : share * 0.7 * ((double) order / (all - 1) - 0.5);
    Stations stations = new Stations(run.path());
    List<Spot> spots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double ideal = share * (i + 0.5) + stagger;
      Spot best = best(run, stations, line, ideal, share * 0.45);
      if (best != null) {
        spots.add(best);
      }
      if (best != null && best.clear() >= CLEAR) {
        placed.add(run.path().at(best.distance()).point());
      }
    }
    return spots;
  }

  private int indexOf(Size size) {
    int index = 0;
    for (PieceShape shape : nest.shapes()) {
      if (shape.size().equals(size)) {
        return index;
      }
      index++;
    }
    return 0;
  }

  private @Nullable Spot best(
      SharedLines.Run run, Stations stations, SetLine line, double ideal, double reach) {
    double half = line.width() / 2 + GAP;
    double length = run.path().length();
    Spot best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double off = -reach; off <= reach; off += STEP) {
      double at = ideal + off;
      if (at < half + END_CLEAR || at > length - half - END_CLEAR) {
        continue;
      }
      if (stations.bend(at, half) > BEND) {
        continue;
      }
      double clear = clear(run, stations, at, half);
      double other = clearOf(others, stations, at, half);
      double seam = clearOf(seams, stations, at, half);
      double cost =
          Math.abs(off) * 0.03
              + Math.max(0, CLEAR - clear) * 40
              + Math.max(0, CLEAR - other) * 4
              + Math.max(0, CLEAR - seam) * 8;
      if (cost < least) {
        least = cost;
        best = new Spot(at, line, clear, other < CLEAR);
      }
    }
    return best;
  }

  /** The distance to what is nearest beside a label: other sizes' lines, notches, labels. */
  private double clear(SharedLines.Run run, Stations stations, double at, double half) {
    double clear = 10;
    for (double off : new double[] {-half, 0, half}) {
      Point point = stations.at(at + off);
      for (Map.Entry<Size, NearLine> other : near.entrySet()) {
        if (!run.sizes().contains(other.getKey())) {
          clear = Math.min(clear, other.getValue().distance(point));
        }
      }
    }
    Point middle = stations.at(at);
    for (Point label : placed) {
      clear = Math.min(clear, middle.distanceTo(label) - 2 * half);
    }
    return clear;
  }

  private static double clearOf(NearLine lines, Stations stations, double at, double half) {
    double clear = 10;
    for (double share : new double[] {-1, -0.5, 0, 0.5, 1}) {
      clear = Math.min(clear, lines.distance(stations.at(at + share * half)));
    }
    return clear;
  }

  private void draw(SharedLines.Run run, List<Spot> spots) {
    Pen pen = pen(run);
    Layer layer = layer(run);
    double from = 0;
    Path path = run.path();
    if (spots.isEmpty()) {
      items.add(new Stroke(path, pen, layer, subject(run)));
      return;
    }
    for (Spot spot : spots) {
      double half = spot.line().width() / 2 + GAP;
      items.add(new Stroke(path.part(from, spot.distance() - half), pen, layer, subject(run)));
      if (spot.crossed()) {
        items.add(bare(run, spot));
      }
      items.add(words(run, spot));
      from = spot.distance() + half;
    }
    items.add(new Stroke(path.part(from, path.length()), pen, layer, subject(run)));
  }

  /** A label where there is little room, lifted off the lines beneath it by bare paper. */
  private void lift(SharedLines.Run run, Spot spot) {
    items.add(bare(run, spot));
    items.add(words(run, spot));
  }

  private Fill bare(SharedLines.Run run, Spot spot) {
    Words words = words(run, spot);
    SetLine line = spot.line();
    Vector along = Vector.atAngle(words.angle());
    Vector up = along.left();
    Point foot = words.at().minus(along.times(BARE)).minus(up.times(BARE));
    Vector wide = along.times(line.width() + 2 * BARE);
    Vector high = up.times(line.capitalHeight() + 2 * BARE);
    Path edge =
        Path.polyline(
            List.of(foot, foot.plus(wide), foot.plus(wide).plus(high), foot.plus(high), foot));
    return new Fill(Outline.of(edge), Inks.PAPER, words.layer(), words.subject());
  }

  private Words words(SharedLines.Run run, Spot spot) {
    PathPlace place = run.path().at(spot.distance());
    Vector along = place.tangent();
    if (along.dx() < -0.02 || (Math.abs(along.dx()) <= 0.02 && along.dy() < 0)) {
      along = along.negated();
    }
    Point start =
        place
            .point()
            .minus(along.times(spot.line().width() / 2))
            .minus(along.left().times(spot.line().capitalHeight() / 2));
    return new Words(spot.line(), start, along.angle(), pen(run).ink(), layer(run), subject(run));
  }

  private Pen pen(SharedLines.Run run) {
    if (run.sizes().size() > 1) {
      return Pens.CUT;
    }
    SizeStyle style = nest.styles().of(run.sizes().get(0));
    return style.cut();
  }

  private static Layer layer(SharedLines.Run run) {
    return new Layer(run.sizes().stream().map(Size::name).toList());
  }

  private Subject subject(SharedLines.Run run) {
    Subject piece = Subject.piece(nest.card().name());
    return run.sizes().size() == 1 ? piece.size(run.sizes().get(0).name()) : piece;
  }
}
