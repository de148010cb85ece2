package org.hemwright.workbench.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Point;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.nest.PiecePicture;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.svg.SvgWriter;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/** Every piece drawn once, each finding on it as a numbered pin that links to its words. */
final class PieceFigures {
  /** A picture is about so many CSS pixels wide, or so many high. */
  private static final double WIDE = 330;

  private static final double HIGH = 460;

  /** Words of 9 points on a piece should come out at so many pixels, pins of such a radius. */
  private static final double LEGIBLE = 13;

  private static final double RADIUS = 11;
  private static final double WORD = 9 / 72.0 * 25.4;

  private final SizeRun run;
  private final List<Numbered> findings;

  PieceFigures(SizeRun run, List<Numbered> findings) {
    this.run = run;
    this.findings = findings;
  }

  void section(Markup page) {
    page.open("section", "id", "pieces", "aria-labelledby", "pieces-title");
    page.element("h2", "Pieces", "id", "pieces-title");
    page.element(
        "p",
        "Each piece in one size, its findings pinned where they are. A square pin is to be mended,"
            + " a round one worth a look, a hollow one accepted; each leads to its words.");
    page.open("div", "class", "pieces");
    int index = 0;
    List<PieceCard> cards = new ArrayList<>(run.pattern().pieces());
    cards.sort(Comparator.comparingInt(PieceCard::number));
    for (PieceCard card : cards) {
      Optional<SizedPattern> size = drawn(card);
      if (size.isPresent()) {
        figure(page, card, size.get(), "p" + ++index + "-");
      }
    }
    page.close("div").close("section");
  }

  /** The base size where the piece is drawn in it, else the middle one of those that have it. */
  private Optional<SizedPattern> drawn(PieceCard card) {
    List<SizedPattern> own =
        run.sizes().stream().filter(sized -> piece(sized, card).isPresent()).toList();
    return own.stream()
        .filter(sized -> sized.size().equals(run.pattern().base()))
        .findFirst()
        .or(() -> own.isEmpty() ? Optional.empty() : Optional.of(own.get(own.size() / 2)));
  }

  private static Optional<Piece> piece(SizedPattern sized, PieceCard card) {
    return sized.piece(card.name()).filter(piece -> piece.card().origin().equals(card.origin()));
  }

  private void figure(Markup page, PieceCard card, SizedPattern sized, String prefix) {
    Piece piece = piece(sized, card).orElseThrow();
    String size = sized.size().name();
    List<Nest> nests =
        Nest.of(run, List.of(sized.size()), false, false).stream()
            .filter(nest -> nest.card().name().equals(card.name()))
            .toList();
    page.open("figure", "class", "piece");
    if (nests.isEmpty()) {
      page.element("p", "Its cut line cannot be drawn.", "class", "well");
    } else {
      Nest nest = nests.get(0);
      Box bounds = nest.bounds();
      double perPixel = Math.max(bounds.width() / WIDE, bounds.height() / HIGH);
      double scale = Math.max(1, LEGIBLE * perPixel / WORD);
      List<Item> items = new ArrayList<>(PiecePicture.of(run, nest, true, scale));
      Box frame = bounds.grown((RADIUS + 5) * perPixel);
      String pins = pins(card, piece, size, RADIUS * perPixel);
      String label = card.title() + ", piece " + card.number() + ", size " + size;
      page.written(SvgWriter.inline(prefix, label, new Sheet(frame, items), pins));
    }
    page.open("figcaption");
    page.element("strong", card.number() + "  " + card.title());
    page.text(" · " + card.name() + ", size " + size);
    page.close("figcaption").close("figure");
  }

  private String pins(PieceCard card, Piece piece, String size, double radius) {
    StringBuilder pins = new StringBuilder();
    List<Point> taken = new ArrayList<>();
    for (Numbered each : findings) {
      int count = 0;
      for (Place place : each.finding().places()) {
        boolean here = place.piece().filter(card.name()::equals).isPresent();
        if (here && place.point().isPresent() && isOf(card, each.finding().sizes())) {
          Point on = PinPlace.on(piece, size, run, each.finding().sizes(), place.point().get());
          Point at = free(Nest.laid(piece).apply(on), radius, taken);
          taken.add(at);
          String id = isFirst(each, place) ? each.pin() : each.pin() + "-" + card.number() + count;
          pins.append(pin(each, id, at, radius));
          count++;
        }
      }
    }
    return pins.toString();
  }

  private static boolean isFirst(Numbered each, Place place) {
    return each.finding().places().stream()
        .filter(other -> other.piece().isPresent() && other.point().isPresent())
        .findFirst()
        .filter(place::equals)
        .isPresent();
  }

  /** Whether a piece with drafts for several ranges is meant in this one. */
  private boolean isOf(PieceCard card, List<String> sizes) {
    return sizes.isEmpty()
        || run.sizes().stream()
            .filter(sized -> sizes.contains(sized.size().name()))
            .anyMatch(sized -> piece(sized, card).isPresent());
  }

  /** The place itself, or the nearest round it that no other pin covers. */
  private static Point free(Point wish, double radius, List<Point> taken) {
    Point at = wish;
    for (int i = 0; i < 60; i++) {
      Point tried = at;
      if (taken.stream().allMatch(other -> other.distanceTo(tried) >= 2.1 * radius)) {
        return tried;
      }
      double angle = i * Math.PI / 4;
      double out = 2.2 * radius * (1 + i / 8);
      at =
          new Point(wish.x() + out * StrictMath.cos(angle), wish.y() + out * StrictMath.sin(angle));
    }
    return at;
  }

  private static String pin(Numbered each, String id, Point at, double radius) {
    String x = n(at.x());
    String y = n(-at.y());
    String shape =
        each.kind().equals("fail")
            ? "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" stroke-width=\"%s\"/>"
                .formatted(
                    n(at.x() - radius),
                    n(-at.y() - radius),
                    n(2 * radius),
                    n(2 * radius),
                    n(radius / 6))
            : "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" stroke-width=\"%s\"/>"
                .formatted(x, y, n(radius), n(radius / 6));
    String words =
        each.kindInWords() + ", finding " + each.number() + ": " + each.finding().subject();
    return "<a id=\"%s\" href=\"#%s\" class=\"pin %s\" aria-label=\"%s\">%s<text x=\"%s\" y=\"%s\" font-size=\"%s\">%d</text></a>\n"
        .formatted(
            id,
            each.id(),
            each.kind(),
            Markup.escaped(words),
            shape,
            x,
            n(-at.y() + radius * 0.42),
            n(radius * 1.2),
            each.number());
  }

  private static String n(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
