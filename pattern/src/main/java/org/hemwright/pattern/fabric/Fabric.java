package org.hemwright.pattern.fabric;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.finding.Origin;

/**
 * A cloth that the designer names, as the maker must find it in a shop.
 *
 * @param name in the document: {@code main}, {@code lining}
 * @param title for the maker: "Cotton jersey"; the name when she gave none
 * @param kind knit or woven
 * @param widths the widths it is sold in (mm), as labelled, rising
 * @param stretchAcross the least stretch it needs across (selvedge to selvedge), 0.35 for 35 %
 * @param stretchAlong the least stretch it needs along the grain
 * @param nap whether every piece must point the same way
 * @param repeat its stripes or checks, where they are to meet at the seams
 * @param traits what else is so of it, each once
 * @param origin where the document names it
 */
public record Fabric(
    String name,
    String title,
    Kind kind,
    List<Double> widths,
    OptionalDouble stretchAcross,
    OptionalDouble stretchAlong,
    Nap nap,
    Optional<Repeat> repeat,
    List<Trait> traits,
    Origin origin) {
  /** A fabric without stripes, of which nothing else is said. */
  public Fabric(
      String name,
      String title,
      Kind kind,
      List<Double> widths,
      OptionalDouble stretchAcross,
      OptionalDouble stretchAlong,
      Nap nap,
      Origin origin) {
    this(
        name,
        title,
        kind,
        widths,
        stretchAcross,
        stretchAlong,
        nap,
        Optional.empty(),
        List.of(),
        origin);
  }

  public Fabric {
    widths = List.copyOf(widths);
    traits = traits.stream().distinct().sorted().toList();
    if (name.isBlank()) {
      throw new IllegalArgumentException("a fabric has a name");
    }
  }

  /** The same fabric with other stripes. */
  public Fabric with(Repeat other) {
    return new Fabric(
        name,
        title,
        kind,
        widths,
        stretchAcross,
        stretchAlong,
        nap,
        Optional.of(other),
        traits,
        origin);
  }

  /** The same fabric, of which this is so too. */
  public Fabric with(Trait trait) {
    List<Trait> more = new ArrayList<>(traits);
    more.add(trait);
    return new Fabric(
        name, title, kind, widths, stretchAcross, stretchAlong, nap, repeat, more, origin);
  }

  /** Whether it may be cut folded at all: not where its stripes are uneven across. */
  public boolean liesFolded() {
    return repeat.isEmpty() || repeat.get().liesFolded();
  }

  /** How it is laid: stripes and checks all one way, as if they had a nap (handbook section 5). */
  public Nap laidWith() {
    return repeat.isPresent() ? Nap.ONE_WAY : nap;
  }

  /** Whether no cloth that is bought for it has a nap, so that its pieces may lie either way. */
  public boolean hasNoNap() {
    return laidWith() == Nap.EITHER_WAY && traits.contains(Trait.NO_NAP);
  }

  /** Whether it is alike on both sides: it has no right side and no wrong one. */
  public boolean sidesAlike() {
    return traits.contains(Trait.SIDES_ALIKE);
  }

  /**
   * The ways for which a yardage table tells what to buy, its own first: cloth that may be bought
   * with a nap or without is told of both (common practice, no source).
   */
  public List<Nap> naps() {
    return laidWith() == Nap.ONE_WAY
        ? List.of(Nap.ONE_WAY)
        : hasNoNap() ? List.of(Nap.EITHER_WAY) : List.of(Nap.EITHER_WAY, Nap.ONE_WAY);
  }

  /**
   * Stripes or checks. They are even one way of the cloth where its bars follow each other alike
   * from either end, so that some bar is an axis of symmetry; else uneven.
   *
   * @param along from bar to like bar along the selvedge (mm); absent where none runs across
   * @param across the same from selvedge to selvedge; absent where none runs along
   * @param unevenAlong whether they are uneven along the cloth; false where they are not along it
   * @param unevenAcross whether they are uneven across it; false where they are not across it
   * @param matched the names of the notches that lie on the same bar in every piece
   */
  public record Repeat(
      OptionalDouble along,
      OptionalDouble across,
      boolean unevenAlong,
      boolean unevenAcross,
      List<String> matched) {
    /** Even stripes or checks. */
    public Repeat(OptionalDouble along, OptionalDouble across, List<String> matched) {
      this(along, across, false, false, matched);
    }

    public Repeat {
      matched = List.copyOf(matched);
      if ((unevenAlong && along.isEmpty()) || (unevenAcross && across.isEmpty())) {
        throw new IllegalArgumentException("what does not repeat is not uneven");
      }
      if (along.isEmpty() && across.isEmpty()) {
        throw new IllegalArgumentException("stripes repeat along the cloth or across it");
      }
      if (!(along.orElse(1) > 0) || !(across.orElse(1) > 0)) {
        throw new IllegalArgumentException("a repeat is a length above 0");
      }
    }

    /**
     * The same with bars farther apart, or nearer to each other.
     *
     * @param otherAlong instead of what it repeats along the cloth (mm); only where it does
     * @param otherAcross the same across it
     */
    public Repeat every(OptionalDouble otherAlong, OptionalDouble otherAcross) {
      return new Repeat(
          along.isPresent() && otherAlong.isPresent() ? otherAlong : along,
          across.isPresent() && otherAcross.isPresent() ? otherAcross : across,
          unevenAlong,
          unevenAcross,
          matched);
    }

    /** Whether they are uneven along the cloth, across it or both. */
    public boolean isUneven() {
      return unevenAlong || unevenAcross;
    }

    /**
     * Whether a fold along the cloth can bring like bars on each other (handbook section 5: uneven
     * ones are cut from a single layer).
     */
    public boolean liesFolded() {
      return !unevenAcross;
    }
  }

  /** How cloth is made, as far as a pattern cares. */
  public enum Kind {
    KNIT,
    WOVEN
  }

  /** What else may be so of a cloth. */
  public enum Trait {
    /** It never has a nap, whatever the maker buys: interfacing, most lining. */
    NO_NAP,
    /** It has no right side and no wrong one, so that a piece may be cut from either. */
    SIDES_ALIKE
  }

  /** Whether pieces may be turned end for end on the cloth (handbook section 5). */
  public enum Nap {
    /** Pieces may be turned by half a turn. */
    EITHER_WAY,
    /** Pile, sheen, one-way print, and all knits: every piece points the same way. */
    ONE_WAY
  }
}
