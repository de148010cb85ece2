package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Which strand of one layer is sewn to which of another.
 *
 * <p>Right sides together and starts together, the two walk round their parts in opposite senses.
 * Among several that could be, a strand goes with the one of the same copy; copies that have no
 * names of their own and are cut alike are taken in order, since no one can tell them apart.
 *
 * @param outcome how it went
 * @param pairs the pairs, in the order of the first layer; empty unless paired
 */
record Pairing(Outcome outcome, List<Pair> pairs) {
  Pairing {
    pairs = List.copyOf(pairs);
  }

  /** How a pairing went. */
  enum Outcome {
    PAIRED,
    /** One layer has more strands than the other. */
    COUNTS_DIFFER,
    /** As many, but they do not face each other. */
    HANDS_DIFFER,
    /** More than one answer. */
    TWO_WAYS
  }

  /**
   * A strand of the first layer and its partner.
   *
   * @param first the index in the first layer
   * @param second in the second layer
   */
  record Pair(int first, int second) {}

  private static Pairing failed(Outcome outcome) {
    return new Pairing(outcome, List.of());
  }

  /**
   * Pairs two layers.
   *
   * @param eitherSense whether the sense of walking does not matter: a layer lies on a placement
   *     line, or may be walked from either end
   */
  static Pairing of(List<Strand> first, List<Strand> second, boolean eitherSense) {
    boolean placed = first.get(0).placed() || second.get(0).placed();
    boolean spare =
        (first.get(0).placed() && first.size() > second.size())
            || (second.get(0).placed() && second.size() > first.size());
    if (first.size() != second.size() && !spare) {
      return failed(Outcome.COUNTS_DIFFER);
    }
    List<Pair> pairs = new ArrayList<>();
    if (eitherSense || placed) {
      Outcome outcome = pairAmong(first, all(first), second, all(second), pairs, placed);
      return outcome == Outcome.PAIRED ? sorted(pairs) : failed(outcome);
    }
    for (int hand : new int[] {1, -1}) {
      List<Integer> here = walked(first, hand);
      List<Integer> there = walked(second, -hand);
      if (here.size() != there.size()) {
        return failed(Outcome.HANDS_DIFFER);
      }
      Outcome outcome = pairAmong(first, here, second, there, pairs, false);
      if (outcome != Outcome.PAIRED) {
        return failed(outcome);
      }
    }
    return sorted(pairs);
  }

  /**
   * Pairs a layer with itself: different copies where there are two or more, else the two halves.
   *
   * @param against whether one of the two is sewn against its drawing and the other along it
   */
  static Pairing withItself(List<Strand> strands, boolean against) {
    List<Integer> right = walked(strands, 1);
    List<Integer> left = walked(strands, -1);
    if (against) {
      return neighbours(strands, List.of(right, left));
    }
    if (right.size() != left.size()) {
      return failed(Outcome.HANDS_DIFFER);
    }
    int count = right.size();
    List<Pair> pairs = new ArrayList<>();
    boolean sameCopies = copies(strands, right).equals(copies(strands, left));
    int forced = sameCopies ? 2 : 1;
    boolean likeCopies = alike(strands, right) && alike(strands, left);
    if ((count > forced && !likeCopies) || (sameCopies && count > 3)) {
      return failed(Outcome.TWO_WAYS);
    }
    int shift = sameCopies && count > 1 ? 1 : 0;
    for (int i = 0; i < count; i++) {
      int a = right.get(i);
      int b = left.get((i + shift) % count);
      pairs.add(new Pair(Math.min(a, b), Math.max(a, b)));
    }
    return sorted(pairs);
  }

  /** Pairs within each group, where the two of a pair walk the same way round. */
  private static Pairing neighbours(List<Strand> strands, List<List<Integer>> groups) {
    List<Pair> pairs = new ArrayList<>();
    for (List<Integer> group : groups) {
      if (group.size() % 2 != 0) {
        return failed(Outcome.HANDS_DIFFER);
      }
      if (group.size() > 2 && !alike(strands, group)) {
        return failed(Outcome.TWO_WAYS);
      }
      for (int i = 0; i < group.size(); i += 2) {
        pairs.add(new Pair(group.get(i), group.get(i + 1)));
      }
    }
    return sorted(pairs);
  }

  private static Outcome pairAmong(
      List<Strand> first,
      List<Integer> here,
      List<Strand> second,
      List<Integer> there,
      List<Pair> pairs,
      boolean placed) {
    List<Integer> left = new ArrayList<>(here);
    List<Integer> right = new ArrayList<>(there);
    if (left.size() == right.size()) {
      if (placed) {
        pairByKey(first, left, second, right, pairs, s -> s.mirrored() + s.copies());
        pairByKey(first, left, second, right, pairs, s -> "" + s.mirrored());
      }
      pairByKey(first, left, second, right, pairs, Strand::copies);
    }
    boolean single = left.size() <= 1 && right.size() <= 1;
    boolean free =
        left.size() == right.size()
            ? alike(first, left) || alike(second, right)
            : left.size() < right.size() ? alike(second, right) : alike(first, left);
    if (!single && !free) {
      return Outcome.TWO_WAYS;
    }
    for (int i = 0; i < Math.min(left.size(), right.size()); i++) {
      pairs.add(new Pair(left.get(i), right.get(i)));
    }
    return Outcome.PAIRED;
  }

  /** Pairs those whose key occurs once on either side, and takes them off the lists. */
  private static void pairByKey(
      List<Strand> first,
      List<Integer> left,
      List<Strand> second,
      List<Integer> right,
      List<Pair> pairs,
      Function<Strand, String> key) {
    Map<String, List<Integer>> here = byKey(first, left, key);
    Map<String, List<Integer>> there = byKey(second, right, key);
    here.forEach(
        (name, indices) -> {
          List<Integer> partners = there.getOrDefault(name, List.of());
          if (indices.size() == 1 && partners.size() == 1) {
            pairs.add(new Pair(indices.get(0), partners.get(0)));
            left.remove(indices.get(0));
            right.remove(partners.get(0));
          }
        });
  }

  private static Map<String, List<Integer>> byKey(
      List<Strand> strands, List<Integer> indices, Function<Strand, String> key) {
    Map<String, List<Integer>> groups = new LinkedHashMap<>();
    for (int index : indices) {
      groups.computeIfAbsent(key.apply(strands.get(index)), k -> new ArrayList<>()).add(index);
    }
    return groups;
  }

  private static boolean alike(List<Strand> strands, List<Integer> indices) {
    return indices.stream().map(strands::get).allMatch(Strand::numbered)
        && indices.stream().map(i -> strands.get(i).likeness()).distinct().count() <= 1;
  }

  private static List<String> copies(List<Strand> strands, List<Integer> indices) {
    return indices.stream().map(i -> strands.get(i).copies()).toList();
  }

  private static List<Integer> walked(List<Strand> strands, int hand) {
    return all(strands).stream().filter(i -> strands.get(i).hand() == hand).toList();
  }

  private static List<Integer> all(List<Strand> strands) {
    List<Integer> indices = new ArrayList<>();
    for (int i = 0; i < strands.size(); i++) {
      indices.add(i);
    }
    return indices;
  }

  private static Pairing sorted(List<Pair> pairs) {
    return new Pairing(
        Outcome.PAIRED, pairs.stream().sorted(Comparator.comparingInt(Pair::first)).toList());
  }
}
