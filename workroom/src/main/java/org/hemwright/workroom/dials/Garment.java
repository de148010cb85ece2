package org.hemwright.workroom.dials;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.measure.LevelGirth;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.quantity.LengthFormat;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.quantity.Quantity;
import org.hemwright.pattern.quantity.QuantityKind;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.workroom.ledger.LedgerView;

/** What the whole garment measures in one size: girths at its levels with their ease, elastics. */
record Garment(SizeRun run) {
  /** Adds {@code {"label", "said", "ease"}} for each measure. */
  void write(int size, ArrayNode measures) {
    if (size < 0 || size >= run.sizes().size()) {
      return;
    }
    SizedPattern sized = run.sizes().get(size);
    LengthFormat lengths = LedgerView.format(run);
    Set<String> levels = new LinkedHashSet<>();
    sized
        .pieces()
        .forEach(p -> p.marks(Mark.Level.class).forEach(level -> levels.add(level.name())));
    boolean several = run.pattern().views().size() > 1;
    for (String level : levels) {
      Set<String> told = new LinkedHashSet<>();
      for (View view : run.pattern().views()) {
        Optional<LevelGirth> girth =
            LevelGirth.of(sized, level, new LinkedHashSet<>(view.pieces()));
        if (girth.isPresent() && told.add(lengths.text(girth.get().girth(), LengthKind.FINISHED))) {
          ObjectNode measure = measures.addObject();
          measure.put("label", LedgerView.shown(level) + (several ? ", view " + view.name() : ""));
          measure.put("said", lengths.text(girth.get().girth(), LengthKind.FINISHED));
          ease(sized, level, girth.get(), lengths, measure);
        }
      }
    }
    for (Elastic elastic : sized.elastics()) {
      measures
          .addObject()
          .put("label", LedgerView.shown(elastic.name()))
          .put("said", lengths.text(elastic.finished(), LengthKind.FINISHED));
    }
  }

  /** Against the body's measurement of the level's own name, where the chart has one. */
  private static void ease(
      SizedPattern sized, String level, LevelGirth girth, LengthFormat lengths, ObjectNode to) {
    Quantity body = sized.numbers().get(level);
    if (body != null && body.kind() == QuantityKind.LENGTH && girth.loops() == 1) {
      to.put("body", lengths.text(body.amount(), LengthKind.BODY));
      to.put("ease", lengths.text(girth.girth() - body.amount(), LengthKind.FINISHED));
    }
  }
}
