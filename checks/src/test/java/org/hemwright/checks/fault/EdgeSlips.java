package org.hemwright.checks.fault;

import static org.hemwright.checks.fault.WrittenFault.READING;

import java.util.List;
import org.hemwright.pattern.piece.Piece;

/** What is written of the edges of a piece: allowances, hems, notches. */
final class EdgeSlips {
  private EdgeSlips() {}

  static final List<Slip> ALL =
      List.of(
          Slip.changed(
                  "the usual allowance of one piece 4 mm wider",
                  "piece",
                  "^  allowance ([\\d./ ]+?) (cm|in)\\b",
                  (written, line, m) ->
                      List.of(
                          "  allowance "
                              + (m.group(2).equals("cm")
                                  ? Double.parseDouble(m.group(1)) + 0.4 + " cm"
                                  : "13/16 in")
                              + line.text().substring(m.end(2))),
                  "allowance-equal")
              .where((written, line) -> written.isSewnToAnother(line.name())),
          Slip.put(
                  "the allowance of one piece in inches for centimetres, or the other way",
                  "piece",
                  "^  allowance [\\d./ ]+? (cm|in)\\b",
                  1,
                  m -> m.group(1).equals("cm") ? "in" : "mm",
                  "allowance-equal",
                  READING)
              .where((written, line) -> written.isSewnToAnother(line.name())),
          // A hem that meets another piece's at a side seam.
          Slip.changed(
                  "the hem of one piece deeper than that beside it",
                  "piece",
                  "\\bhem ([\\d./ ]+?) (cm|in)\\b.*turned back",
                  (written, line, m) ->
                      List.of(
                          line.text().substring(0, m.start(1))
                              + (m.group(2).equals("cm") ? "4 cm" : "3 1/4 in")
                              + line.text().substring(m.end(2))),
                  "allowance-ends")
              .where((written, line) -> hemMeetsAnother(written, line.name())),
          Slip.cut(
              "a hem no longer turned back",
              "piece",
              "\\b(hem|upper) [^,]*?( turned back)",
              2,
              "edge-used",
              READING),
          Slip.cut(
              "a lining as long as the shell", "piece", "(, hem taken in \\w+)", 1, "lining-hem"),
          Slip.changed(
                  "a sewn edge written without an allowance",
                  "piece",
                  "^  allowance .*",
                  (written, line, m) ->
                      written.garment().run().sizes().stream()
                          .flatMap(sized -> sized.piece(line.name()).stream())
                          .limit(1)
                          .flatMap(piece -> piece.edges().stream())
                          .filter(edge -> !edge.onFold() && edge.allowance().width() > 0)
                          .map(edge -> edge.name())
                          .filter(edge -> !line.text().contains(", " + edge + " "))
                          .map(edge -> line.text() + ", " + edge + " none")
                          .toList(),
                  "allowance-equal",
                  READING)
              .where((written, line) -> !line.name().equals("pocket")),
          Slip.deleted(
                  "a notch line deleted",
                  "piece",
                  "^  (double )?notch \\w+ at .*",
                  "notch-mates",
                  "loop-marks",
                  "seam-marks",
                  "making-marks",
                  "cap-ease",
                  READING)
              .where((written, line) -> !atEnd(line)),
          Slip.changed(
                  "a notch single on one piece and double on its mate",
                  "piece",
                  "^  (double )?notch \\w+ at .*",
                  (written, line, m) ->
                      List.of(
                          m.group(1) == null
                              ? line.text().replaceFirst("notch", "double notch")
                              : line.text().replaceFirst("double ", "")),
                  "notch-mates")
              .where((written, line) -> !atEnd(line))
              .where((written, line) -> !isOwnMate(written, line))
              .where((written, line) -> meetsNotch(written, line)),
          Slip.put(
                  "a notch placed 4% farther on",
                  "piece",
                  "^  (?:double )?notch \\w+ at (\\d+)% from (start|end)",
                  1,
                  m -> Integer.toString(Integer.parseInt(m.group(1)) + 4),
                  "notch-mates",
                  "cap-ease",
                  "loop-marks")
              .where((written, line) -> !isOwnMate(written, line)),
          Slip.put(
              "the notch for a zip at another height",
              "piece",
              "^  point centre_zip .* down (\\d+) in",
              1,
              m -> "5",
              "closure-length"));

  private static boolean hemMeetsAnother(Written written, String piece) {
    return written.garment().run().sizes().stream()
        .filter(sized -> sized.piece(piece).isPresent())
        .limit(1)
        .flatMap(sized -> sized.seams().stream())
        .filter(seam -> Garment.places(seam).anyMatch(place -> place.piece().equals(piece)))
        .anyMatch(
            seam ->
                seam.joins().get(0).layers().size() == 2
                    && seam.joins().get(0).layers().stream()
                        .allMatch(layer -> layer.run().size() == 1)
                    && Garment.places(seam).anyMatch(place -> !place.piece().equals(piece))
                    && Garment.places(seam)
                        .allMatch(
                            place ->
                                written.garment().run().sizes().stream()
                                    .flatMap(s -> s.piece(place.piece()).stream())
                                    .allMatch(p -> isBesideHem(p, place.edge()))));
  }

  private static boolean isBesideHem(Piece piece, String edge) {
    List<String> names = piece.edges().stream().map(each -> each.name()).toList();
    int at = names.indexOf(edge);
    int count = names.size();
    return at >= 0
        && (names.get((at + 1) % count).equals("hem")
            || names.get((at + count - 1) % count).equals("hem"));
  }

  private static boolean isOwnMate(Written written, Written.Line line) {
    String edge = line.text().strip().replaceFirst("^(double )?notch (\\w+) .*", "$2");
    return written.garment().run().sizes().stream()
        .filter(sized -> sized.piece(line.name()).isPresent())
        .limit(1)
        .flatMap(sized -> Garment.seamsOf(sized, line.name(), edge).stream())
        .flatMap(seam -> seam.joins().stream())
        .allMatch(
            join ->
                join.layers().stream()
                        .flatMap(layer -> layer.run().stream())
                        .map(place -> place.piece() + "." + place.edge())
                        .distinct()
                        .count()
                    == 1);
  }

  /** A notch that stands at the end of its edge, as on a fold, is no mate of another. */
  private static boolean atEnd(Written.Line line) {
    return line.text().matches(".*notch neck at (nape|neck_centre)");
  }

  /** Whether the other layers of its seam have notches too, not only seams to be met. */
  private static boolean meetsNotch(Written written, Written.Line line) {
    String edge = line.text().strip().replaceFirst("^(double )?notch (\\w+) .*", "$2");
    boolean waistOfBand = line.text().contains("length of") || line.text().contains("at quarters");
    return !waistOfBand
        && written.garment().run().sizes().stream()
            .filter(sized -> sized.piece(line.name()).isPresent())
            .limit(1)
            .anyMatch(
                sized ->
                    Garment.seamsOf(sized, line.name(), edge).stream()
                        .flatMap(Garment::places)
                        .filter(p -> !(p.piece().equals(line.name()) && p.edge().equals(edge)))
                        .anyMatch(
                            p ->
                                sized
                                    .piece(p.piece())
                                    .filter(
                                        piece ->
                                            piece.notches().stream()
                                                .anyMatch(n -> n.edge().equals(p.edge())))
                                    .isPresent()));
  }
}
