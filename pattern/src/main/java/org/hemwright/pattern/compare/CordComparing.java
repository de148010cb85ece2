package org.hemwright.pattern.compare;

import static org.hemwright.pattern.compare.SaidComparing.yes;

import java.util.Optional;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Making;

/** Cords and drawstrings, found again by name; the old ones in the new names of pieces. */
record CordComparing(Making was, Making is, StepText before, SaidComparing comparing) {
  void compare() {
    for (Cord cord : is.cords()) {
      String subject = "cord " + cord.name();
      was.cord(cord.name())
          .ifPresentOrElse(
              then -> cord(then, cord, subject),
              () -> comparing.changes().add(Change.of(Changed.CORD_ADDED, subject)));
    }
    for (Cord cord : was.cords()) {
      if (is.cord(cord.name()).isEmpty()) {
        comparing.changes().add(Change.of(Changed.CORD_REMOVED, "cord " + cord.name()));
      }
    }
  }

  private void cord(Cord then, Cord cord, String subject) {
    comparing.said(
        Changed.CORD_PIECE,
        subject,
        Argument.of(before.piece(then.piece())),
        Argument.of(cord.piece()));
    comparing.said(
        Changed.CORD_PLACE,
        subject,
        Argument.of(then.place().word()),
        Argument.of(cord.place().word()));
    comparing.length(
        Changed.CORD_LENGTH, subject, Optional.of(then.length()), Optional.of(cord.length()));
    comparing.said(
        Changed.CORD_ENDS_SAID,
        subject,
        yes(then.freeEnds().isPresent()),
        yes(cord.freeEnds().isPresent()));
    comparing.length(Changed.CORD_ENDS, subject, then.freeEnds(), cord.freeEnds());
    comparing.said(Changed.CORD_TOGGLES, subject, yes(then.toggles()), yes(cord.toggles()));
    comparing.said(Changed.CORD_TACKED, subject, yes(then.tacked()), yes(cord.tacked()));
  }
}
