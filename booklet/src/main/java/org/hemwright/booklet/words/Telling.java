package org.hemwright.booklet.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Details;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.DecimalText;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.seam.Seam;

/**
 * What is told, and in which words: a run, its measurements, the size that figures are drawn in. It
 * is where every part of the booklet asks how a thing is called, so that it is called so
 * everywhere.
 *
 * @param run in the sizes that the booklet is for
 * @param measured what the run measures
 * @param drawn the size of the figures
 * @param words the language
 * @param own the designer's words in that language, by what the document says; empty in its own
 */
public record Telling(
    SizeRun run, Measurements measured, SizedPattern drawn, Wordbook words, OwnWords own) {
  /** The telling of a run; figures are drawn in the base size, or the middle one of those there. */
  public static Telling of(SizeRun run, Wordbook words, OwnWords own) {
    SizedPattern drawn =
        run.size(run.pattern().base().name()).orElse(run.sizes().get(run.sizes().size() / 2));
    return new Telling(run, Measurements.of(run), drawn, words, own);
  }

  /** A template with its slots filled. */
  public List<Inline> say(String key, Slots slots) {
    return words.say(key, slots);
  }

  /** A template without slots. */
  public List<Inline> say(String key) {
    return words.say(key);
  }

  /** The names of the sizes that it is for, in order. */
  public List<String> sizeNames() {
    return run.sizes().stream().map(sized -> sized.size().name()).toList();
  }

  /**
   * A name of the document or the chart as it is shown: in the designer's words, as the language
   * usually has it, or as it is with blanks for low lines.
   */
  public Inline.Value name(String name) {
    String shown = name.replace('_', ' ');
    String usual = words.has("name." + name) ? words.plain("name." + name) : shown;
    String text = own.of(name).or(() -> own.of(shown)).orElse(usual);
    return new Inline.Value(text, Provenance.of(Source.NAME, name));
  }

  /** Whether the language has a word for a name, of the designer's or a usual one. */
  public boolean isSaid(String name) {
    return own.of(name).isPresent()
        || own.of(name.replace('_', ' ')).isPresent()
        || words.has("name." + name);
  }

  /** A sentence or a title of the designer's, in the language where she has given it. */
  public String own(String text) {
    return own.of(text).orElse(text);
  }

  /**
   * Edges by their names: "hem edge", "left and right edges and lower end", in the designer's words
   * where she has given them.
   */
  public List<Inline> edges(List<String> names) {
    return edges(names, 1);
  }

  /** The same edges of several pieces: "hem edges". */
  public List<Inline> edges(List<String> names, int pieces) {
    List<List<Inline>> plain = new ArrayList<>();
    List<List<Inline>> phrases = new ArrayList<>();
    for (String name : names) {
      Provenance from = Provenance.of(Source.NAME, name);
      Optional<String> own = own().of(name).or(() -> own().of(name.replace('_', ' ')));
      String key = "edge." + name;
      if (own.isPresent()) {
        phrases.add(List.of(new Inline.Value(own.get(), from)));
      } else if (words.has(key)) {
        phrases.add(List.of(new Inline.Value(words.plain(key), from)));
      } else {
        plain.add(List.of(name(name)));
      }
    }
    if (!plain.isEmpty()) {
      Slots slots = Slots.of("names", words.listed(plain)).and("name", plain.get(0));
      phrases.add(0, say(plain.size() * pieces == 1 ? "edge.named" : "edge.named.many", slots));
    }
    return words.listed(phrases);
  }

  /**
   * A seam by its name. One of those that are alike in several views, each named with its view at
   * the end ({@code side_seams_b}), is said to be that view's.
   */
  public List<Inline> seamName(String seam) {
    Optional<View> view = viewAtEnd(seam);
    if (view.isEmpty()) {
      return List.of(name(seam));
    }
    String stem = seamStem(seam);
    return say(
        "seam.of-view",
        Slots.of(
                "seam",
                new Inline.Value(name(stem).text(), Provenance.of(Source.NAME, "seam", stem)))
            .and("view", views(List.of(view.get().name()))));
  }

  /** A seam's name without the view at its end. */
  public String seamStem(String seam) {
    return viewAtEnd(seam)
        .map(view -> seam.substring(0, seam.length() - view.name().length() - 1))
        .orElse(seam);
  }

  private Optional<View> viewAtEnd(String seam) {
    return run.pattern().views().stream()
        .filter(view -> severalViews() && own.of(seam).isEmpty())
        .filter(view -> seam.endsWith("_" + view.name().toLowerCase(Locale.ROOT)))
        .filter(view -> seam.length() > view.name().length() + 1)
        .findFirst();
  }

  /** A measurement of the body by its usual name in the language, else as the chart has it. */
  public Inline.Value measure(String name) {
    String key = "measure." + name;
    return words.has(key)
        ? new Inline.Value(words.plain(key), Provenance.of(Source.NAME, name))
        : name(name);
  }

  /** What the document says of itself. */
  public Inline.Value detail(String what) {
    Details details = run.pattern().details();
    String text =
        switch (what) {
          case "title" -> own(details.title());
          case "version" -> details.version();
          case "dated" -> words.dateText(details.dated());
          case "by" -> details.by();
          default -> throw new IllegalArgumentException("the document says no " + what);
        };
    return new Inline.Value(text, Provenance.of(Source.DETAILS, what));
  }

  /** A count of things in the booklet, or the place of one. */
  public static Inline.Value order(long number, String... which) {
    return new Inline.Value(Long.toString(number), Provenance.of(Source.ORDER, which));
  }

  /** The card of a piece. */
  public Optional<PieceCard> card(String piece) {
    return run.pattern().pieces().stream().filter(card -> card.name().equals(piece)).findFirst();
  }

  /** A piece by its title alone. */
  public Inline.Value title(String piece) {
    return new Inline.Value(
        card(piece).map(card -> own(card.title())).orElseGet(() -> name(piece).text()),
        Provenance.of(Source.PIECE, piece, "title"));
  }

  /** A piece by its title and number: "Skirt front (1)". */
  public List<Inline> piece(String piece) {
    return card(piece)
        .map(
            card ->
                say(
                    "piece.numbered",
                    Slots.of("piece", title(piece))
                        .and(
                            "number",
                            new Inline.Value(
                                Integer.toString(card.number()),
                                Provenance.of(Source.PIECE, piece, "number")))))
        .orElse(List.of(name(piece)));
  }

  /** A cut copy of a piece, by its own name where it has one: "Trouser front (1, left)". */
  public List<Inline> piece(String piece, Optional<String> copy) {
    Optional<String> named = copy.filter(name -> !name.chars().allMatch(Character::isDigit));
    return named.isEmpty() || card(piece).isEmpty()
        ? piece(piece)
        : say(
            "piece.copy",
            Slots.of("piece", title(piece))
                .and(
                    "number",
                    new Inline.Value(
                        Integer.toString(card(piece).orElseThrow().number()),
                        Provenance.of(Source.PIECE, piece, "number")))
                .and("copy", copyName(named.get())));
  }

  private Inline.Value copyName(String name) {
    String key = "copy." + name;
    return words.has(key)
        ? new Inline.Value(words.plain(key), Provenance.of(Source.NAME, name))
        : name(name);
  }

  /** The fabric of that name by its title. */
  public Inline.Value fabric(String fabric) {
    return new Inline.Value(
        run.pattern().fabric(fabric).map(each -> own(each.title())).orElse(fabric),
        Provenance.of(Source.FABRIC, fabric, "title"));
  }

  /** The fabrics that steps fuse to others. */
  public Set<String> fused() {
    return run.pattern().making().fused();
  }

  /** A view with its title: "View B, Midi". */
  public List<Inline> view(View view) {
    List<Inline> named = say("view", Slots.of("name", name(view.name())));
    return view.title().isBlank()
        ? named
        : say(
            "view.titled",
            Slots.of("view", named)
                .and(
                    "title",
                    new Inline.Value(
                        own(view.title()), Provenance.of(Source.NAME, "view", view.name()))));
  }

  /** "views A and B". */
  public List<Inline> views(List<String> names) {
    List<List<Inline>> all = names.stream().map(n -> List.<Inline>of(name(n))).toList();
    return all.size() == 1
        ? say("view", Slots.of("name", all.get(0)))
        : say("views", Slots.of("names", words.listed(all)));
  }

  /** "size 14", "sizes 8 to 16 and 20", "all sizes". */
  public List<Inline> sizes(List<String> sizes) {
    List<String> chart = sizeNames();
    if (sizes.size() > 1 && sizes.containsAll(chart)) {
      return say("sizes.all");
    }
    List<List<Inline>> runs = new ArrayList<>();
    for (int first = 0; first < sizes.size(); ) {
      int last = first;
      while (last + 1 < sizes.size()
          && chart.indexOf(sizes.get(last + 1)) == chart.indexOf(sizes.get(last)) + 1) {
        last++;
      }
      if (last - first >= 2) {
        runs.add(
            say(
                "sizes.range",
                Slots.of("first", size(sizes.get(first))).and("last", size(sizes.get(last)))));
      } else {
        for (int i = first; i <= last; i++) {
          runs.add(List.of(size(sizes.get(i))));
        }
      }
      first = last + 1;
    }
    String key = sizes.size() == 1 ? "sizes.one" : "sizes.many";
    return say(key, Slots.of("sizes", words.listed(runs)));
  }

  /** A size by its name. */
  public static Inline.Value size(String size) {
    return new Inline.Value(size, Provenance.of(Source.NAME, "size", size));
  }

  /** A length of the document in every size: one value, or from least to most. */
  public List<Inline> amount(Amount amount, LengthKind kind, String step, String what) {
    Map<String, Double> bySize = new LinkedHashMap<>();
    for (SizedPattern sized : run.sizes()) {
      amount.in(sized.numbers()).ifPresent(mm -> bySize.put(sized.size().name(), mm));
    }
    Provenance from = Provenance.of(Source.STEP, step, what);
    return range(bySize, kind, from);
  }

  /** A length by size as one value where all sizes show the same, else from least to most. */
  public List<Inline> range(Map<String, Double> bySize, LengthKind kind, Provenance from) {
    OptionalDouble least = bySize.values().stream().mapToDouble(d -> d).min();
    OptionalDouble most = bySize.values().stream().mapToDouble(d -> d).max();
    if (least.isEmpty()) {
      return List.of();
    }
    String low = words.lengthText(least.getAsDouble(), kind);
    String high = words.lengthText(most.getAsDouble(), kind);
    return low.equals(high)
        ? List.of(new Inline.Value(low, from))
        : say(
            "range.by-size",
            Slots.of("least", new Inline.Value(low, keyed(from, "least")))
                .and("most", new Inline.Value(high, keyed(from, "most"))));
  }

  private static Provenance keyed(Provenance from, String key) {
    List<String> keys = new ArrayList<>(from.keys());
    keys.add(key);
    return new Provenance(from.source(), keys);
  }

  /** A share of one number to another, worded as a percentage. */
  public Inline.Value percent(double share, Provenance from) {
    return new Inline.Value(words.percentText(share), from);
  }

  /** A number of the document in one size, worded by its kind. */
  public Optional<Inline.Value> number(String name, SizedPattern sized, LengthKind kind) {
    return Optional.ofNullable(sized.numbers().get(name))
        .map(
            quantity ->
                new Inline.Value(
                    quantityText(quantity, kind),
                    Provenance.of(Source.NUMBER, name, sized.size().name())));
  }

  /** How a number of the document is shown: as something bought where it is an elastic's width. */
  public LengthKind kind(String name) {
    Quantity number = drawn.numbers().get(name);
    boolean bought =
        number != null
            && drawn.elastics().stream()
                .anyMatch(
                    elastic ->
                        Math.abs(elastic.width() - number.amount()) < Tolerance.DRAWN_LENGTH);
    return bought ? LengthKind.NOTION : LengthKind.FINISHED;
  }

  /** A quantity as text. */
  public String quantityText(Quantity quantity, LengthKind kind) {
    return switch (quantity.kind()) {
      case LENGTH -> words.lengthText(quantity.amount(), kind);
      case RATIO -> words.percentText(quantity.amount());
      case ANGLE -> DecimalText.of(StrictMath.toDegrees(quantity.amount()), 1) + "\u00b0";
      case NUMBER -> DecimalText.of(quantity.amount(), 3);
    };
  }

  /** The seam of that name in the drawn size, else in the first size that has it. */
  public Optional<Seam> seam(String name) {
    return seam(drawn, name)
        .or(() -> run.sizes().stream().flatMap(s -> seam(s, name).stream()).findFirst());
  }

  private static Optional<Seam> seam(SizedPattern sized, String name) {
    return sized.seams().stream().filter(seam -> seam.name().equals(name)).findFirst();
  }

  /** The dart, pleat or stretch of gathers that a step names, in the drawn size. */
  public Optional<Intake> intake(Work.OfIntake work) {
    return drawn.piece(work.piece()).stream()
        .flatMap(piece -> piece.intakes().stream())
        .filter(intake -> intake.name().equals(work.intake()))
        .findFirst();
  }

  /** Whether several views are told. */
  public boolean severalViews() {
    return run.pattern().views().size() > 1;
  }

  /** The sizes of the run, as sizes. */
  public List<Size> sizes() {
    return run.sizes().stream().map(SizedPattern::size).toList();
  }

  /** Whether a layer lies along marks of its pieces, as a pocket's place, and along no edge. */
  public boolean isMark(Seam.Layer layer) {
    return layer.run().stream()
        .allMatch(
            place ->
                drawn()
                    .piece(place.piece())
                    .filter(piece -> piece.edge(place.edge()).isEmpty())
                    .isPresent());
  }
}
