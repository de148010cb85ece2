package org.hemwright.paper.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.cloth.rule.ClothSettings;
import org.hemwright.cloth.yardage.CutApart;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.finding.SizeWords;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.LengthKind;

/** Says on which cloth a piece is cut apart, and what is added where it is. */
final class SplitWords {
  private SplitWords() {}

  /**
   * A sentence for each split of a piece that some width needs.
   *
   * @param printed the names of the sizes that it is printed in
   */
  static List<String> of(SizeRun run, PieceCard card, List<String> printed, Speech speech) {
    Map<String, Mark.Split> splits = new LinkedHashMap<>();
    for (SizedPattern sized : run.sizes()) {
      sized
          .piece(card.name())
          .ifPresent(
              piece ->
                  piece
                      .marks(Mark.Split.class)
                      .forEach(split -> splits.putIfAbsent(split.name(), split)));
    }
    if (splits.isEmpty()) {
      return List.of();
    }
    List<CutApart> all = CutApart.of(run, card.name(), ClothSettings.HANDBOOK);
    List<String> sentences = new ArrayList<>();
    splits.forEach(
        (name, split) -> {
          List<String> where = new ArrayList<>();
          for (CutApart each : all) {
            if (each.choice().split().equals(name)) {
              List<String> sizes =
                  each.sizes().stream().map(Size::name).filter(printed::contains).toList();
              if (sizes.isEmpty()) {
                continue;
              }
              String width =
                  speech.firstUnit(each.width())
                      + " ("
                      + new SizeWords(speech.chart()).of(sizes)
                      + ")";
              if (!where.contains(width)) {
                where.add(width);
              }
            }
          }
          if (!where.isEmpty()) {
            sentences.add(
                "On "
                    + speech.cloth()
                    + " "
                    + Speech.listed(where)
                    + " wide: cut "
                    + (split.onFold() ? "in halves, not on the fold" : "apart at the marked line")
                    + "; add "
                    + speech.length(split.allowance(), LengthKind.ALLOWANCE)
                    + " to "
                    + (split.onFold() ? "the new edge" : "both new edges"));
          }
        });
    return sentences;
  }
}
