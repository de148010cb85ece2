package org.hemwright.pattern.construction;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.seam.Seam;

/** Whether stitches give where the cloth must, and whether a band's parts can be found. */
final class StitchWork {
  /** A mark may lie this far from its even part: as far as notches may lie apart (mm). */
  private static final double OFF = 6;

  private final Table table;

  StitchWork(Table table) {
    this.table = table;
  }

  /**
   * On knits a stitch gives with the cloth. It must where the line closes round the body or one
   * layer is stretched onto the other; elsewhere it is worth a look.
   */
  void sewn(Pass pass, Step step) {
    if (!table.cloth.isKnit(pass) || table.cloth.isPlaced(pass)) {
      return;
    }
    boolean must = isRound(pass) || isStretched(pass.seam());
    if (must || !pass.isWithinOnePart()) {
      for (Stitch stitch : rigid(step)) {
        table.tell(
            Trouble.seam(must ? Kind.RIGID : Kind.RIGID_SEAM, pass)
                .in(step)
                .by(stitch)
                .with(pass.strips().get(0).piece()));
      }
    }
  }

  void stitched(Strip strip, Step step) {
    if (table.cloth.isKnit(strip) && !table.cloth.isLine(strip) && isRound(strip)) {
      rigid(step)
          .forEach(
              stitch ->
                  table.tell(
                      Trouble.edge(Kind.RIGID, strip).in(step).by(stitch).with(strip.piece())));
    }
  }

  /** An elastic that is stitched on must go on stretching, whatever the cloth. */
  void onElastic(String elastic, Step step) {
    rigid(step)
        .forEach(
            stitch ->
                table.tell(
                    Trouble.about(Kind.RIGID, "elastic", elastic)
                        .in(step)
                        .by(stitch)
                        .with(elastic)));
  }

  private static List<Stitch> rigid(Step step) {
    return step.sewing().choices().stream().filter(stitch -> !stitch.stretches()).toList();
  }

  private boolean isRound(Pass pass) {
    return pass.join().layers().stream()
        .allMatch(layer -> table.cloth.round(layer, table.finished).orElse(false));
  }

  private static boolean isStretched(Seam seam) {
    return seam.ease().share() && (seam.ease().least() != 0 || seam.ease().most() != 0);
  }

  /**
   * Whether an edge, with those that go on from it under the same name, closes to a round when all
   * is sewn.
   */
  private boolean isRound(Strip strip) {
    return isRound(strip, table.finished);
  }

  /** Whether it closes to a round by now, where it will when all is sewn. */
  boolean isRoundYet(Strip strip) {
    return !isRound(strip) || isRound(strip, table.corners);
  }

  /** Whether an edge, with those that go on from it, is a round by now. */
  boolean isClosedRound(Strip strip) {
    return isRound(strip, table.corners);
  }

  /** Whether a seam sews the layer that a strip lies in to a shorter one. */
  boolean isLonger(Strip strip) {
    for (Pass pass : table.cloth.passesOf(strip)) {
      double own = 0;
      double least = Double.POSITIVE_INFINITY;
      for (Seam.Layer layer : pass.join().layers()) {
        double length = LayerWalk.length(layer, table.cloth.sized());
        least = StrictMath.min(least, length);
        if (layer.run().stream().map(Strip::of).anyMatch(strip::equals)) {
          own = StrictMath.max(own, length);
        }
      }
      if (own > least + OFF) {
        return true;
      }
    }
    return false;
  }

  private boolean isRound(Strip strip, Corners corners) {
    List<Strip> alike =
        table.cloth.strips().stream().filter(each -> each.edge().equals(strip.edge())).toList();
    List<Strip> walked = new ArrayList<>(List.of(strip));
    Corners.Corner here = table.cloth.corner(strip, false);
    Corners.Corner home = table.cloth.corner(strip, true);
    while (!corners.together(here, home)) {
      Corners.Corner from = here;
      Optional<Strip> next =
          alike.stream()
              .filter(each -> !walked.contains(each))
              .filter(
                  each ->
                      corners.together(table.cloth.corner(each, true), from)
                          || corners.together(table.cloth.corner(each, false), from))
              .findFirst();
      if (next.isEmpty()) {
        return false;
      }
      boolean forward = corners.together(table.cloth.corner(next.get(), true), from);
      here = table.cloth.corner(next.get(), !forward);
      walked.add(next.get());
    }
    return true;
  }

  /** Each layer of a band sewn on by even parts shows where they are. */
  void evenParts(Pass pass, Step step, Act.Attach attach) {
    if (pass.isOnItself() || pass.seam().even().isPresent()) {
      return;
    }
    for (Seam.Layer layer : pass.join().layers()) {
      LayerWalk walk = LayerWalk.of(layer, table.cloth.sized());
      int unmarked = 0;
      for (int i = 1; i < attach.parts(); i++) {
        double at = walk.length() * i / attach.parts();
        boolean shown =
            walk.stops().stream()
                .filter(stop -> stop.kind() != LayerWalk.Kind.CORNER)
                .anyMatch(stop -> Math.abs(stop.distance() - at) <= OFF);
        unmarked += shown ? 0 : 1;
      }
      if (unmarked > 0) {
        table.tell(
            Trouble.seam(Kind.PARTS_UNMARKED, pass)
                .in(step)
                .at(Strip.of(layer.run().get(0)))
                .with(layer.text())
                .values(unmarked, attach.parts() - 1));
      }
    }
  }
}
