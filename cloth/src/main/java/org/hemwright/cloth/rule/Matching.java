package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.fabric.Fabric;

/**
 * Holds pieces to the bars of a striped or checked cloth, so that a bar which meets a seam at a
 * matched notch goes on in the other piece. Matching happens at the stitch line (handbook section
 * 5).
 *
 * <p>Two notches that a seam brings together lie on the same place of the repeat, along the cloth
 * and across it, in the very copies and halves that are sewn there. Notches of one name that no
 * seam joins still lie on the same bar along the cloth. What is tied to nothing is centred on a
 * bar. All pieces lie one way.
 *
 * <p>Where bars are even across the cloth, a mirrored copy is the mirror image in its bars too, and
 * a piece that is cut on the fold has its fold on a bar. Uneven ones have no mirror image on the
 * cloth: nothing lies folded, mirrored copies have a place of their own on the repeat, and the bars
 * go round the body one way; a piece that is drawn as a half has its middle on a bar where its
 * notches leave it free (handbook section 5, and common practice, no source). Copies that are cut
 * alike lie alike on the bars, unless they are given one by one.
 *
 * <p>Where not everything can be had, the notches that are named first in the document come first;
 * the others are told as {@linkplain Clash clashes}.
 */
public final class Matching {
  /** Notches that are this near (mm) lie on one place: the width of a chalk line; no source. */
  private static final double ON_BAR = 1;

  /** So many pieces are tried at the cut end of the cloth. */
  private static final int STARTS = 3;

  /**
   * Two matched notches that cannot lie on the same place of the repeat.
   *
   * @param piece the name of the one's piece
   * @param mate the name of the other's; the same where it is one of its own copies
   * @param notch their name
   * @param across whether they lie apart across the cloth; else along it
   * @param apart by how much (mm)
   */
  public record Clash(String piece, String mate, String notch, boolean across, double apart) {
    private boolean isLike(Clash other) {
      return piece.equals(other.piece) && notch.equals(other.notch) && across == other.across;
    }
  }

  private final Fabric.Repeat repeat;
  private final List<ClothPiece> pieces = new ArrayList<>();
  private final List<Tie> ties = new ArrayList<>();
  private final Map<String, Striped> striped = new LinkedHashMap<>();
  private final List<Clash> clashes = new ArrayList<>();
  private int lost;

  /** One end of a tie: a point of one of the pieces, in its own frame. */
  private record Tied(int piece, boolean mirrored, Point at) {}

  /** Two points that are to lie alike, across the cloth too where a seam joins them. */
  private record Tie(String notch, Tied one, Tied other, boolean sewn) {}

  /**
   * Matches the pieces of one size that are cut from a cloth.
   *
   * @param pairs the notches that seams bring together, of these pieces or others
   */
  public Matching(List<ClothPiece> all, Fabric.Repeat repeat, List<MatchedPair> pairs) {
    this.repeat = repeat;
    Set<String> joined = joined(all, pairs);
    for (ClothPiece piece : all) {
      if (joined.contains(piece.name()) || !names(piece).isEmpty()) {
        pieces.add(piece);
      }
    }
    addTies(pairs);
    settle();
  }

  private List<String> names(ClothPiece piece) {
    return repeat.matched().stream().filter(name -> piece.notchPlace(name).isPresent()).toList();
  }

  /** The names of the pieces of this cloth that pairs join, whole ones and parts. */
  private static Set<String> joined(List<ClothPiece> all, List<MatchedPair> pairs) {
    Set<String> here = new LinkedHashSet<>();
    all.forEach(piece -> here.add(piece.name()));
    Set<String> joined = new LinkedHashSet<>();
    for (MatchedPair pair : pairs) {
      if (here.contains(pair.one().piece()) && here.contains(pair.other().piece())) {
        joined.add(pair.one().piece());
        joined.add(pair.other().piece());
      }
    }
    return joined;
  }

  /**
   * The ties in the order in which the document names the notches; before them those of parts with
   * each other and with the whole, whose cloth must go on.
   */
  private void addTies(List<MatchedPair> pairs) {
    pairs.stream().filter(pair -> !repeat.matched().contains(pair.notch())).forEach(this::addTie);
    for (String name : repeat.matched()) {
      pairs.stream().filter(pair -> pair.notch().equals(name)).forEach(this::addTie);
      addUnsewn(name);
    }
  }

  private void addTie(MatchedPair pair) {
    for (Tied one : tied(pair.one())) {
      for (Tied other : tied(pair.other())) {
        ties.add(new Tie(pair.notch(), one, other, true));
      }
    }
  }

  private List<Tied> tied(MatchedPair.End end) {
    List<Tied> tied = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      if (isOn(pieces.get(i), end)) {
        tied.add(new Tied(i, end.mirrored(), pieces.get(i).frame().apply(end.at())));
      }
    }
    return tied;
  }

  private static boolean isOn(ClothPiece piece, MatchedPair.End end) {
    return piece.name().equals(end.piece())
        && (end.copy().isEmpty() || piece.copy().filter(own -> !own.equals(end.copy())).isEmpty());
  }

  /** Notches of one name lie on one bar along the cloth though no seam joins them. */
  private void addUnsewn(String name) {
    Tied first = null;
    for (int i = 0; i < pieces.size(); i++) {
      Optional<Point> at = pieces.get(i).notchPlace(name);
      if (at.isPresent()) {
        Tied own = new Tied(i, false, at.get());
        if (first != null) {
          ties.add(new Tie(name, first, own, false));
        }
        first = first == null ? own : first;
      }
    }
  }

  private void settle() {
    boolean[] even = new boolean[pieces.size()];
    for (int i = 0; i < even.length; i++) {
      even[i] = pieces.get(i).evenSided();
    }
    Optional<Phases> along =
        repeat.along().stream().mapToObj(every -> new Phases(every, ON_BAR, even)).findFirst();
    Optional<Phases> across = repeat.across().stream().mapToObj(this::across).findFirst();
    across.filter(phases -> !repeat.unevenAcross()).ifPresent(this::centreOnFolds);
    List<List<Striped.Mate>> mates = new ArrayList<>();
    pieces.forEach(piece -> mates.add(new ArrayList<>()));
    for (Tie tie : ties) {
      boolean holdsAlong = along.isPresent() && holds(tie, along.get(), false);
      boolean holdsAcross = tie.sewn && across.isPresent() && holds(tie, across.get(), true);
      if (holdsAlong || holdsAcross) {
        addMate(tie, tie.one, tie.other, holdsAlong, holdsAcross, mates);
        addMate(tie, tie.other, tie.one, holdsAlong, holdsAcross, mates);
      }
    }
    along.ifPresent(this::beginOnBars);
    across.filter(phases -> repeat.unevenAcross()).ifPresent(this::centreOnFolds);
    for (int i = 0; i < pieces.size(); i++) {
      double behind = along.isPresent() ? along.get().of(i) : 0;
      int own = i;
      Optional<Striped.Across> beside = across.map(phases -> across(phases, own));
      striped.put(pieces.get(i).id(), new Striped(repeat, behind, beside, mates.get(i)));
    }
  }

  /** Across uneven bars the mirrored copies of each piece are things of their own, after these. */
  private Phases across(double every) {
    boolean[] even = new boolean[repeat.unevenAcross() ? 2 * pieces.size() : pieces.size()];
    for (int i = 0; i < even.length; i++) {
      even[i] = pieces.get(i % pieces.size()).evenSided();
    }
    return new Phases(every, ON_BAR, even);
  }

  private Striped.Across across(Phases phases, int piece) {
    double drawn = phases.of(piece);
    return repeat.unevenAcross()
        ? new Striped.Across(drawn, phases.of(pieces.size() + piece))
        : Striped.Across.even(drawn);
  }

  /** Before the notches where bars are even, as their folds must; else as far as these leave it. */
  private void centreOnFolds(Phases across) {
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).onFold() && pieces.get(i).liesOnFold()) {
        across.begin(i, 0);
      }
    }
  }

  /** What is free along the cloth has its first notch on a bar. */
  private void beginOnBars(Phases along) {
    for (String name : repeat.matched()) {
      for (int i = 0; i < pieces.size(); i++) {
        Optional<Point> at = pieces.get(i).notchPlace(name);
        if (at.isPresent()) {
          along.begin(i, -at.get().x());
        }
      }
    }
  }

  private boolean holds(Tie tie, Phases phases, boolean across) {
    double apart = phases.tie(spot(tie.one, across), spot(tie.other, across));
    if (apart > 0) {
      lost++;
      String piece = pieces.get(tie.other.piece).name();
      String mate = pieces.get(tie.one.piece).name();
      Clash clash = new Clash(piece, mate, tie.notch, across, apart);
      if (clashes.stream().noneMatch(clash::isLike)) {
        clashes.add(clash);
      }
    }
    return apart == 0;
  }

  private Phases.Spot spot(Tied tied, boolean across) {
    if (!across) {
      return new Phases.Spot(tied.piece, false, tied.at.x());
    }
    boolean ofItsOwn = tied.mirrored && repeat.unevenAcross();
    return ofItsOwn
        ? new Phases.Spot(pieces.size() + tied.piece, false, -tied.at.y())
        : new Phases.Spot(tied.piece, tied.mirrored, tied.at.y());
  }

  private void addMate(
      Tie tie,
      Tied own,
      Tied other,
      boolean along,
      boolean across,
      List<List<Striped.Mate>> mates) {
    Striped.Met met =
        new Striped.Met(pieces.get(other.piece).id(), other.mirrored, other.at, along, across);
    Striped.Mate mate = new Striped.Mate(tie.notch, own.mirrored, own.at, met);
    if (!mates.get(own.piece).contains(mate)) {
      mates.get(own.piece).add(mate);
    }
  }

  /** The piece, held to the bars where it has a matched notch. */
  public ClothPiece matched(ClothPiece piece) {
    Striped own = striped.get(piece.id());
    return own == null ? piece : piece.with(own);
  }

  /** How many times two notches cannot lie alike, each way of the cloth counted. */
  public int lost() {
    return lost;
  }

  /** Notches that cannot lie on the same place as their mates, in the order of the document. */
  public List<Clash> clashes() {
    return clashes;
  }

  /**
   * The same pieces with all bars moved alike so that one long piece may begin at the cut end of
   * the cloth; several ways, the longest first. Pieces that are free come back as they are.
   */
  static List<List<ClothPiece>> starts(List<ClothPiece> all) {
    List<Striped> longest =
        all.stream()
            .filter(piece -> isHeldAlong(piece))
            .sorted(Comparator.comparingDouble(piece -> -piece.shape().length()))
            .flatMap(piece -> piece.striped().stream())
            .toList();
    List<Double> steps =
        longest.stream().map(own -> -own.along()).distinct().limit(STARTS).toList();
    return steps.isEmpty()
        ? List.of(all)
        : steps.stream()
            .map(step -> all.stream().map(piece -> begun(piece, step)).toList())
            .toList();
  }

  private static boolean isHeldAlong(ClothPiece piece) {
    return piece.striped().filter(own -> own.repeat().along().isPresent()).isPresent();
  }

  private static ClothPiece begun(ClothPiece piece, double step) {
    return isHeldAlong(piece) ? piece.with(piece.striped().orElseThrow().shifted(step)) : piece;
  }
}
