package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.cloth.laying.Layout;
import org.hemwright.cloth.laying.Placement;
import org.hemwright.cloth.laying.Turn;
import org.hemwright.geometry.Motion;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.fabric.Fabric;

/**
 * Every piece in its place on the table.
 *
 * @param sheet the cloth and how it is folded
 * @param length how much cloth it takes (mm), opened out where it is folded across
 * @param openFrom where on the table the cloth lies opened out, to its far end (mm); the whole
 *     length on the table where nothing is cut from opened cloth
 * @param pieces in the order of the pattern
 */
public record ClothLaying(
    ClothSheet sheet, double length, double openFrom, List<LaidPiece> pieces) {
  public ClothLaying {
    pieces = List.copyOf(pieces);
  }

  /**
   * The laying that a plan's layouts come to, one for each of its sections. Half of the gap that
   * the search keeps round every piece is taken off at the ends, but not at a fold across the
   * cloth, where each piece meets its own mirror image.
   */
  public static ClothLaying of(ClothPlan plan, List<Layout> layouts) {
    double gap = plan.sheet().settings().gap();
    double start = 0;
    double length = 0;
    double openFrom = 0;
    List<LaidPiece> pieces = new ArrayList<>();
    for (int i = 0; i < layouts.size(); i++) {
      Section section = plan.sections().get(i);
      Layout layout = layouts.get(i);
      double atStart = section.times(plan.sheet()) > 1 ? 0 : section.gap();
      double taken = layout.length() - section.gap() - atStart;
      double apart = i == 0 ? 0 : toBar(start + gap, plan.repeat()) - start;
      start += apart;
      length += apart + section.times(plan.sheet()) * taken;
      addPieces(section, layout, start - atStart, pieces);
      start += taken;
      openFrom = section.open() && i > 0 ? openFrom : start;
    }
    return new ClothLaying(plan.sheet(), length, openFrom, pieces);
  }

  /**
   * The laying that pieces come to where they lie, as short as it can be.
   *
   * @param sheet the cloth and how it is folded
   * @param pieces at least one
   */
  public static ClothLaying of(ClothSheet sheet, List<LaidPiece> pieces) {
    double folded = right(pieces, false);
    double open = right(pieces, true);
    boolean twice = sheet.fold() == Fold.CROSSWISE;
    if (open == 0) {
      return new ClothLaying(sheet, twice ? 2 * folded : folded, folded, pieces);
    }
    double from = folded == 0 ? open : folded;
    return new ClothLaying(sheet, open + (twice ? folded : 0), from, pieces);
  }

  /** The first place from here on where bars lie as they do at the cut end of the cloth. */
  private static double toBar(double place, OptionalDouble repeat) {
    return repeat.isPresent()
        ? Math.ceil(place / repeat.getAsDouble()) * repeat.getAsDouble()
        : place;
  }

  private static void addPieces(
      Section section, Layout layout, double start, List<LaidPiece> into) {
    Map<String, Integer> copies = new LinkedHashMap<>();
    for (ClothItem item : section.items()) {
      for (Placement placement : layout.placements()) {
        if (placement.id().equals(item.id())) {
          int copy = copies.merge(item.id(), 1, Integer::sum);
          Vector shift = new Vector(placement.x() + start, placement.y() + section.shift());
          into.add(
              new LaidPiece(item, copy, motion(item, placement.turn(), shift), section.open()));
        }
      }
    }
  }

  private static Motion motion(ClothItem item, Turn turn, Vector shift) {
    Motion turned =
        turn.degrees() == 180
            ? new Motion(-1, 0, turn.mirrored(), Vector.ZERO)
            : new Motion(1, 0, turn.mirrored(), Vector.ZERO);
    Motion face = item.mirrored() ? new Motion(1, 0, true, Vector.ZERO) : Motion.identity();
    return face.then(turned).then(Motion.move(shift));
  }

  /** The ids of the pieces that are laid. */
  public Set<String> ids() {
    Set<String> ids = new LinkedHashSet<>();
    pieces.forEach(laid -> ids.add(laid.piece().id()));
    return ids;
  }

  /** How long it lies on the table (mm). */
  public double tableLength() {
    double open =
        pieces.stream()
            .filter(LaidPiece::open)
            .mapToDouble(piece -> piece.covered().right())
            .max()
            .orElse(0);
    return Math.max(openFrom, open);
  }

  /** The area of everything that is cut (mm²). */
  public double cutArea() {
    return pieces.stream()
        .mapToDouble(
            laid ->
                laid.piece().shape().area()
                    * (laid.item().layers() == ClothItem.Layers.DOUBLE ? 2 : 1))
        .sum();
  }

  /** The share of the cloth between its selvedge margins that is cut into pieces, 0 to 1. */
  public double density() {
    return cutArea() / (sheet.settings().usable(sheet.width()) * length);
  }

  /**
   * The same cloth unfolded, right side up: every copy by itself, as on single cloth. Along it x
   * runs from the cut end, y from one selvedge.
   */
  public ClothLaying unfolded() {
    ClothSheet flat = new ClothSheet(Fold.SINGLE, sheet.width(), 0, sheet.settings());
    List<LaidPiece> copies = new ArrayList<>();
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (LaidPiece laid : pieces) {
      for (Motion motion : flatMotions(laid)) {
        boolean even = laid.piece().evenSided();
        Motion plain =
            even && motion.isMirror()
                ? new Motion(motion.cos(), motion.sin(), false, motion.shift())
                : motion;
        boolean mirrored = plain.isMirror() && !laid.piece().eitherFace();
        ClothItem item = new ClothItem(laid.piece(), ClothItem.Layers.SINGLE, mirrored, 1);
        int copy = counts.merge(item.id(), 1, Integer::sum);
        copies.add(new LaidPiece(item, copy, plain, true));
      }
    }
    return new ClothLaying(flat, length, length, copies);
  }

  /** Where the copies of one place lie once the cloth is flat. */
  private List<Motion> flatMotions(LaidPiece laid) {
    double fold = sheet.fold() == Fold.CROSSWISE ? openFrom : 0;
    Motion lower =
        laid.open()
            ? laid.motion().then(Motion.move(new Vector(fold, 0)))
            : laid.motion().then(Motion.move(new Vector(fold, sheet.depth())));
    if (laid.item().layers() != ClothItem.Layers.DOUBLE) {
      return List.of(lower);
    }
    if (sheet.fold() == Fold.CROSSWISE) {
      Motion acrossFold = Motion.mirror(new Point(fold, 0), new Point(fold, 1));
      return List.of(lower, lower.then(acrossFold));
    }
    boolean far = sheet.fold() == Fold.DOUBLE && laid.origin().y() > sheet.depth();
    double line = far ? sheet.width() - sheet.depth() : sheet.depth();
    Motion overFold = Motion.mirror(new Point(0, line), new Point(1, line));
    return List.of(lower, lower.then(overFold));
  }

  /** The same laying on cloth that is alike on both sides, on which copies have no face. */
  public ClothLaying onClothAlike() {
    List<LaidPiece> alike = new ArrayList<>();
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (LaidPiece laid : pieces) {
      ClothPiece piece = laid.piece().onClothAlike();
      boolean mirrored = laid.item().mirrored() && !piece.eitherFace();
      ClothItem item = new ClothItem(piece, laid.item().layers(), mirrored, laid.item().demand());
      int copy = counts.merge(item.id(), 1, Integer::sum);
      alike.add(new LaidPiece(item, copy, laid.motion(), laid.open()));
    }
    return new ClothLaying(sheet, length, openFrom, alike);
  }

  /**
   * Without some of the pieces: what a garment with fewer pieces takes of it; never longer.
   *
   * @param ids the pieces that stay, at least one that is laid here
   */
  public ClothLaying only(List<String> ids) {
    List<LaidPiece> kept = pieces.stream().filter(laid -> ids.contains(laid.piece().id())).toList();
    double folded = right(kept, false);
    double first = left(kept, true);
    boolean both = kept.stream().anyMatch(LaidPiece::open) && folded > 0;
    double gap = both ? sheet.settings().gap() : 0;
    double room = kept.stream().anyMatch(LaidPiece::open) ? first - folded - gap : 0;
    double back = wholeRepeats(room, kept);
    List<LaidPiece> moved = new ArrayList<>();
    for (LaidPiece laid : kept) {
      moved.add(laid.open() ? laid.moved(new Vector(-back, 0)) : laid);
    }
    double end = Math.max(folded, right(moved, true));
    double twice = sheet.fold() == Fold.CROSSWISE ? folded : 0;
    return new ClothLaying(sheet, end + twice, both || folded > 0 ? folded : end, moved);
  }

  /** So far that bars stay bars. */
  private static double wholeRepeats(double room, List<LaidPiece> pieces) {
    return pieces.stream()
        .flatMap(laid -> laid.piece().striped().stream())
        .flatMapToDouble(striped -> striped.repeat().along().stream())
        .findFirst()
        .stream()
        .map(repeat -> Math.floor(room / repeat) * repeat)
        .findFirst()
        .orElse(room);
  }

  private static double right(List<LaidPiece> pieces, boolean open) {
    return pieces.stream()
        .filter(laid -> laid.open() == open)
        .mapToDouble(laid -> laid.covered().right())
        .max()
        .orElse(0);
  }

  private static double left(List<LaidPiece> pieces, boolean open) {
    return pieces.stream()
        .filter(laid -> laid.open() == open)
        .mapToDouble(laid -> laid.covered().left())
        .min()
        .orElse(0);
  }

  /**
   * The same laying on a cloth that is as wide or wider.
   *
   * @param width of that cloth on the table, unfolded (mm)
   */
  public ClothLaying onWider(double width) {
    double depth =
        switch (sheet.fold()) {
          case LENGTHWISE -> width / 2;
          case DOUBLE -> width / 4;
          case PARTIAL, CROSSWISE, SINGLE -> sheet.depth();
        };
    ClothSheet wider = new ClothSheet(sheet.fold(), width, depth, sheet.settings());
    Vector farSide = new Vector(0, wider.tableWidth() - sheet.tableWidth());
    Vector toMiddle = new Vector(0, (width - sheet.width()) / 2);
    List<LaidPiece> moved = new ArrayList<>();
    for (LaidPiece laid : pieces) {
      boolean far =
          sheet.fold() == Fold.DOUBLE && !laid.open() && laid.origin().y() > sheet.depth();
      boolean byMiddle = heldAcross() && (laid.open() || sheet.fold() == Fold.SINGLE);
      moved.add(far ? laid.moved(farSide) : byMiddle ? laid.moved(toMiddle) : laid);
    }
    return new ClothLaying(wider, length, openFrom, moved);
  }

  /** The stripes or checks that pieces are held to, if they are. */
  public Optional<Fabric.Repeat> repeat() {
    return firstHeld().flatMap(laid -> laid.piece().striped()).map(Striped::repeat);
  }

  /**
   * Where along the table a bar lies that runs across the cloth (mm); of no account where none
   * does.
   */
  public double barAlong() {
    return firstHeld()
        .map(laid -> laid.origin().x() - laid.piece().striped().orElseThrow().along())
        .orElse(0.0);
  }

  /** Where across the table of folded cloth, or of single cloth, a bar runs along it (mm). */
  public double barAcross() {
    return sheet.foldsAlong() ? 0 : sheet.width() / 2;
  }

  private Optional<LaidPiece> firstHeld() {
    return pieces.stream().filter(laid -> laid.piece().striped().isPresent()).findFirst();
  }

  /** Whether pieces are held to bars that run along the cloth. */
  public boolean heldAcross() {
    return pieces.stream().anyMatch(laid -> laid.piece().heldAcross());
  }
}
