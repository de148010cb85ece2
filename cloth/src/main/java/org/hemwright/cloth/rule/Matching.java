package org.hemwright.cloth.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.hemwright.pattern.fabric.Fabric;

/**
 * Holds pieces to the bars of a striped or checked cloth, so that a bar which meets a seam at a
 * matched notch goes on in the other piece. Matching happens at the stitch line (handbook section
 * 5).
 *
 * <p>Along the cloth, notches of one name lie on the same bar in every piece. Across it each of
 * these pieces is centred on a bar, so that pairs are each other's mirror image in the stripes too.
 * All pieces lie one way. A piece whose matched notches are not as far apart as its neighbours' is
 * matched at the first of them, and the others are told as {@linkplain Clash clashes}.
 */
public final class Matching {
  /** Notches that are this near to a bar (mm) lie on it: the width of a chalk line; no source. */
  private static final double ON_BAR = 1;

  /** So many pieces of a group are tried at the cut end of the cloth. */
  private static final int STARTS = 3;

  /**
   * A matched notch that cannot lie on the bar of its mates.
   *
   * @param piece its name
   * @param notch its name
   * @param apart by how much it lies beside the bar (mm)
   */
  public record Clash(String piece, String notch, double apart) {}

  private final Fabric.Repeat repeat;
  private final Map<String, ClothPiece> pieces = new LinkedHashMap<>();
  private final Map<String, Striped> striped = new LinkedHashMap<>();
  private final Map<String, Double> bars = new LinkedHashMap<>();
  private final List<Clash> clashes = new ArrayList<>();

  /** Matches the pieces of one size that are cut from a cloth. */
  public Matching(List<ClothPiece> all, Fabric.Repeat repeat) {
    this.repeat = repeat;
    for (ClothPiece piece : all) {
      if (!names(piece).isEmpty()) {
        pieces.put(piece.id(), piece);
      }
    }
    int groups = 0;
    for (ClothPiece piece : pieces.values()) {
      if (!striped.containsKey(piece.id())) {
        bars.put(names(piece).get(0), 0.0);
        addGroup(piece, groups);
        groups++;
      }
    }
  }

  private List<String> names(ClothPiece piece) {
    return repeat.matched().stream().filter(name -> piece.notchAlong(name).isPresent()).toList();
  }

  /** Settles a piece by a bar that is known, and then all that share a notch with it. */
  private void addGroup(ClothPiece first, int group) {
    List<ClothPiece> waiting = new ArrayList<>(List.of(first));
    while (!waiting.isEmpty()) {
      ClothPiece piece = waiting.remove(0);
      if (striped.containsKey(piece.id())) {
        continue;
      }
      String known = names(piece).stream().filter(bars::containsKey).findFirst().orElseThrow();
      double phase = bars.getOrDefault(known, 0.0) - along(piece, known);
      List<String> held = new ArrayList<>();
      for (String name : names(piece)) {
        double bar = phase + along(piece, name);
        double apart = apart(bars.getOrDefault(name, bar), bar);
        if (apart > ON_BAR) {
          clashes.add(new Clash(piece.name(), name, apart));
        } else {
          held.add(name);
          bars.putIfAbsent(name, bar);
        }
      }
      striped.put(piece.id(), new Striped(repeat, held, phase, group));
      for (ClothPiece other : pieces.values()) {
        if (names(other).stream().anyMatch(held::contains)) {
          waiting.add(other);
        }
      }
    }
  }

  private static double along(ClothPiece piece, String notch) {
    return piece.notchAlong(notch).orElseThrow();
  }

  private double apart(double bar, double other) {
    OptionalDouble step = repeat.along();
    return step.isPresent() ? apart(bar, other, step.getAsDouble()) : 0;
  }

  /** How far two places are from lying on the same bar (mm). */
  static double apart(double place, double other, double repeat) {
    double steps = (place - other) / repeat;
    return Math.abs(steps - Math.rint(steps)) * repeat;
  }

  /** The piece, held to the bars where it has a matched notch. */
  public ClothPiece matched(ClothPiece piece) {
    Striped own = striped.get(piece.id());
    return own == null ? piece : piece.with(own);
  }

  /** Notches that cannot lie on the bar of their mates, in the order of the pieces. */
  public List<Clash> clashes() {
    return clashes;
  }

  /**
   * The same pieces with their bars moved so that one long piece of each group may begin at the cut
   * end of the cloth; several ways, the longest first. Pieces that are free come back as they are.
   */
  static List<List<ClothPiece>> starts(List<ClothPiece> all) {
    Map<Integer, List<ClothPiece>> groups = new LinkedHashMap<>();
    int most = 1;
    for (ClothPiece piece : all) {
      if (piece.striped().filter(own -> own.repeat().along().isPresent()).isPresent()) {
        int group = piece.striped().orElseThrow().group();
        groups.computeIfAbsent(group, each -> new ArrayList<>()).add(piece);
      }
    }
    for (List<ClothPiece> group : groups.values()) {
      group.sort(Comparator.comparingDouble(piece -> -piece.shape().length()));
      most = Math.max(most, group.size());
    }
    List<List<ClothPiece>> starts = new ArrayList<>();
    for (int start = 0; start < Math.min(STARTS, most); start++) {
      List<ClothPiece> moved = new ArrayList<>();
      for (ClothPiece piece : all) {
        List<ClothPiece> group =
            piece
                .striped()
                .map(own -> groups.getOrDefault(own.group(), List.of()))
                .orElse(List.of());
        moved.add(group.isEmpty() ? piece : begun(piece, group.get(start % group.size())));
      }
      starts.add(moved);
    }
    return starts;
  }

  private static ClothPiece begun(ClothPiece piece, ClothPiece first) {
    double back = first.striped().orElseThrow().phase();
    return piece.with(piece.striped().orElseThrow().shifted(-back));
  }
}
