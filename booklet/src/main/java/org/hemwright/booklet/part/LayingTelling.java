package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Provenance;
import org.hemwright.booklet.leaf.Provenance.Source;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.yardage.Need;
import org.hemwright.cloth.yardage.YardageRow;
import org.hemwright.paper.cutting.LayingWords;
import org.hemwright.paper.cutting.StripeCaution;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.LengthKind;

/**
 * The words of layouts in the booklet's language.
 *
 * @param telling the language and its units
 */
record LayingTelling(Telling telling) implements LayingWords {
  @Override
  public String sign(Sign sign) {
    return plain(telling.say("laying." + key(sign)));
  }

  private static String key(Enum<?> name) {
    return name.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** A part is called after its whole where the designer has words for that only. */
  @Override
  public String piece(PieceCard card) {
    String own = telling.own(card.title());
    return telling.run().pattern().pieces().stream()
        .filter(whole -> card.part() > 0 && own.equals(card.title()))
        .filter(whole -> whole.number() == card.number())
        .map(PieceCard::title)
        .filter(whole -> !telling.own(whole).equals(whole))
        .findFirst()
        .map(whole -> telling.own(whole) + plain(telling.say("laying.part", part(card))))
        .orElse(own);
  }

  private static Slots part(PieceCard card) {
    return Slots.of("part", List.of(new Inline.Text(card.mark())));
  }

  @Override
  public String title(YardageRow row) {
    Slots slots =
        Slots.of("view", telling.views(List.of(row.view().name())))
            .and("size", telling.sizes(List.of(row.size().name())))
            .and("width", length(row.width()));
    String key = telling.severalViews() ? "laying.title.view" : "laying.title";
    return plain(telling.words().capital(telling.say(key, slots)));
  }

  @Override
  public String facts(YardageRow row, boolean named) {
    Need need = row.need().orElseThrow();
    boolean oneWay = row.nap() == Fabric.Nap.ONE_WAY;
    boolean plain = row.fabric().naps().size() == 1;
    List<Inline> buy =
        List.of(
            new Inline.Value(
                telling
                    .words()
                    .buyText(need.buy().tenths(), need.buy().eighths())
                    .replace(' ', '\u00a0'),
                Provenance.of(Source.CLOTH, row.fabric().name())));
    Slots slots =
        Slots.of("fabric", telling.fabric(row.fabric().name()))
            .and("nap", plain ? List.of() : telling.say(oneWay ? "laying.nap" : "laying.no-nap"))
            .and("fold", fold(row))
            .and("length", length(need.length()))
            .and("buy", buy);
    return plain(
        telling.words().capital(telling.say(named ? "laying.facts.named" : "laying.facts", slots)));
  }

  @Override
  public Optional<String> stripes(YardageRow row) {
    return row.fabric()
        .repeat()
        .map(
            repeat ->
                plain(telling.words().capital(ClothParts.repeat(telling, row.fabric(), repeat)))
                    + ". "
                    + plain(telling.say("laying.stripes." + key(StripeCaution.of(row)))));
  }

  private List<Inline> fold(YardageRow row) {
    OptionalDouble deep = LayingWords.foldedDeep(row.need().orElseThrow().laying());
    String key = "laying.fold." + key(row.fold());
    List<Inline> said = new ArrayList<>();
    said.addAll(
        deep.isPresent()
            ? telling.say(key + ".deep", Slots.of("depth", length(deep.getAsDouble())))
            : telling.say(key));
    if (row.fabric().sidesAlike()) {
      return said;
    }
    String side =
        row.fold() == Fold.SINGLE
            ? "right-up"
            : LayingWords.isRightOut(row.fabric()) ? "right-out" : "right-in";
    said.addAll(telling.say("laying.side." + side));
    return said;
  }

  private Inline length(double mm) {
    return new Inline.Value(
        telling.words().lengthText(mm, LengthKind.FINISHED), Provenance.of(Source.CLOTH, "layout"));
  }

  private static String plain(List<Inline> said) {
    return Inline.plain(said);
  }
}
