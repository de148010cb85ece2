package org.hemwright.checks.fault;

import static org.hemwright.checks.fault.WrittenFault.READING;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.pattern.seam.Symmetry;

/**
 * What is written of a whole piece: how it is cut and folded, its number, its grain, and the views
 * it belongs to.
 */
final class CardSlips {
  private CardSlips() {}

  static final List<Slip> ALL =
      List.of(
          Slip.cut(
                  "a copy no longer mirrored",
                  "piece",
                  "^  cut \\d+ of main(, mirrored)$",
                  1,
                  "seam-sides",
                  "cut-count",
                  READING)
              .where(
                  (written, line) ->
                      written.garment().run().sizes().stream()
                          .flatMap(s -> s.piece(line.name()).stream())
                          .limit(1)
                          .noneMatch(Symmetry::isOwnMirror)),
          cutBy("a cut count one too many", 1),
          cutBy("a cut count one too few", -1),
          Slip.cut(
              "\"on the fold\" left out",
              "piece",
              "^  cut \\d+ of (?:main|lining)(, on the fold)",
              1,
              "fold",
              "seam-sides",
              READING),
          Slip.deleted(
              "the fold edge not named", "piece", "^  fold \\w+$", "fold", "seam-sides", READING),
          Slip.put(
              "a piece cut from a fabric that is not named",
              "piece",
              "^  cut \\d+ of (\\w+)",
              1,
              m -> "sateen",
              "cut-count",
              READING),
          Slip.changed(
                  "a piece cut from another fabric of the pattern",
                  "piece",
                  "^  cut \\d+ of (main|lining|rib)",
                  (written, line, m) ->
                      written.garment().run().pattern().fabrics().stream()
                          .map(each -> each.name())
                          .filter(name -> !name.equals(m.group(1)))
                          .flatMap(name -> Written.put(line, m, 1, name).stream())
                          .toList(),
                  "cloth-role",
                  "stretch-arrow",
                  "band-ratio",
                  "opening-passes",
                  READING)
              // a sleeve of rib on a body of jersey is a design, and none of its edges has a mate
              // by name
              .where((written, line) -> !line.name().equals("sleeve") || isWoven(written)),
          Slip.deleted(
              "the cut of a fused cloth left out",
              "piece",
              "^  cut \\d+ of interfacing.*",
              "cloth-role"),
          Slip.cut(
              "fused cloth cut unlike the piece, two alike for a pair",
              "piece",
              "^  cut 2 of interfacing(, mirrored)",
              1,
              "cloth-role"),
          Slip.put(
              "two pieces with one number",
              "piece",
              "^piece .* number (\\d+)",
              1,
              m -> m.group(1).equals("1") ? "2" : "1",
              "label",
              READING),
          Slip.deleted("a grain line deleted", "piece", "^  grain .*", "grain"),
          Slip.changed(
                  "a grain turned by a quarter",
                  "piece",
                  "^  grain .*",
                  (written, line, m) ->
                      List.of(
                          line.text().contains("along lower") || line.text().contains("right")
                              ? "  grain up"
                              : "  grain right"),
                  "grain",
                  "stretch-arrow",
                  "opening-passes",
                  "band-ratio",
                  "girth-ease")
              .where((written, line) -> matters(written, line)),
          Slip.deleted("a line to lengthen at deleted", "piece", "^  lengthen at .*", "lengthen"),
          Slip.put(
              "a band at 0.6 of its length",
              "piece",
              "^  rectangle (.*?) by ",
              1,
              m -> "0.6 * (" + m.group(1) + ")",
              "band-ratio",
              "seam-length",
              READING),
          Slip.changed(
              "a piece left out of a view",
              "view",
              "^  pieces (.*)",
              (written, line, m) -> {
                List<String> changed = new ArrayList<>();
                List<String> pieces = List.of(m.group(1).split(", ", -1));
                for (String piece : pieces) {
                  List<String> others = pieces.stream().filter(p -> !p.equals(piece)).toList();
                  changed.add("  pieces " + String.join(", ", others));
                }
                return changed;
              },
              "view-whole",
              READING));

  private static Slip cutBy(String words, int more) {
    return Slip.changed(
        words,
        "piece",
        "^  cut (\\d+) of (main|rib|lining)\\b",
        (written, line, m) -> {
          int count = Integer.parseInt(m.group(1)) + more;
          return count < 1 ? List.of() : Written.put(line, m, 1, Integer.toString(count));
        },
        "cut-count",
        "seam-sides",
        "edge-used",
        READING);
  }

  private static boolean isWoven(Written written) {
    return written.garment().text().contains("fabric main woven");
  }

  /** A strip of woven cloth may be cut either way. */
  private static boolean matters(Written written, Written.Line line) {
    boolean knit = written.garment().text().contains("fabric main knit");
    return knit || !line.text().contains("along lower");
  }
}
