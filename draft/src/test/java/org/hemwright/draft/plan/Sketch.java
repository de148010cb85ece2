package org.hemwright.draft.plan;

import java.util.List;
import java.util.Optional;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;

/** A few lines of a document, drafted over {@link FindingCase#CHART}. */
record Sketch(Drafted drafted) {
  /** Headings and one fabric before these lines. */
  static Sketch of(String lines) {
    return new Sketch(Drafting.draft("p", FindingCase.HEADINGS + lines, FindingCase.CHART));
  }

  /** These lines inside a piece called {@code sheet}, 1 m square. */
  static Sketch inPiece(String lines) {
    return of(
        """
        piece sheet "Sheet" number 1
          cut 1 of main
          rectangle 1000 mm by 1000 mm, edges low, right, top, left
        """
            + lines.indent(2));
  }

  /** The codes of what was found, each once. */
  List<String> codes() {
    return drafted.findings().stream().map(Finding::code).distinct().toList();
  }

  /** One size. */
  SizedPattern size(String size) {
    return drafted.run().flatMap(run -> run.size(size)).orElseThrow();
  }

  /** A number in a size (mm, radians or plain). */
  double number(String size, String name) {
    return Optional.ofNullable(size(size).numbers().get(name))
        .map(Quantity::amount)
        .orElseThrow(() -> new AssertionError(name + " has no value: " + drafted.findings()));
  }

  /** A number of {@code sheet} in size 14. */
  double number(String name) {
    return number("14", "sheet." + name);
  }

  /** A piece in a size. */
  Piece piece(String size, String name) {
    return size(size)
        .piece(name)
        .orElseThrow(() -> new AssertionError(name + " is not drawn: " + drafted.findings()));
  }

  /** Where a drill mark of {@code sheet} lies in size 14. */
  Point drill(String name) {
    return piece("14", "sheet").marks(Mark.Drill.class).stream()
        .filter(drill -> drill.name().equals(name))
        .map(Mark.Drill::at)
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " is not drawn: " + drafted.findings()));
  }

  /** An inner line of {@code sheet} in size 14. */
  Path inner(String name) {
    return piece("14", "sheet").marks(Mark.Inner.class).stream()
        .filter(line -> line.name().equals(name))
        .map(Mark.Inner::path)
        .findFirst()
        .orElseThrow(() -> new AssertionError(name + " is not drawn: " + drafted.findings()));
  }
}
