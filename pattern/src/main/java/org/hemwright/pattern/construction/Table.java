package org.hemwright.pattern.construction;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Step;
import org.jspecify.annotations.Nullable;

/** The cloth as it lies before the maker between two steps, and what went wrong so far. */
final class Table {
  final CutCloth cloth;

  /** All steps of this view in this size, in order. */
  final List<Step> steps;

  final Corners corners = new Corners();

  /** As all lies when every seam is sewn. */
  final Corners finished = new Corners();

  private final Map<Strip, StripState> strips = new HashMap<>();
  private final Map<Pass, PassState> passes = new HashMap<>();
  final Map<Part, Step> folded = new HashMap<>();
  final Map<Part, Step> turnedOut = new HashMap<>();

  /** The parts that a fold or a casing has closed on themselves. */
  final Map<Part, Step> closed = new HashMap<>();

  /** Facings and linings that lie inside the garment. */
  final Set<Part> inside = new HashSet<>();

  final Map<String, Opening> openings = new LinkedHashMap<>();
  final Map<String, Held> held = new LinkedHashMap<>();

  /** Darts, pleats and gathers that are closed, as {@code piece.name}. */
  final Map<String, Step> takenIn = new HashMap<>();

  /** Placement lines that are carried over to the cloth. */
  final Set<Strip> marked = new HashSet<>();

  /** Whether something has been stitched. */
  boolean sewnOnce;

  /** Darts and pleats whose lines are carried over to the cloth, as {@code piece.name}. */
  final Set<String> markedIntakes = new HashSet<>();

  /** The parts that interfacing is fused to. */
  final Map<Part, Step> fused = new HashMap<>();

  final Set<Trouble> troubles = new LinkedHashSet<>();

  /** What is known of one strip. */
  static final class StripState {
    @Nullable Step treated;
    boolean applied;
    @Nullable Step finish;
    boolean surelyFinished;
    @Nullable Step enclosed;
    @Nullable Step turned;
    boolean raw;

    /** The step that leaves it raw and does not say why. */
    @Nullable Step rawUnsaid;
  }

  /** What is known of one pass. */
  static final class PassState {
    @Nullable Step sewn;
    @Nullable Step pressed;
    Optional<PressDirection> direction = Optional.empty();

    /** Where a strip of it is pressed another way than the rest. */
    final Map<Strip, PressDirection> own = new HashMap<>();

    @Nullable Step crossed;
    @Nullable Step joinedAsOne;
  }

  /** An opening that was left. */
  static final class Opening {
    final Step left;
    final List<Pass> passes;
    final OptionalDouble length;
    @Nullable Step closed;

    Opening(Step left, List<Pass> passes, OptionalDouble length) {
      this.left = left;
      this.passes = List.copyOf(passes);
      this.length = length;
    }
  }

  /** An elastic or a cord. */
  static final class Held {
    @Nullable Step casing;
    @Nullable Step in;
    boolean laid;
    boolean applied;
    @Nullable Step joined;
    @Nullable Step tried;
    Optional<String> opening = Optional.empty();
  }

  Table(CutCloth cloth, List<Step> steps) {
    this.cloth = cloth;
    this.steps = List.copyOf(steps);
    cloth.passes().forEach(pass -> cloth.bring(pass, finished));
  }

  StripState state(Strip strip) {
    return strips.computeIfAbsent(strip, each -> new StripState());
  }

  PassState state(Pass pass) {
    return passes.computeIfAbsent(pass, each -> new PassState());
  }

  boolean isSewn(Pass pass) {
    return state(pass).sewn != null;
  }

  /** The passes along a strip that are sewn. */
  List<Pass> sewnAlong(Strip strip) {
    return cloth.passesOf(strip).stream().filter(this::isSewn).toList();
  }

  Held held(String name) {
    return held.computeIfAbsent(name, each -> new Held());
  }

  void tell(Trouble trouble) {
    troubles.add(trouble);
  }

  /** That a step comes after the one that closed what it needs. */
  void late(Kind kind, Strip strip, Step step, @Nullable Step before) {
    Trouble trouble = Trouble.edge(kind, strip).in(step);
    tell(before == null ? trouble : trouble.after(before));
  }

  OptionalDouble mm(Amount amount) {
    return amount.in(cloth.sized().numbers());
  }
}
