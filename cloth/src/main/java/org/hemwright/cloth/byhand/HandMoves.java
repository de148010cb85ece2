package org.hemwright.cloth.byhand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.hemwright.cloth.rule.ClearGround;
import org.hemwright.cloth.rule.ClothItem;
import org.hemwright.cloth.rule.ClothLaying;
import org.hemwright.cloth.rule.LaidPiece;
import org.hemwright.cloth.rule.LayingRules;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.fabric.Fabric;

/**
 * Moves one piece of a laying at a time. Where it cannot lie where it is put, it comes to lie
 * touching, as near as it can; where it can lie nowhere near, all stays as it was. A piece that is
 * held to the bars of a striped cloth moves by whole repeats: to the place nearest to where it is
 * put at which it still meets its mates.
 *
 * @param row whose cloth and pieces
 */
public record HandMoves(YardageRow row) {
  /** So far round the place that was meant another is looked for (mm). */
  private static final double NEAR = 120;

  private static final double STEP = 8;
  private static final int HALVINGS = 11;
  private static final double[][] WAYS = {{-1, 0}, {1, 0}, {0, -1}, {0, 1}};

  /**
   * What came of a move.
   *
   * @param places where everything lies now
   * @param objection why the piece does not lie where it was put; none: it does
   * @param on the item that is in the way, where one is
   */
  public record Moved(List<OwnPlace> places, Optional<Objection> objection, Optional<String> on) {
    public Moved {
      places = List.copyOf(places);
    }
  }

  /** What keeps a piece from lying somewhere. */
  public enum Objection {
    /** It would lie on another. */
    OVERLAP,
    /** It would leave the cloth, or the part of it that it is cut from. */
    OUTSIDE,
    /** It would lie against the nap. */
    NAP,
    /** Another rule. */
    RULE
  }

  /** The laying that some places come to; absent where they are not those of the row's pieces. */
  public Optional<ClothLaying> laying(List<OwnPlace> places) {
    return new OwnLaying(OwnLaying.OfCloth.of(row), places).on(row.need().orElseThrow().laying());
  }

  private boolean holds(List<OwnPlace> places) {
    return laying(places)
        .filter(laying -> OwnLayings.objections(row, laying).isEmpty())
        .isPresent();
  }

  /** The item at a place of the list. */
  private ClothItem item(OwnPlace place) {
    return row.need().orElseThrow().laying().pieces().stream()
        .map(LaidPiece::item)
        .filter(item -> item.id().equals(place.item()))
        .findFirst()
        .orElseThrow();
  }

  /**
   * Puts a piece somewhere.
   *
   * @param places where everything lies, all within the rules
   * @param at which of them is moved
   * @param along where to (mm)
   * @param across where to (mm); a piece on the fold stays on it
   */
  public Moved move(List<OwnPlace> places, int at, double along, double across) {
    OwnPlace was = places.get(at);
    boolean onFold = item(was).layers() == ClothItem.Layers.ON_FOLD;
    BarSteps steps = BarSteps.of(item(was).piece());
    OwnPlace meant =
        was.at(
            steps.along(was.along(), along),
            onFold ? was.across() : steps.across(was.across(), across));
    return settle(places, at, was, meant);
  }

  /** Turns a piece end for end about its middle. */
  public Moved turn(List<OwnPlace> places, int at) {
    OwnPlace was = places.get(at);
    ClothItem item = item(was);
    if (row.nap() == Fabric.Nap.ONE_WAY) {
      return new Moved(places, Optional.of(Objection.NAP), Optional.empty());
    }
    if (item.layers() == ClothItem.Layers.ON_FOLD) {
      return new Moved(places, Optional.of(Objection.OUTSIDE), Optional.empty());
    }
    LaidPiece laid = new LaidPiece(item, was.copy(), was.motion(), false);
    Vector middle =
        new Vector(
            laid.covered().left() + laid.covered().right(),
            laid.covered().low() + laid.covered().high());
    OwnPlace meant =
        new OwnPlace(
            was.item(),
            was.copy(),
            !was.turned(),
            was.mirrored(),
            OwnPlace.rounded(middle.dx() - was.along()),
            OwnPlace.rounded(middle.dy() - was.across()));
    return settle(places, at, was, meant);
  }

  private Moved settle(List<OwnPlace> places, int at, OwnPlace was, OwnPlace meant) {
    List<OwnPlace> put = with(places, at, meant);
    if (holds(put)) {
      return new Moved(put, Optional.empty(), Optional.empty());
    }
    Optional<LayingRules.Place> fault =
        laying(put)
            .flatMap(
                laying ->
                    LayingRules.places(laying).stream()
                        .max(Comparator.comparing(LayingRules.Place::overlap)));
    Objection objection =
        fault
            .map(one -> one.overlap() ? Objection.OVERLAP : Objection.OUTSIDE)
            .orElse(Objection.OUTSIDE);
    Optional<String> on = fault.flatMap(one -> one.other(was.item()));
    Optional<OwnPlace> best =
        nearest(was, meant, guided(places, at, meant))
            .filter(place -> holds(with(places, at, place)))
            .or(() -> nearest(was, meant, place -> holds(with(places, at, place))));
    return new Moved(
        best.map(place -> with(places, at, place)).orElse(places), Optional.of(objection), on);
  }

  /** A quick judgement of where a piece may lie, turned as it is meant; the rules decide. */
  private Predicate<OwnPlace> guided(List<OwnPlace> places, int at, OwnPlace meant) {
    Optional<ClothLaying> laying = laying(with(places, at, meant));
    if (laying.isEmpty()) {
      return none -> false;
    }
    int own = 0;
    for (int i = 0; i < laying.get().pieces().size(); i++) {
      LaidPiece piece = laying.get().pieces().get(i);
      own = piece.item().id().equals(meant.item()) && piece.copy() == meant.copy() ? i : own;
    }
    ClearGround ground = new ClearGround(laying.get(), laying.get().pieces().get(own), own);
    return place -> ground.isClear(place.motion());
  }

  private Optional<OwnPlace> nearest(OwnPlace was, OwnPlace meant, Predicate<OwnPlace> clear) {
    return candidates(was, meant, clear).stream()
        .min(Comparator.comparingDouble(each -> apart(each, meant)));
  }

  /** Places where it may lie: on the way back to where it was, and straight from the one meant. */
  private List<OwnPlace> candidates(OwnPlace was, OwnPlace meant, Predicate<OwnPlace> clear) {
    List<OwnPlace> found = new ArrayList<>();
    boolean onFold = item(was).layers() == ClothItem.Layers.ON_FOLD;
    BarSteps steps = BarSteps.of(item(was).piece());
    if (steps.areHeld()) {
      double far = Math.max(NEAR, steps.most());
      return steps.near(meant, far, onFold ? 0 : far).stream().filter(clear).toList();
    }
    Vector back = new Vector(was.along() - meant.along(), was.across() - meant.across());
    if (was.turned() == meant.turned() && back.length() > 0) {
      first(meant, back.times(1 / back.length()), back.length(), clear).ifPresent(found::add);
    }
    for (double[] way : WAYS) {
      if (!onFold || way[1] == 0) {
        first(meant, new Vector(way[0], way[1]), NEAR, clear).ifPresent(found::add);
      }
    }
    return found;
  }

  /** The first place along a way at which the piece may lie, touching what was in the way. */
  private Optional<OwnPlace> first(
      OwnPlace meant, Vector way, double most, Predicate<OwnPlace> clear) {
    double low = 0;
    for (double high = Math.min(STEP, most); ; high = Math.min(most, high + STEP)) {
      if (clear.test(along(meant, way, high))) {
        double free = high;
        for (int i = 0; i < HALVINGS; i++) {
          double middle = (low + free) / 2;
          if (clear.test(along(meant, way, middle))) {
            free = middle;
          } else {
            low = middle;
          }
        }
        return Optional.of(along(meant, way, free));
      }
      if (high >= most) {
        return Optional.empty();
      }
      low = high;
    }
  }

  private static OwnPlace along(OwnPlace from, Vector way, double far) {
    return from.at(from.along() + way.dx() * far, from.across() + way.dy() * far);
  }

  private static double apart(OwnPlace one, OwnPlace other) {
    return new Vector(one.along() - other.along(), one.across() - other.across()).length();
  }

  private static List<OwnPlace> with(List<OwnPlace> places, int at, OwnPlace place) {
    List<OwnPlace> all = new ArrayList<>(places);
    all.set(at, place);
    return all;
  }

  /** An objection's name in the words of a page. */
  public static String word(Objection objection) {
    return objection.name().toLowerCase(Locale.ROOT);
  }
}
