package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.cloth.laying.Lane;
import org.hemwright.cloth.laying.Layout;
import org.hemwright.cloth.laying.LayoutChecker;
import org.hemwright.cloth.laying.LooseShape;
import org.hemwright.cloth.laying.Objection;
import org.hemwright.cloth.laying.Placement;
import org.hemwright.cloth.laying.Spot;
import org.hemwright.cloth.laying.StripProblem;
import org.hemwright.cloth.laying.Turn;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Holds a laying against the rules, from what comes off the cloth: it is unfolded, and the copies
 * that are then cut must be those of the pattern, lefts and rights, clear of one another and of the
 * selvedges, all pointing the same way where the cloth has a nap, and unfolded where its bars are
 * uneven across. It believes nothing of the plan, and uses the pieces' own outlines, not those of
 * the search.
 */
public final class LayingRules {
  /** Wide enough for the checker's allowance for touching to come to {@link Tolerance}. */
  private static final double WIDE = Tolerance.DRAWN_LENGTH / LayoutChecker.TOUCH;

  /** What {@link Matching} lets a notch lie beside its bar, and what is rounded (mm). */
  private static final double ON_BAR = 1.1;

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private final List<ClothPiece> pieces;
  private final Fabric.Nap nap;
  private final Optional<Fabric.Repeat> repeat;

  /**
   * The rules for these pieces on a cloth.
   *
   * @param repeat its stripes, if it has any
   */
  public LayingRules(List<ClothPiece> pieces, Fabric.Nap nap, Optional<Fabric.Repeat> repeat) {
    this.pieces = List.copyOf(pieces);
    this.nap = nap;
    this.repeat = repeat;
  }

  /** The same on a cloth whose stripes are those that the pieces are held to. */
  public LayingRules(List<ClothPiece> pieces, Fabric.Nap nap) {
    this(
        pieces,
        nap,
        pieces.stream().flatMap(piece -> piece.striped().stream()).map(Striped::repeat).findAny());
  }

  /** Everything that speaks against a laying; empty: a person can cut by it. */
  public List<String> objections(ClothLaying laying) {
    List<String> objections = new ArrayList<>();
    addFoldFaults(laying, objections);
    if (laying.sheet().fold() != Fold.SINGLE && repeat.stream().anyMatch(r -> r.unevenAcross())) {
      objections.add("the cloth is folded, and its bars are uneven across");
    }
    ClothLaying flat = laying.unfolded();
    addCountFaults(flat, objections);
    if (nap == Fabric.Nap.ONE_WAY && flat.pieces().stream().anyMatch(LaidPiece::turned)) {
      objections.add("a piece lies against the nap");
    }
    addPlaceFaults(flat, objections);
    addStripeFaults(laying, flat, objections);
    if (laying.sheet().settings().gap() > 0) {
      addGapFaults(flat, objections);
    }
    return objections;
  }

  private static void addFoldFaults(ClothLaying laying, List<String> objections) {
    for (LaidPiece laid : laying.pieces()) {
      boolean doubled = laid.item().layers() != ClothItem.Layers.SINGLE;
      if (doubled && laid.piece().rightSideUp()) {
        objections.add(laid.item().id() + " is cut right side up and lies on doubled cloth");
      }
      if (laid.open() && doubled) {
        objections.add(laid.item().id() + " is doubled where the cloth is open");
      }
      if (laid.item().layers() == ClothItem.Layers.ON_FOLD) {
        double y = laid.origin().y();
        boolean onFold =
            laying.sheet().folds().stream()
                .anyMatch(fold -> Math.abs(fold - y) <= Tolerance.DRAWN_LENGTH);
        if (!onFold || !laid.piece().liesOnFold()) {
          objections.add(laid.item().id() + " does not lie on a fold");
        }
      } else if (doubled) {
        boolean inside =
            laying.sheet().doubled().stream()
                .anyMatch(
                    part ->
                        laid.covered().low() >= part.low() - Tolerance.DRAWN_LENGTH
                            && laid.covered().high() <= part.high() + Tolerance.DRAWN_LENGTH);
        if (!inside) {
          objections.add(laid.item().id() + " leaves the doubled cloth");
        }
      }
      boolean alongside = !laid.open() && !doubled && laying.sheet().foldsAlong();
      if (alongside
          && laid.covered().low() < laying.sheet().beside().low() - Tolerance.DRAWN_LENGTH) {
        objections.add(laid.item().id() + " lies on two layers and is cut from one");
      }
      if (!laid.open() && laid.covered().right() > laying.openFrom() + Tolerance.DRAWN_LENGTH) {
        objections.add(laid.item().id() + " reaches into the opened cloth");
      }
      if (laid.open()
          && laying.pieces().stream().anyMatch(other -> !other.open())
          && laid.covered().left() < laying.openFrom() - Tolerance.DRAWN_LENGTH) {
        objections.add(laid.item().id() + " reaches into the folded cloth");
      }
    }
  }

  private void addCountFaults(ClothLaying flat, List<String> objections) {
    for (ClothPiece piece : pieces) {
      int asDrawn = 0;
      int mirrored = 0;
      for (LaidPiece laid : flat.pieces()) {
        if (laid.piece().id().equals(piece.id())) {
          asDrawn += laid.motion().isMirror() ? 0 : 1;
          mirrored += laid.motion().isMirror() ? 1 : 0;
        }
      }
      boolean right =
          piece.ownMirror(nap)
              ? asDrawn + mirrored == piece.count()
              : asDrawn == piece.asDrawn() && mirrored == piece.asMirrored();
      if (!right) {
        objections.add(
            piece.id() + " is cut " + asDrawn + " times as drawn and " + mirrored + " mirrored");
      }
    }
  }

  private static void addPlaceFaults(ClothLaying flat, List<String> objections) {
    checked(flat).forEach(objection -> objections.add(objection.toString()));
  }

  /**
   * A fault of where a piece lies.
   *
   * @param overlap whether it lies on another; else it leaves the cloth
   * @param one the piece's id
   * @param two the id of what it lies on; absent where it leaves the cloth
   */
  public record Place(boolean overlap, String one, Optional<String> two) {
    /** Of two that overlap, the one that is not an item's own piece, or is a copy of it. */
    public Optional<String> other(String item) {
      boolean first = item.equals(one) || item.startsWith(one + ".");
      return first ? two : two.map(none -> one);
    }
  }

  /** Every pair of a laying's copies that overlap, and every copy that leaves the cloth. */
  public static List<Place> places(ClothLaying laying) {
    List<Place> places = new ArrayList<>();
    for (Objection objection : checked(laying.unfolded())) {
      boolean overlap = objection.code().equals("lay-overlap");
      Optional<String> other =
          objection.finding().arguments().get("other") instanceof Argument.Text text
              ? Optional.of(text.text())
              : Optional.empty();
      places.add(new Place(overlap, objection.finding().subject(), other));
    }
    return places;
  }

  private static List<Objection> checked(ClothLaying flat) {
    double selvedge = flat.sheet().settings().selvedge();
    Lane lane = new Lane.Between(selvedge, flat.sheet().width() - selvedge);
    List<Turn> turns = new ArrayList<>();
    for (double degrees : new double[] {0, 180}) {
      turns.add(new Turn(degrees, false));
      turns.add(new Turn(degrees, true));
    }
    Map<String, LooseShape> shapes = new LinkedHashMap<>();
    List<Placement> placements = new ArrayList<>();
    for (LaidPiece laid : flat.pieces()) {
      String id = laid.piece().id();
      LooseShape known = shapes.get(id);
      int demand = known == null ? 1 : known.demand() + 1;
      List<Spot> corners = laid.piece().shape().corners();
      shapes.put(id, new LooseShape(id, demand, turns, corners, List.of(lane)));
      Turn turn = new Turn(laid.turned() ? 180 : 0, laid.motion().isMirror());
      placements.add(new Placement(id, turn, laid.origin().x(), laid.origin().y()));
    }
    StripProblem problem = new StripProblem("flat", WIDE, List.copyOf(shapes.values()));
    return new LayoutChecker(problem).objections(new Layout(flat.length(), placements));
  }

  /**
   * Matched notches that are sewn together lie on the same place of the repeat, and pieces lie on
   * the bars that a drawing shows, mirrored copies as the mirror image where the bars have one.
   * Only the first goes by where the notches come to lie on the flat cloth, and by nothing that
   * placed them.
   */
  private static void addStripeFaults(
      ClothLaying laying, ClothLaying flat, List<String> objections) {
    for (LaidPiece laid : flat.pieces()) {
      Striped striped = laid.piece().striped().orElse(null);
      if (striped == null) {
        continue;
      }
      for (Striped.Mate mate : striped.mates()) {
        Optional<Point> at = cutPlace(laid, mate.mirrored(), mate.at());
        for (LaidPiece other : flat.pieces()) {
          Striped.Met met = mate.meets();
          Optional<Point> there =
              other.piece().id().equals(met.piece())
                  ? cutPlace(other, met.mirrored(), met.at())
                  : Optional.empty();
          if (at.isPresent() && there.isPresent()) {
            Vector apart = there.get().minus(at.get());
            String what = mate.notch() + " lies, to that of " + other.item().id() + ",";
            if (met.along()) {
              addOffBar(laid, what, apart.dx(), striped.repeat().along(), "along", objections);
            }
            if (met.across()) {
              addOffBar(laid, what, apart.dy(), striped.repeat().across(), "across", objections);
            }
          }
        }
      }
      if (striped.across().isPresent()) {
        Striped.Across across = striped.across().get();
        boolean mirrored = laid.motion().isMirror();
        double image = striped.repeat().unevenAcross() ? across.mirrored() : -across.drawn();
        double due = barAcross(laying) + (mirrored ? image : across.drawn());
        double apart = laid.origin().y() - due;
        addOffBar(laid, "it lies", apart, striped.repeat().across(), "across", objections);
      }
    }
  }

  /** Where on the flat cloth a bar runs along it: in the fold, else in the middle (mm). */
  private static double barAcross(ClothLaying laying) {
    ClothSheet sheet = laying.sheet();
    return sheet.foldsAlong() ? sheet.depth() : sheet.width() / 2;
  }

  /**
   * Where a notch of a copy as drawn, or of a mirrored one, comes to lie, if this is such a one.
   */
  private static Optional<Point> cutPlace(LaidPiece laid, boolean mirrored, Point at) {
    if (laid.piece().evenSided()) {
      Point image = new Point(at.x(), -at.y());
      return Optional.of(laid.motion().apply(mirrored ? image : at));
    }
    return laid.motion().isMirror() == mirrored || laid.piece().eitherFace()
        ? Optional.of(laid.motion().apply(at))
        : Optional.empty();
  }

  private static void addOffBar(
      LaidPiece laid,
      String what,
      double apart,
      OptionalDouble repeat,
      String direction,
      List<String> objections) {
    double beside = Phases.apart(apart, 0, repeat.orElseThrow());
    if (beside > ON_BAR) {
      objections.add(
          laid.item().id() + ": " + what + " " + beside + " mm beside its bar " + direction);
    }
  }

  private static void addGapFaults(ClothLaying flat, List<String> objections) {
    double gap = flat.sheet().settings().gap();
    List<Geometry> outlines = flat.pieces().stream().map(LayingRules::outline).toList();
    for (int i = 0; i < outlines.size(); i++) {
      for (int k = i + 1; k < outlines.size(); k++) {
        double apart = outlines.get(i).distance(outlines.get(k));
        if (apart < gap - Tolerance.DRAWN_LENGTH) {
          objections.add(
              flat.pieces().get(i).item().id()
                  + " and "
                  + flat.pieces().get(k).item().id()
                  + " lie "
                  + apart
                  + " mm apart");
        }
      }
    }
  }

  private static Geometry outline(LaidPiece laid) {
    List<Coordinate> ring = new ArrayList<>();
    laid.covered().corners().forEach(corner -> ring.add(new Coordinate(corner.x(), corner.y())));
    ring.add(ring.get(0));
    return FACTORY.createPolygon(ring.toArray(Coordinate[]::new));
  }
}
