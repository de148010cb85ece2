package org.hemwright.draft.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads paths that stand in a slot, and what is done to them. */
final class PathReading {
  private final Reading reading;

  PathReading(Reading reading) {
    this.reading = reading;
  }

  /** {@code side_line then straight then hem_line}. */
  PathTerm chain() {
    int start = reading.index();
    List<PathTerm> parts = new ArrayList<>();
    do {
      parts.add(term());
    } while (reading.takeThen());
    return parts.size() == 1 ? parts.get(0) : new PathTerm.Chain(parts, reading.spanFrom(start));
  }

  /** {@code side_line from a to b reversed}. */
  PathTerm term() {
    int start = reading.index();
    PathTerm path = primary();
    boolean bare = path instanceof PathTerm.Named;
    int steps = 0;
    Optional<PathTerm> more = suffix(path, start, bare);
    while (more.isPresent()) {
      path = more.get();
      if (++steps > Reading.DEEPEST) {
        throw reading.refuseMore("too-deep", Reading.DEEPEST);
      }
      more = suffix(path, start, false);
    }
    return path;
  }

  private Optional<PathTerm> suffix(PathTerm path, int start, boolean bare) {
    if (path instanceof PathTerm.StraightOn) {
      return Optional.empty();
    }
    boolean cut = reading.says("from") || (reading.says("to") && !bare);
    if (cut && !reading.barePaths()) {
      return Optional.of(part(path, start));
    }
    if (reading.takeIf("reversed")) {
      return Optional.of(new PathTerm.Reversed(path, reading.spanFrom(start)));
    }
    if (reading.takeIf("offset")) {
      Expression distance = reading.numbers().sum();
      boolean left = reading.takeIf("left");
      if (!left) {
        reading.wantWord("left");
        reading.take("right");
      }
      return Optional.of(new PathTerm.Offset(path, distance, left, reading.spanFrom(start)));
    }
    if (reading.says("mirrored") || reading.says("moved") || reading.says("turned")) {
      Move move = (Move) reading.oneOf(Where.MOVE);
      return Optional.of(new PathTerm.Moved(path, move, reading.spanFrom(start)));
    }
    return Optional.empty();
  }

  private PathTerm part(PathTerm path, int start) {
    Optional<Reference> from =
        reading.takeIf("from") ? Optional.of(reading.words().reference()) : Optional.empty();
    Optional<Reference> to =
        reading.takeIf("to") ? Optional.of(reading.words().reference()) : Optional.empty();
    return new PathTerm.Part(path, from, to, reading.spanFrom(start));
  }

  /** A name, two points, {@code straight}, or a path in brackets. */
  PathTerm primary() {
    int start = reading.index();
    if (reading.takeIf("(")) {
      reading.deeper();
      PathTerm inside = chain();
      reading.shallower();
      reading.take(")");
      return inside;
    }
    if (reading.says("straight") && !reading.says(1, ".") && !reading.says(1, "to")) {
      reading.next();
      return new PathTerm.StraightOn(reading.spanFrom(start));
    }
    if (reading.peek().filter(Token::isWord).isEmpty()) {
      throw reading.want("path");
    }
    Reference first = reading.words().reference();
    Reading.Mark afterFirst = reading.mark();
    if (reading.barePaths() || !reading.takeIf("to")) {
      return new PathTerm.Named(first, first.span());
    }
    if (reading.peek().filter(Token::isWord).isEmpty()) {
      reading.wantTerm("point");
      reading.backTo(afterFirst);
      return new PathTerm.Named(first, first.span());
    }
    Reference second = reading.words().reference();
    return new PathTerm.Straight(first, second, reading.spanFrom(start));
  }
}
