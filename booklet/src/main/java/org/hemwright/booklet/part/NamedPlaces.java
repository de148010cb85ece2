package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.booklet.figure.PieceFigures;
import org.hemwright.booklet.figure.StepFigures;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.prose.Places;
import org.hemwright.booklet.step.StepWords;
import org.hemwright.booklet.words.Telling;
import org.hemwright.cloth.yardage.YardageTable;
import org.hemwright.pattern.View;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.piece.PieceCard;

/** The tables and drawings that the designer may put anywhere in her text. */
public record NamedPlaces(
    Telling telling, Optional<YardageTable> yardage, Map<String, Picture> hers) implements Places {
  @Override
  public List<String> tables() {
    return List.of("sizes", "finished", "cloth", "elastics");
  }

  @Override
  public Optional<List<Block>> table(String name) {
    return switch (name) {
      case "sizes" -> Optional.of(List.of(SizeParts.bodyTable(telling)));
      case "finished" -> Optional.of(List.copyOf(SizeParts.finishedTables(telling)));
      case "cloth" ->
          Optional.of(
              yardage
                  .map(table -> List.<Block>copyOf(ClothParts.tables(telling, table)))
                  .orElse(List.of()));
      case "elastics" ->
          Optional.of(
              ElasticsPart.table(telling).map(table -> List.<Block>of(table)).orElse(List.of()));
      default -> Optional.empty();
    };
  }

  @Override
  public List<String> figures() {
    List<String> names = new ArrayList<>();
    telling.run().pattern().making().steps().forEach(step -> names.add(step.id()));
    cards().keySet().forEach(names::add);
    telling.run().pattern().views().forEach(view -> names.add("view " + view.name()));
    return names;
  }

  private Map<String, PieceCard> cards() {
    Map<String, PieceCard> cards = new LinkedHashMap<>();
    telling.run().pattern().pieces().forEach(card -> cards.putIfAbsent(card.name(), card));
    return cards;
  }

  @Override
  public Optional<Block> figure(String name) {
    return found(name)
        .map(
            figure ->
                new Block.Drawing(
                    new Figure(
                        figure.id() + "-shown",
                        figure.sheet(),
                        figure.alt(),
                        figure.caption(),
                        figure.own(),
                        figure.large())));
  }

  private Optional<Figure> found(String name) {
    Optional<Step> step = telling.run().pattern().making().step(name);
    if (step.isPresent()) {
      return StepFigures.of(
          telling, step.get(), StepWords.of(telling, step.get(), List.of()).title());
    }
    PieceCard card = cards().get(name);
    if (card != null) {
      return PieceFigures.piece(telling, card);
    }
    Optional<View> view =
        telling.run().pattern().views().stream()
            .filter(each -> name.equals("view " + each.name()))
            .findFirst();
    return view.flatMap(each -> PieceFigures.view(telling, each));
  }

  @Override
  public Optional<Picture> picture(String name) {
    return Optional.ofNullable(hers.get(name));
  }

  @Override
  public List<String> pictures() {
    return List.copyOf(hers.keySet());
  }
}
