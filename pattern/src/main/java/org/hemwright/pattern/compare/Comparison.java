package org.hemwright.pattern.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Motion;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.piece.Piece;

/**
 * What changed from the old version of a pattern to the new.
 *
 * @param changes all of them: the pattern's own, then piece by piece in the new document's order,
 *     then seams and elastics, then how it is made and what is bought for it
 * @param pieces those that both versions have, with old and new in every size that both have
 */
public record Comparison(List<Change> changes, List<PieceMatch> pieces) {
  public Comparison {
    changes = List.copyOf(changes);
    pieces = List.copyOf(pieces);
  }

  /** Compares two versions. */
  public static Comparison of(SizeRun old, SizeRun now) {
    Renaming names = Renaming.between(old, now);
    SizeRun was = new Renamed(names).run(old);
    List<Change> changes = new ArrayList<>();
    new PatternComparing(old, now, names, changes).compare();
    List<PieceMatch> matches = new ArrayList<>();
    Map<String, String> oldNames = new LinkedHashMap<>();
    names.pieces().forEach((before, after) -> oldNames.put(after, before));
    for (String name : Renaming.names(now)) {
      match(was, now, name, oldNames.getOrDefault(name, name), names).ifPresent(matches::add);
    }
    for (PieceMatch match : matches) {
      changes.addAll(match.changes());
    }
    new SeamComparing(was, now, changes).compare();
    new MakingComparing(old, now, names, changes).compare();
    if (changes.stream().anyMatch(Comparison::reachesNotions)) {
      new NotionComparing(old, now, changes).compare();
    }
    return new Comparison(changes, matches);
  }

  /** The sentences that changes are told in: {@code CODE.message}. */
  public static Messages messages() {
    return Messages.beside(Comparison.class, "compare.properties");
  }

  /** Whether nothing changed; something may still be worth telling. */
  public boolean nothingChanged() {
    return changes.stream().allMatch(change -> change.changed().isNote());
  }

  /** Whether what a maker buys may follow from it. */
  private static boolean reachesNotions(Change change) {
    return !change.changed().isNote()
        && switch (change.changed()) {
          case TITLE, VERSION, DATED, HOUSE, UNITS, SPELLING -> false;
          default -> true;
        };
  }

  private static Optional<PieceMatch> match(
      SizeRun was, SizeRun now, String name, String oldName, Renaming names) {
    Map<String, Laying.Pair> pairs = new LinkedHashMap<>();
    List<String> come = new ArrayList<>();
    List<String> gone = new ArrayList<>();
    for (SizedPattern sized : now.sizes()) {
      String size = sized.size().name();
      Optional<SizedPattern> before = was.size(size);
      if (before.isPresent()) {
        Optional<Piece> old = before.get().piece(name);
        Optional<Piece> piece = sized.piece(name);
        if (old.isPresent() && piece.isPresent()) {
          pairs.put(size, new Laying.Pair(old.get(), piece.get()));
        } else if (piece.isPresent()) {
          come.add(size);
        } else if (old.isPresent()) {
          gone.add(size);
        }
      }
    }
    if (pairs.isEmpty()) {
      return Optional.empty();
    }
    List<Change> changes = new ArrayList<>();
    if (!oldName.equals(name)) {
      changes.add(Change.of(Changed.PIECE_RENAMED, name, Argument.of(oldName), Argument.of(name)));
    }
    Laying laying = Laying.of(List.copyOf(pairs.values()));
    Map<String, PieceMatch.Both> sizes = new LinkedHashMap<>();
    pairs.forEach(
        (size, pair) ->
            sizes.put(
                size,
                new PieceMatch.Both(
                    pair.old(),
                    pair.now(),
                    laying.motion(pair.old(), pair.now()).orElse(Motion.identity()))));
    Map<String, PieceMatch.Both> laid = Mirroring.of(sizes).orElse(sizes);
    if (laid != sizes) {
      changes.add(Change.of(Changed.PIECE_MIRRORED, name));
    }
    if (!come.isEmpty()) {
      changes.add(Change.of(Changed.PIECE_SIZES_ADDED, name).in(come));
    }
    if (!gone.isEmpty()) {
      changes.add(Change.of(Changed.PIECE_SIZES_REMOVED, name).in(gone));
    }
    names
        .edges()
        .getOrDefault(name, Map.of())
        .forEach(
            (before, after) ->
                changes.add(
                    Change.of(
                        Changed.EDGE_RENAMED,
                        name + "." + after,
                        Argument.of(before),
                        Argument.of(after))));
    new CardComparing(name, laid, changes).compare();
    new EdgeComparing(name, laid, changes).compare();
    new NotchComparing(name, laid, changes).compare();
    new MarkComparing(name, laid, changes).compare();
    new IntakeComparing(name, laid, changes).compare();
    new LyingComparing(name, laid, changes).compare();
    List<Change> own = changes.stream().map(change -> change.on(name)).toList();
    return Optional.of(new PieceMatch(oldName, name, laying, laid, own));
  }
}
