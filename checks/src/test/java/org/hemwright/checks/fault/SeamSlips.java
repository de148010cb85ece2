package org.hemwright.checks.fault;

import static org.hemwright.checks.fault.WrittenFault.READING;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What is written of seams. */
final class SeamSlips {
  private SeamSlips() {}

  static final List<Slip> ALL =
      List.of(
          Slip.deleted(
              "a seam line deleted", "seam", "^seam .*", "edge-used", "cut-count", READING),
          Slip.changed(
              "a seam declared twice",
              "seam",
              "^seam (\\w+)(.*)",
              (written, line, m) ->
                  List.of(line.text() + "\nseam " + m.group(1) + "_again" + m.group(2)),
              "edge-used"),
          Slip.changed(
              "a seam that names another edge of the same piece",
              "seam",
              "^seam (\\w+) +(.*)",
              (written, line, m) -> {
                List<String> changed = new ArrayList<>();
                var place =
                    Pattern.compile("\\b(\\w+)((?:\\.\\w+)?)\\.(\\w+)\\b").matcher(line.text());
                while (place.find()) {
                  String piece = place.group(1);
                  String edge = place.group(3);
                  written.garment().run().sizes().stream()
                      .flatMap(sized -> sized.piece(piece).stream())
                      .findFirst()
                      .ifPresent(
                          own ->
                              own.edges().stream()
                                  .map(each -> each.name())
                                  .filter(name -> !name.equals(edge))
                                  .filter(name -> !line.text().contains(piece + "." + name))
                                  .forEach(
                                      name -> changed.addAll(Written.put(line, place, 3, name))));
                }
                return changed;
              },
              "seam-length",
              "seam-sides",
              "edge-used",
              "cut-count",
              "loop-marks",
              "notch-mates",
              "seam-marks",
              READING),
          Slip.changed(
              "a run of a seam with one edge left out",
              "seam",
              "^seam .* then .*",
              (written, line, m) -> {
                List<String> changed = new ArrayList<>();
                var then =
                    Pattern.compile(" then (every )?[\\w.]+( reversed)?").matcher(line.text());
                while (then.find()) {
                  changed.addAll(Written.put(line, then, 0, ""));
                }
                return changed;
              },
              "seam-length",
              "edge-used",
              "seam-sides",
              READING),
          Slip.changed(
              "a layer of a seam sewn from its other end",
              "seam",
              "^seam .* reversed.*",
              (written, line, m) -> {
                List<String> changed = new ArrayList<>();
                var reversed = Pattern.compile(" reversed").matcher(line.text());
                while (reversed.find()) {
                  changed.addAll(Written.put(line, reversed, 0, ""));
                }
                return changed;
              },
              "seam-sides",
              "seam-length",
              "notch-mates",
              READING),
          Slip.cut(
              "the ease or stretch of a seam left out",
              "seam",
              ", (ease|stretched) [^,]*$",
              0,
              "seam-length"),
          Slip.changed(
              "a seam's even marks one fewer or more",
              "seam",
              ", (quarters) at",
              (written, line, m) ->
                  List.of(
                      line.text().replace("quarters", "thirds"),
                      line.text().replace("quarters", "fifths")),
              "seam-marks"));
}
