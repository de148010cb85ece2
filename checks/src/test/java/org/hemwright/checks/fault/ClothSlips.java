package org.hemwright.checks.fault;

import static org.hemwright.checks.fault.WrittenFault.READING;

import java.util.List;

/** What is written of cloths and how they stretch. */
final class ClothSlips {
  private ClothSlips() {}

  static final List<Slip> ALL =
      List.of(
          Slip.deleted("a stretch line deleted", "piece", "^  stretch across$", "stretch-arrow"),
          Slip.changed(
              "a stretch line along for across",
              "piece",
              "^  stretch across$",
              (written, line, m) -> List.of("  stretch along"),
              "stretch-arrow"),
          Slip.put(
                  "a knit written as a woven",
                  "fabric",
                  "^fabric \\w+ (knit)",
                  1,
                  m -> "woven",
                  "stretch-arrow",
                  READING)
              .toldOfAnyPiece(),
          Slip.put(
                  "the stretch of a cloth a tenth of what it was",
                  "fabric",
                  "^  stretch across at least (\\d+)%",
                  1,
                  m -> Integer.toString(Integer.parseInt(m.group(1)) / 10),
                  "opening-passes",
                  "band-ratio")
              .toldOfAnyPiece(),
          Slip.put(
                  "the stretch of a cloth typed as a ratio, 0.35%",
                  "fabric",
                  "^  stretch across at least (\\d+)%",
                  1,
                  m -> "0." + m.group(1),
                  "opening-passes",
                  "band-ratio",
                  READING)
              .toldOfAnyPiece(),
          Slip.changed(
                  "cloth as narrow as a ribbon",
                  "fabric",
                  "^  widths (.*)",
                  (written, line, m) -> List.of("  widths 12 cm"),
                  "cloth-width")
              .where((written, line) -> !line.name().equals("interfacing"))
              .toldOfAnyPiece());
}
