package org.hemwright.pattern.construction;

import org.hemwright.pattern.construction.Trouble.Kind;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Piece;

/** What concerns the making as a whole. */
record WholeMaking(Table table) {
  void atTheEnd() {
    boolean knit =
        table.cloth.pieces().keySet().stream()
            .anyMatch(
                piece -> table.cloth.cloth(piece).filter(Fabric.Kind.KNIT::equals).isPresent());
    boolean tested =
        table.steps.stream()
            .anyMatch(
                step ->
                    step.act() instanceof Act.Handle handle && handle.kind() == Act.Handling.TEST);
    if (knit && !tested && !table.steps.isEmpty()) {
      table.tell(Trouble.about(Kind.NO_TEST, "", "make").in(table.steps.get(0)));
    }
    for (Piece piece : table.cloth.pieces().values()) {
      for (Intake intake : piece.intakes()) {
        String name = piece.name() + "." + intake.name();
        if (!table.takenIn.containsKey(name)) {
          table.troubles.removeIf(
              each ->
                  each.kind() == Kind.INTAKE_LATE && each.mate().filter(name::equals).isPresent());
          table.tell(Trouble.about(Kind.UNTAKEN, "", name));
        }
      }
    }
    table.folded.forEach(
        (part, step) -> {
          boolean inside = step.act() instanceof Act.Fold fold && !fold.wrongSidesTogether();
          if (inside && table.closed.containsKey(part) && !table.turnedOut.containsKey(part)) {
            table.tell(Trouble.about(Kind.NOT_TURNED_OUT, "piece", part.piece()).in(step));
          }
        });
  }
}
