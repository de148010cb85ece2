package org.hemwright.pattern.split;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Meeting;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Copy;
import org.hemwright.pattern.piece.Corner;
import org.hemwright.pattern.piece.CornerFinish;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Grain;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/** A part of a piece while it is being cut: its edges round it, and what is drawn on it. */
final class PartInWork {
  /** How much of a part's length its grain arrow takes where the whole's own does not lie on it. */
  private static final double ARROW = 0.6;

  private final Piece whole;
  private final List<Side> sides;
  private final List<Drawn> marks;

  /**
   * An edge of the part.
   *
   * @param source which stretch of the whole piece's edge it is; absent along a cut
   */
  private record Side(Edge edge, Optional<Stretch> source) {}

  /** Something drawn on the part; of a placement line, which stretch of it. */
  private record Drawn(Mark mark, Optional<Stretch> source) {}

  /** A stretch of an edge or line of the whole piece (mm along it). */
  private record Stretch(String edge, double from, double to) {
    Stretch part(double first, double last) {
      return new Stretch(edge, from + first, from + last);
    }
  }

  /** Where a cut begins or ends: on which edge, and how far along it. */
  private record Place(int edge, double at) {}

  /**
   * A part cut in two.
   *
   * @param first the one that holds the corner at which the part begins
   * @param trouble the code of what stands in the way
   */
  record Halves(PartInWork first, PartInWork second, Optional<String> trouble) {}

  private PartInWork(Piece whole, List<Side> sides, List<Drawn> marks) {
    this.whole = whole;
    this.sides = sides;
    this.marks = marks;
  }

  PartInWork(Piece whole, List<Edge> edges, List<PieceParts.Stretch> stretches, List<Mark> drawn) {
    this(whole, new ArrayList<>(), new ArrayList<>());
    for (int i = 0; i < edges.size(); i++) {
      PieceParts.Stretch known = stretches.get(i);
      boolean own = edges.get(i).name().equals(known.edge());
      sides.add(
          new Side(
              edges.get(i),
              own
                  ? Optional.of(new Stretch(known.edge(), known.from(), known.to()))
                  : Optional.empty()));
    }
    for (Mark mark : drawn) {
      if (!(mark instanceof Mark.Split)) {
        marks.add(
            new Drawn(
                mark,
                mark instanceof Mark.Placement line
                    ? Optional.of(new Stretch(line.name(), 0, line.path().length()))
                    : Optional.empty()));
      }
    }
  }

  static PartInWork whole(Piece piece) {
    List<PieceParts.Stretch> stretches = new ArrayList<>();
    for (Edge edge : piece.edges()) {
      stretches.add(new PieceParts.Stretch(edge.name(), 0, edge.path().length(), 0, edge.name()));
    }
    return new PartInWork(piece, piece.edges(), stretches, piece.marks());
  }

  /** Cuts the part along a line; absent where the line does not run across it. */
  Optional<Halves> cut(Path line, Mark.Split split, int index) {
    Optional<Place> start = place(line.start());
    Optional<Place> end = place(line.end());
    if (start.isEmpty() || end.isEmpty() || !runsInside(line)) {
      return Optional.empty();
    }
    List<Side> ahead = between(start.get(), end.get());
    List<Side> back = between(end.get(), start.get());
    if (ahead.isEmpty() || back.isEmpty()) {
      return Optional.empty();
    }
    Optional<Path> fitted = fitted(line, ahead.get(0), back.get(0));
    if (fitted.isEmpty()) {
      return Optional.empty();
    }
    String seam = Divided.seam(split, index);
    Allowance allowance = new Allowance.Plain(split.allowance());
    ahead.add(
        new Side(
            new Edge(seam, fitted.get().reversed(), false, allowance, true, split.origin()),
            Optional.empty()));
    back.add(
        new Side(
            new Edge(seam, fitted.get(), false, allowance, false, split.origin()),
            Optional.empty()));
    boolean beginsAhead = leads(ahead, true);
    leads(beginsAhead ? back : ahead, false);
    if (!beginsAhead) {
      leads(back, true);
    }
    List<Side> one = beginsAhead ? ahead : back;
    List<Side> other = beginsAhead ? back : ahead;
    PartInWork first = new PartInWork(whole, one, marksOn(one, fitted.get()));
    PartInWork second = new PartInWork(whole, other, marksOn(other, fitted.get()));
    boolean through = isInIntake(start.get()) || isInIntake(end.get());
    return Optional.of(
        new Halves(
            first, second, through ? Optional.of("split-through-intake") : Optional.empty()));
  }

  private Optional<Place> place(Point point) {
    for (int i = 0; i < sides.size(); i++) {
      Path path = sides.get(i).edge.path();
      var nearest = path.nearest(point);
      if (nearest.point().distanceTo(point) <= Tolerance.DRAWN_LENGTH) {
        boolean atEnd = nearest.distance() >= path.length() - Tolerance.DRAWN_LENGTH;
        if (atEnd) {
          return Optional.of(new Place((i + 1) % sides.size(), 0));
        }
        double at = nearest.distance() <= Tolerance.DRAWN_LENGTH ? 0 : nearest.distance();
        return Optional.of(new Place(i, at));
      }
    }
    return Optional.empty();
  }

  private boolean runsInside(Path line) {
    Outline outline = outline(sides);
    if (!outline.contains(line.at(line.length() / 2).point())) {
      return false;
    }
    for (Meeting meeting : line.meetings(outline.path())) {
      double at = meeting.distanceOnThis();
      if (at > Tolerance.DRAWN_LENGTH && at < line.length() - Tolerance.DRAWN_LENGTH) {
        return false;
      }
    }
    return true;
  }

  private static Outline outline(List<Side> sides) {
    Path round = sides.get(0).edge.path();
    for (Side side : sides.subList(1, sides.size())) {
      round = round.then(side.edge.path());
    }
    return Outline.of(round);
  }

  private List<Side> between(Place from, Place to) {
    List<Side> stretch = new ArrayList<>();
    if (from.edge == to.edge && from.at < to.at) {
      stretch.add(part(from.edge, from.at, to.at));
      return stretch;
    }
    stretch.add(part(from.edge, from.at, sides.get(from.edge).edge.path().length()));
    for (int i = (from.edge + 1) % sides.size(); i != to.edge; i = (i + 1) % sides.size()) {
      stretch.add(sides.get(i));
    }
    if (to.at > 0) {
      stretch.add(part(to.edge, 0, to.at));
    }
    return stretch;
  }

  private Side part(int index, double from, double to) {
    Side side = sides.get(index);
    Edge edge = side.edge;
    if (from == 0 && to >= edge.path().length()) {
      return side;
    }
    return new Side(
        new Edge(
            edge.name(),
            edge.path().part(from, to),
            edge.onFold(),
            edge.allowance(),
            edge.reversed(),
            edge.origin()),
        side.source.map(source -> source.part(from, to)));
  }

  /** The line with its ends exactly where the edges were cut; absent where it falls short. */
  private static Optional<Path> fitted(Path line, Side ahead, Side back) {
    Point from = ahead.edge.path().start();
    Point to = back.edge.path().start();
    if (line.curves().size() == 1
        && line.length() - line.start().distanceTo(line.end()) <= Tolerance.NO_LENGTH) {
      return Optional.of(Path.straight(from, to));
    }
    return line.start().isAt(from) && line.end().isAt(to) ? Optional.of(line) : Optional.empty();
  }

  /**
   * Has a stretch of the part's first edge come first, so that parts are counted along the piece as
   * the designer drew it; whether there is one.
   *
   * @param atStart whether only that stretch is meant at which she begins
   */
  private boolean leads(List<Side> round, boolean atStart) {
    Side lead = sides.get(0);
    for (int i = 0; i < round.size(); i++) {
      Side side = round.get(i);
      boolean same =
          side.source.map(Stretch::edge).equals(lead.source.map(Stretch::edge))
              && side.edge.name().equals(lead.edge.name());
      if (same && (!atStart || drawnStart(side).isAt(drawnStart(lead)))) {
        Collections.rotate(round, -i);
        return true;
      }
    }
    return false;
  }

  private static Point drawnStart(Side side) {
    Path path = side.edge.path();
    return side.edge.reversed() ? path.end() : path.start();
  }

  private boolean isInIntake(Place place) {
    Optional<Stretch> source = sides.get(place.edge).source;
    if (source.isEmpty()) {
      return false;
    }
    double at = source.get().from + place.at;
    return whole.intakes().stream()
        .filter(intake -> intake.edge().equals(source.get().edge))
        .anyMatch(
            intake ->
                at > intake.from() + Tolerance.DRAWN_LENGTH
                    && at < intake.to() - Tolerance.DRAWN_LENGTH);
  }

  private List<Drawn> marksOn(List<Side> part, Path cut) {
    Outline outline = outline(part);
    List<Drawn> own = new ArrayList<>();
    for (Drawn drawn : marks) {
      Mark mark = drawn.mark;
      if (mark instanceof Mark.Drill drill) {
        addIfOn(outline, drill.at(), drawn, own);
      } else if (mark instanceof Mark.Label label) {
        addIfOn(outline, label.at(), drawn, own);
      } else if (mark instanceof Mark.Level level) {
        addIfOn(outline, level.at(), drawn, own);
      } else if (mark instanceof Mark.Stretch) {
        own.add(drawn);
      } else if (mark instanceof Mark.Inner inner) {
        for (Stretch on : stretchesOn(outline, inner.path(), inner.name(), cut)) {
          Path path = inner.path().part(on.from, on.to);
          own.add(
              new Drawn(
                  new Mark.Inner(inner.name(), path, inner.text(), inner.origin()),
                  Optional.empty()));
        }
      } else if (mark instanceof Mark.Placement line) {
        for (Stretch on : stretchesOn(outline, line.path(), line.name(), cut)) {
          Path path = line.path().part(on.from, on.to);
          own.add(
              new Drawn(
                  new Mark.Placement(line.name(), path, line.text(), line.origin()),
                  drawn.source.map(source -> source.part(on.from, on.to))));
        }
      } else if (mark instanceof Mark.Lengthen lengthen) {
        for (Stretch on : stretchesOn(outline, lengthen.line(), "", cut)) {
          own.add(
              new Drawn(
                  new Mark.Lengthen(lengthen.line().part(on.from, on.to), lengthen.origin()),
                  Optional.empty()));
        }
      }
    }
    return own;
  }

  private static void addIfOn(Outline outline, Point at, Drawn drawn, List<Drawn> into) {
    if (isOn(outline, at)) {
      into.add(drawn);
    }
  }

  private static boolean isOn(Outline outline, Point at) {
    return outline.contains(at)
        || outline.path().nearest(at).point().distanceTo(at) <= Tolerance.DRAWN_LENGTH;
  }

  /** The stretches of a line that lie on a part, once it is cut. */
  private static List<Stretch> stretchesOn(Outline outline, Path line, String name, Path cut) {
    List<Double> ends = new ArrayList<>(List.of(0.0, line.length()));
    for (Meeting meeting : line.meetings(cut)) {
      double at = meeting.distanceOnThis();
      if (at > Tolerance.DRAWN_LENGTH && at < line.length() - Tolerance.DRAWN_LENGTH) {
        ends.add(at);
      }
    }
    Collections.sort(ends);
    List<Stretch> on = new ArrayList<>();
    for (int i = 0; i + 1 < ends.size(); i++) {
      double from = ends.get(i);
      double to = ends.get(i + 1);
      if (to - from > Tolerance.DRAWN_LENGTH && isOn(outline, line.at((from + to) / 2).point())) {
        on.add(new Stretch(name, from, to));
      }
    }
    return on;
  }

  /** Which stretches of the whole piece it holds, under the names that they have here. */
  List<PieceParts.Stretch> stretches(int part) {
    List<PieceParts.Stretch> all = new ArrayList<>();
    List<String> names = names();
    for (int i = 0; i < sides.size(); i++) {
      String name = names.get(i);
      sides
          .get(i)
          .source
          .ifPresent(s -> all.add(new PieceParts.Stretch(s.edge, s.from, s.to, part, name)));
    }
    for (Drawn drawn : marks) {
      drawn.source.ifPresent(
          s -> all.add(new PieceParts.Stretch(s.edge, s.from, s.to, part, s.edge)));
    }
    return all;
  }

  /** The names of the edges; a second stretch of one edge is told by its number. */
  private List<String> names() {
    Map<String, Integer> counts = new LinkedHashMap<>();
    List<String> names = new ArrayList<>();
    for (Side side : sides) {
      String name = side.edge.name();
      int count = counts.merge(name, 1, Integer::sum);
      names.add(count == 1 ? name : name + "_" + count);
    }
    return names;
  }

  /** The part as a piece. */
  Piece piece(Piece source, Mark.Split split, int index, int count) {
    List<String> names = names();
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      Edge edge = sides.get(i).edge;
      edges.add(
          new Edge(
              names.get(i),
              edge.path(),
              edge.onFold(),
              edge.allowance(),
              edge.reversed(),
              edge.origin()));
    }
    Outline outline = outline(sides);
    Piece part =
        new Piece(
            card(source, split, index, count),
            outline,
            edges,
            corners(edges),
            notches(edges, split),
            source.grain().map(grain -> grain(grain, outline)),
            marks.stream().map(Drawn::mark).toList(),
            openings(edges),
            isOn(outline, source.stackPoint()) ? source.stackPoint() : edges.get(0).path().start());
    return part.with(intakes(edges), bodyOpenings(edges));
  }

  private PieceCard card(Piece source, Mark.Split split, int index, int count) {
    PieceCard card = source.card();
    boolean halves =
        source.foldEdge().isPresent() && sides.stream().noneMatch(side -> side.edge.onFold());
    List<Cut> cuts = new ArrayList<>();
    for (Cut cut : card.cuts()) {
      cuts.add(halves ? new Cut(2 * cut.count(), cut.fabric(), false, true, cut.origin()) : cut);
    }
    List<Copy> copies = halves ? PieceParts.copiesOfHalves(card.copies()) : card.copies();
    String title =
        count == 1
            ? card.title() + ", half"
            : card.title() + ", part " + (index + 1) + " of " + count;
    return new PieceCard(
        split.part(card.name(), index),
        title,
        card.number(),
        cuts,
        copies,
        card.rightSideUp(),
        card.sizes(),
        split.origin(),
        index + 1);
  }

  private List<Corner> corners(List<Edge> edges) {
    List<Corner> corners = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      int last = (i + edges.size() - 1) % edges.size();
      Edge before = edges.get(last);
      Edge after = edges.get(i);
      CornerFinish finish =
          finishOfWhole(sides.get(last), sides.get(i))
              .map(own -> renamed(own, sides.get(last), before.name(), after.name()))
              .orElseGet(() -> CornerFinish.between(before, after));
      corners.add(new Corner(before.name(), after.name(), after.path().start(), finish));
    }
    return corners;
  }

  /** How the whole piece finishes a corner, where this is one of its corners. */
  private Optional<CornerFinish> finishOfWhole(Side before, Side after) {
    if (before.source.isEmpty() || after.source.isEmpty() || after.source.get().from > 0) {
      return Optional.empty();
    }
    String first = before.source.get().edge;
    String second = after.source.get().edge;
    return whole.corners().stream()
        .filter(corner -> corner.before().equals(first) && corner.after().equals(second))
        .filter(corner -> corner.point().isAt(after.edge.path().start()))
        .map(Corner::finish)
        .findFirst();
  }

  private static CornerFinish renamed(
      CornerFinish finish, Side before, String beforeName, String afterName) {
    if (finish instanceof CornerFinish.Square square) {
      boolean first = square.edge().equals(before.edge.name());
      return new CornerFinish.Square(first ? beforeName : afterName);
    } else if (finish instanceof CornerFinish.TurnedBack turned) {
      boolean first = turned.edge().equals(before.edge.name());
      return new CornerFinish.TurnedBack(first ? beforeName : afterName);
    }
    return finish;
  }

  /** The whole's notches that lie here, and one in the middle of each new edge. */
  private List<Notch> notches(List<Edge> edges, Mark.Split split) {
    List<Notch> notches = new ArrayList<>();
    for (Notch notch : whole.notches()) {
      for (int i = 0; i < sides.size(); i++) {
        Optional<Stretch> source = sides.get(i).source;
        if (source.isPresent() && source.get().edge.equals(notch.edge())) {
          double at = notch.distance() - source.get().from;
          double length = source.get().to - source.get().from;
          if (at >= -Tolerance.DRAWN_LENGTH
              && at <= length + Tolerance.DRAWN_LENGTH
              && !isAtCut(source.get(), notch)) {
            notches.add(
                new Notch(
                    edges.get(i).name(),
                    Math.max(0, Math.min(length, at)),
                    notch.kind(),
                    notch.name(),
                    notch.origin()));
          }
        }
      }
    }
    for (int line = 0; line < Math.max(1, split.lines().size()); line++) {
      String seam = Divided.seam(split, line);
      Notch.Kind kind = line % 2 == 0 ? Notch.Kind.SINGLE : Notch.Kind.DOUBLE;
      for (Edge edge : edges) {
        if (edge.name().equals(seam)) {
          notches.add(
              new Notch(seam, edge.path().length() / 2, kind, Optional.empty(), split.origin()));
        }
      }
    }
    return notches;
  }

  /** Whether a notch lies where the edge is cut: the end of the new seam marks that place. */
  private boolean isAtCut(Stretch stretch, Notch notch) {
    double whole = this.whole.edge(stretch.edge).map(e -> e.path().length()).orElse(0.0);
    boolean atStart =
        stretch.from > 0 && Math.abs(notch.distance() - stretch.from) <= Tolerance.DRAWN_LENGTH;
    boolean atEnd =
        stretch.to < whole - Tolerance.DRAWN_LENGTH
            && Math.abs(notch.distance() - stretch.to) <= Tolerance.DRAWN_LENGTH;
    return atStart || atEnd;
  }

  /** The grain arrow where it lies on the part, else one like it through the part's middle. */
  private static Grain grain(Grain grain, Outline outline) {
    if (isOn(outline, grain.from()) && isOn(outline, grain.to())) {
      return grain;
    }
    Vector along = grain.direction();
    Box box = outline.bounds();
    Point middle = box.centre();
    double reach =
        ARROW / 2 * (Math.abs(along.dx()) * box.width() + Math.abs(along.dy()) * box.height());
    return new Grain(
        middle.plus(along.times(-reach)), middle.plus(along.times(reach)), grain.origin());
  }

  private List<String> openings(List<Edge> edges) {
    List<String> openings = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      String name = edges.get(i).name();
      sides
          .get(i)
          .source
          .filter(source -> whole.openings().contains(source.edge))
          .ifPresent(source -> openings.add(name));
    }
    return openings;
  }

  private List<BodyOpening> bodyOpenings(List<Edge> edges) {
    List<BodyOpening> openings = new ArrayList<>();
    for (BodyOpening opening : whole.bodyOpenings()) {
      for (int i = 0; i < sides.size(); i++) {
        String name = edges.get(i).name();
        sides
            .get(i)
            .source
            .filter(source -> source.edge.equals(opening.edge()))
            .ifPresent(
                source ->
                    openings.add(
                        new BodyOpening(
                            name, opening.over(), opening.closure(), opening.origin())));
      }
    }
    return openings;
  }

  private List<Intake> intakes(List<Edge> edges) {
    List<Intake> intakes = new ArrayList<>();
    for (Intake intake : whole.intakes()) {
      for (int i = 0; i < sides.size(); i++) {
        Optional<Stretch> source = sides.get(i).source;
        if (source.isPresent()
            && source.get().edge.equals(intake.edge())
            && intake.from() >= source.get().from - Tolerance.DRAWN_LENGTH
            && intake.to() <= source.get().to + Tolerance.DRAWN_LENGTH) {
          double from = Math.max(0, intake.from() - source.get().from);
          double to = intake.to() - source.get().from;
          intakes.add(intake.onEdge(edges.get(i).name()).at(from, to));
        }
      }
    }
    return intakes;
  }
}
