package org.hemwright.pattern.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Piece;

/** What is taken in on a piece's edges, and what its openings pass and are closed by. */
record IntakeComparing(String name, Map<String, PieceMatch.Both> sizes, List<Change> changes) {
  void compare() {
    BySize found = new BySize(sizes.size());
    sizes.forEach(
        (size, both) -> {
          intakes(size, both.old(), both.now(), found);
          openings(size, both.old(), both.now(), found);
        });
    changes.addAll(found.changes());
  }

  private void intakes(String size, Piece old, Piece now, BySize found) {
    Map<String, Intake> was = new LinkedHashMap<>();
    old.intakes().forEach(intake -> was.put(intake.name(), intake));
    for (Intake intake : now.intakes()) {
      String subject = name + "." + intake.name();
      Intake before = was.remove(intake.name());
      if (before == null) {
        found.add(size, Changed.INTAKE_ADDED, subject);
        continue;
      }
      found.add(
          size,
          Changed.INTAKE_PRESSED,
          subject,
          Optional.of(pressed(before)),
          Optional.of(pressed(intake)));
      if (Math.abs(before.taken() - intake.taken()) > Tolerance.DRAWN_LENGTH) {
        found.add(
            size, Changed.INTAKE_TAKES, subject, Change.Values.of(before.taken(), intake.taken()));
      }
    }
    was.keySet().forEach(gone -> found.add(size, Changed.INTAKE_REMOVED, name + "." + gone));
  }

  private static Argument pressed(Intake intake) {
    boolean towardStart =
        intake instanceof Intake.Dart dart
            ? dart.towardStart()
            : intake instanceof Intake.Pleat pleat && pleat.towardStart();
    return new Argument.Term(towardStart ? "toward-start" : "toward-end");
  }

  private void openings(String size, Piece old, Piece now, BySize found) {
    for (BodyOpening opening : now.bodyOpenings()) {
      String subject = name + "." + opening.edge();
      old.bodyOpenings().stream()
          .filter(was -> was.edge().equals(opening.edge()))
          .findFirst()
          .ifPresent(was -> opening(size, subject, was, opening, found));
    }
  }

  private static void opening(
      String size, String subject, BodyOpening was, BodyOpening is, BySize found) {
    found.add(size, Changed.OPENING_OVER, subject, Optional.of(over(was)), Optional.of(over(is)));
    found.add(
        size,
        Changed.OPENING_CLOSURE,
        subject,
        Optional.of(closure(was)),
        Optional.of(closure(is)));
    if (was.closure().isPresent() && is.closure().isPresent()) {
      double before = was.closure().get().length();
      double length = is.closure().get().length();
      if (Math.abs(before - length) > Tolerance.DRAWN_LENGTH) {
        found.add(size, Changed.OPENING_SLIT, subject, Change.Values.of(before, length));
      }
    }
  }

  private static Argument over(BodyOpening opening) {
    return opening.over().map(Argument::of).orElse(new Argument.Term("unsaid"));
  }

  private static Argument closure(BodyOpening opening) {
    return opening
        .closure()
        .map(closure -> Argument.of(closure.kind().name().toLowerCase(Locale.ROOT)))
        .orElse(new Argument.Term("none"));
  }
}
