package org.hemwright.checks.fault;

import static org.hemwright.checks.fault.WrittenFault.READING;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hemwright.checks.fault.Written.Line;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.QuantityKind;
import org.hemwright.pattern.seam.Symmetry;

/** Slips of the pen in a document, one line each, in the order of the table. */
final class WrittenFaults {
  private WrittenFaults() {}

  static Map<String, Function<Written, Stream<WrittenFault>>> all() {
    Map<String, Function<Written, Stream<WrittenFault>>> all = new LinkedHashMap<>();
    all.put("the usual allowance of one piece 4 mm wider", WrittenFaults::allowanceWider);
    all.put(
        "the allowance of one piece in inches for centimetres, or the other way",
        WrittenFaults::allowanceUnit);
    all.put("the hem of one piece deeper than that beside it", WrittenFaults::hemDeeper);
    all.put("a hem no longer turned back", WrittenFaults::hemNotTurned);
    all.put("a notch line deleted", WrittenFaults::notchLost);
    all.put("a notch single on one piece and double on its mate", WrittenFaults::notchKind);
    all.put("a notch placed 4% farther on", WrittenFaults::notchMoved);
    all.put("a seam line deleted", WrittenFaults::seamLost);
    all.put("a seam that names another edge of the same piece", WrittenFaults::seamOtherEdge);
    all.put("a run of a seam with one edge left out", WrittenFaults::seamShorter);
    all.put("a layer of a seam sewn from its other end", WrittenFaults::seamTurned);
    all.put("the ease or stretch of a seam left out", WrittenFaults::easeLost);
    all.put("a seam's even marks one fewer or more", WrittenFaults::evenMarks);
    all.put("a dial that stands beyond its range", WrittenFaults::dialBeyond);
    all.put("a solved number written as it is in one size", WrittenFaults::solveFixed);
    all.put("a copy no longer mirrored", WrittenFaults::notMirrored);
    all.put("a cut count one too many", WrittenFaults::cutMore);
    all.put("a cut count one too few", WrittenFaults::cutLess);
    all.put("\"on the fold\" left out", WrittenFaults::foldUnsaid);
    all.put("the fold edge not named", WrittenFaults::foldLost);
    all.put("a piece cut from a fabric that is not named", WrittenFaults::otherFabric);
    all.put("two pieces with one number", WrittenFaults::numberTaken);
    all.put("a grain line deleted", WrittenFaults::grainLost);
    all.put("a grain turned by a quarter", WrittenFaults::grainTurned);
    all.put("a stretch line deleted", WrittenFaults::stretchLost);
    all.put("a stretch line along for across", WrittenFaults::stretchAlong);
    all.put("a knit written as a woven", WrittenFaults::wovenForKnit);
    all.put("the stretch of a cloth a tenth of what it was", WrittenFaults::lessStretch);
    all.put("cloth as narrow as a ribbon", WrittenFaults::narrowCloth);
    all.put("a line to lengthen at deleted", WrittenFaults::lengthenLost);
    all.put("a band at 0.6 of its length", WrittenFaults::bandShort);
    all.put("an elastic wider than its casing", WrittenFaults::elasticWide);
    all.put("an elastic half again as long", WrittenFaults::elasticLong);
    all.put("an elastic of half its length", WrittenFaults::elasticShort);
    all.put("a zip too short for the opening", WrittenFaults::zipShort);
    all.put("a piece left out of a view", WrittenFaults::viewLacks);
    all.put("a number of the document 6 mm larger in one size", WrittenFaults::oneSizeOff);
    all.put("a piece cut from another fabric of the pattern", WrittenFaults::fabricExchanged);
    all.put("the cut of a fused cloth left out", WrittenFaults::interfacingLost);
    all.put("fused cloth cut unlike the piece, two alike for a pair", WrittenFaults::fusedAlike);
    all.put("a sewn edge written without an allowance", WrittenFaults::edgeBare);
    all.put("a seam declared twice", WrittenFaults::seamTwice);
    all.put("an opening of which nothing is said", WrittenFaults::openingUnsaid);
    all.put("the stretch of a cloth typed as a ratio, 0.35%", WrittenFaults::stretchRatio);
    all.put("an elastic whose ends overlap by 10 cm", WrittenFaults::overlapLong);
    all.put("a lining as long as the shell", WrittenFaults::liningLong);
    all.put("the notch for a zip at another height", WrittenFaults::zipNotch);
    return all;
  }

  private static Stream<WrittenFault> fabricExchanged(Written written) {
    List<String> fabrics =
        written.garment().run().pattern().fabrics().stream().map(each -> each.name()).toList();
    return written
        .each(
            "piece",
            "^  cut \\d+ of (main|lining|rib)",
            (line, m) ->
                fabrics.stream()
                    .filter(name -> !name.equals(m.group(1)))
                    .flatMap(name -> Written.put(line, m, 1, name).stream())
                    .toList(),
            Set.of("cloth-role", "stretch-arrow", "band-ratio", "opening-passes", READING))
        // A sleeve of rib on a body of jersey is a design, and none of its edges has a mate by
        // name.
        .filter(fault -> !sectionOf(written, fault).name().equals("sleeve") || isWoven(written));
  }

  private static boolean isWoven(Written written) {
    return written.garment().text().contains("fabric main woven");
  }

  private static Stream<WrittenFault> interfacingLost(Written written) {
    return written.each(
        "piece", "^  cut \\d+ of interfacing.*", (line, m) -> List.of(""), Set.of("cloth-role"));
  }

  private static Stream<WrittenFault> fusedAlike(Written written) {
    return written.each(
        "piece",
        "^  cut 2 of interfacing(, mirrored)",
        (line, m) -> Written.put(line, m, 1, ""),
        Set.of("cloth-role"));
  }

  private static Stream<WrittenFault> edgeBare(Written written) {
    return written
        .each(
            "piece",
            "^  allowance .*",
            (line, m) ->
                written.garment().run().sizes().stream()
                    .flatMap(sized -> sized.piece(line.name()).stream())
                    .limit(1)
                    .flatMap(piece -> piece.edges().stream())
                    .filter(edge -> !edge.onFold() && edge.allowance().width() > 0)
                    .map(edge -> edge.name())
                    .filter(edge -> !line.text().contains(", " + edge + " "))
                    .map(edge -> line.text() + ", " + edge + " none")
                    .toList(),
            Set.of("allowance-equal", READING))
        .filter(fault -> !sectionOf(written, fault).name().equals("pocket"));
  }

  private static Stream<WrittenFault> seamTwice(Written written) {
    return written.each(
        "seam",
        "^seam (\\w+)(.*)",
        (line, m) -> List.of(line.text() + "\nseam " + m.group(1) + "_again" + m.group(2)),
        Set.of("edge-used"));
  }

  private static Stream<WrittenFault> openingUnsaid(Written written) {
    return written.each(
        "piece",
        "^  opening .*",
        (line, m) -> List.of(""),
        Set.of("opening-passes", "girth-ease", READING));
  }

  private static Stream<WrittenFault> stretchRatio(Written written) {
    return written
        .each(
            "fabric",
            "^  stretch across at least (\\d+)%",
            (line, m) -> Written.put(line, m, 1, "0." + m.group(1)),
            Set.of("opening-passes", "band-ratio", READING))
        .map(fault -> anywhere(written, fault));
  }

  private static Stream<WrittenFault> overlapLong(Written written) {
    return written.each(
        "elastic",
        "overlap (.*)$",
        (line, m) -> Written.put(line, m, 1, "10 cm"),
        Set.of("elastic-casing"));
  }

  private static Stream<WrittenFault> liningLong(Written written) {
    return written.each(
        "piece",
        "(, hem taken in \\w+)",
        (line, m) -> Written.put(line, m, 1, ""),
        Set.of("lining-hem"));
  }

  private static Stream<WrittenFault> zipNotch(Written written) {
    return written.each(
        "piece",
        "^  point centre_zip .* down (\\d+) in",
        (line, m) -> Written.put(line, m, 1, "5"),
        Set.of("closure-length"));
  }

  private static Stream<WrittenFault> allowanceWider(Written written) {
    return written
        .each(
            "piece",
            "^  allowance ([\\d./ ]+?) (cm|in)\\b",
            (line, m) ->
                List.of(
                    "  allowance "
                        + (m.group(2).equals("cm")
                            ? Double.parseDouble(m.group(1)) + 0.4 + " cm"
                            : "13/16 in")
                        + line.text().substring(m.end(2))),
            Set.of("allowance-equal"))
        .filter(fault -> written.isSewnToAnother(sectionOf(written, fault).name()));
  }

  private static Line sectionOf(Written written, WrittenFault fault) {
    return written.lines().get(fault.line() - 1);
  }

  private static Stream<WrittenFault> allowanceUnit(Written written) {
    return written
        .each(
            "piece",
            "^  allowance [\\d./ ]+? (cm|in)\\b",
            (line, m) -> Written.put(line, m, 1, m.group(1).equals("cm") ? "in" : "mm"),
            Set.of("allowance-equal", READING))
        .filter(fault -> written.isSewnToAnother(sectionOf(written, fault).name()));
  }

  /** A hem that meets another piece's at a side seam. */
  private static Stream<WrittenFault> hemDeeper(Written written) {
    return written
        .each(
            "piece",
            "\\bhem ([\\d./ ]+?) (cm|in)\\b.*turned back",
            (line, m) ->
                List.of(
                    line.text().substring(0, m.start(1))
                        + (m.group(2).equals("cm") ? "4 cm" : "3 1/4 in")
                        + line.text().substring(m.end(2))),
            Set.of("allowance-ends"))
        .filter(fault -> hemMeetsAnother(written, sectionOf(written, fault).name()));
  }

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

  private static Stream<WrittenFault> hemNotTurned(Written written) {
    return written.each(
        "piece",
        "\\b(hem|upper) [^,]*?( turned back)",
        (line, m) -> Written.put(line, m, 2, ""),
        Set.of("edge-used", READING));
  }

  private static boolean isOwnMate(Written written, Line line) {
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

  private static Stream<WrittenFault> notchLost(Written written) {
    return written
        .each(
            "piece",
            "^  (double )?notch \\w+ at .*",
            (line, m) -> List.of(""),
            Set.of("notch-mates", "loop-marks", "seam-marks", "making-marks", "cap-ease", READING))
        .filter(fault -> !atEnd(sectionOf(written, fault)));
  }

  /** A notch that stands at the end of its edge, as on a fold, is no mate of another. */
  private static boolean atEnd(Line line) {
    return line.text().matches(".*notch neck at (nape|neck_centre)");
  }

  private static Stream<WrittenFault> notchKind(Written written) {
    return written
        .each(
            "piece",
            "^  (double )?notch \\w+ at .*",
            (line, m) ->
                List.of(
                    m.group(1) == null
                        ? line.text().replaceFirst("notch", "double notch")
                        : line.text().replaceFirst("double ", "")),
            Set.of("notch-mates"))
        .filter(fault -> !atEnd(sectionOf(written, fault)))
        .filter(fault -> !isOwnMate(written, sectionOf(written, fault)))
        .filter(fault -> meetsNotch(written, sectionOf(written, fault)));
  }

  /** Whether the other layers of its seam have notches too, not only seams to be met. */
  private static boolean meetsNotch(Written written, Line line) {
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

  private static Stream<WrittenFault> notchMoved(Written written) {
    return written
        .each(
            "piece",
            "^  (?:double )?notch \\w+ at (\\d+)% from (start|end)",
            (line, m) ->
                Written.put(line, m, 1, Integer.toString(Integer.parseInt(m.group(1)) + 4)),
            Set.of("notch-mates", "cap-ease", "loop-marks"))
        .filter(fault -> !isOwnMate(written, sectionOf(written, fault)));
  }

  private static Stream<WrittenFault> seamLost(Written written) {
    return written.each(
        "seam", "^seam .*", (line, m) -> List.of(""), Set.of("edge-used", "cut-count", READING));
  }

  private static Stream<WrittenFault> seamOtherEdge(Written written) {
    return written.each(
        "seam",
        "^seam (\\w+) +(.*)",
        (line, m) -> {
          List<String> changed = new ArrayList<>();
          var place = Pattern.compile("\\b(\\w+)((?:\\.\\w+)?)\\.(\\w+)\\b").matcher(line.text());
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
                            .forEach(name -> changed.addAll(Written.put(line, place, 3, name))));
          }
          return changed;
        },
        Set.of(
            "seam-length",
            "seam-sides",
            "edge-used",
            "cut-count",
            "loop-marks",
            "notch-mates",
            "seam-marks",
            READING));
  }

  private static Stream<WrittenFault> seamShorter(Written written) {
    return written.each(
        "seam",
        "^seam .* then .*",
        (line, m) -> {
          List<String> changed = new ArrayList<>();
          var then = Pattern.compile(" then (every )?[\\w.]+( reversed)?").matcher(line.text());
          while (then.find()) {
            changed.addAll(Written.put(line, then, 0, ""));
          }
          return changed;
        },
        Set.of("seam-length", "edge-used", "seam-sides", READING));
  }

  private static Stream<WrittenFault> seamTurned(Written written) {
    return written.each(
        "seam",
        "^seam .* reversed.*",
        (line, m) -> {
          List<String> changed = new ArrayList<>();
          var reversed = Pattern.compile(" reversed").matcher(line.text());
          while (reversed.find()) {
            changed.addAll(Written.put(line, reversed, 0, ""));
          }
          return changed;
        },
        Set.of("seam-sides", "seam-length", "notch-mates", READING));
  }

  private static Stream<WrittenFault> easeLost(Written written) {
    return written.each(
        "seam",
        ", (ease|stretched) [^,]*$",
        (line, m) -> Written.put(line, m, 0, ""),
        Set.of("seam-length"));
  }

  private static Stream<WrittenFault> evenMarks(Written written) {
    return written.each(
        "seam",
        ", (quarters) at",
        (line, m) ->
            List.of(
                line.text().replace("quarters", "thirds"),
                line.text().replace("quarters", "fifths")),
        Set.of("seam-marks"));
  }

  private static Stream<WrittenFault> dialBeyond(Written written) {
    return written.each(
        "",
        "^dial (\\w+) *= (.+?) +from (.+?) to (.+?)  ",
        (line, m) -> {
          boolean plain = !m.group(4).matches(".*(cm|mm|in|%)$");
          String unit = plain ? "" : m.group(4).replaceFirst("^[\\d./ ]+", "").strip();
          String beyond = plain ? "1" : unit.equals("%") ? "99%" : "99 " + unit;
          return Written.put(line, m, 2, beyond);
        },
        Set.of(READING));
  }

  private static Stream<WrittenFault> solveFixed(Written written) {
    return Stream.of("", "piece")
        .flatMap(
            kind ->
                written.each(
                    kind,
                    "^( *)solve (\\w+) so that .*",
                    (line, m) -> {
                      String name =
                          m.group(1).isEmpty() ? m.group(2) : line.name() + "." + m.group(2);
                      var base =
                          written.garment().run().sizes().stream()
                              .filter(s -> s.numbers().containsKey(name))
                              .findFirst()
                              .orElseThrow();
                      double mm = Objects.requireNonNull(base.numbers().get(name)).amount();
                      return List.of(
                          m.group(1)
                              + "let "
                              + m.group(2)
                              + " = "
                              + String.format("%.2f", mm)
                              + " mm");
                    },
                    Set.of("seam-length", "girth-ease", "grade-even", "grade-order", READING)));
  }

  private static Stream<WrittenFault> notMirrored(Written written) {
    return written
        .each(
            "piece",
            "^  cut \\d+ of main(, mirrored)$",
            (line, m) -> Written.put(line, m, 1, ""),
            Set.of("seam-sides", "cut-count", READING))
        .filter(
            fault ->
                written.garment().run().sizes().stream()
                    .flatMap(s -> s.piece(sectionOf(written, fault).name()).stream())
                    .limit(1)
                    .noneMatch(Symmetry::isOwnMirror));
  }

  private static Stream<WrittenFault> cut(Written written, int by) {
    return written.each(
        "piece",
        "^  cut (\\d+) of (main|rib|lining)\\b",
        (line, m) -> {
          int count = Integer.parseInt(m.group(1)) + by;
          return count < 1 ? List.of() : Written.put(line, m, 1, Integer.toString(count));
        },
        Set.of("cut-count", "seam-sides", "edge-used", READING));
  }

  private static Stream<WrittenFault> cutMore(Written written) {
    return cut(written, 1);
  }

  private static Stream<WrittenFault> cutLess(Written written) {
    return cut(written, -1);
  }

  private static Stream<WrittenFault> foldUnsaid(Written written) {
    return written.each(
        "piece",
        "^  cut \\d+ of (?:main|lining)(, on the fold)",
        (line, m) -> Written.put(line, m, 1, ""),
        Set.of("fold", "seam-sides", READING));
  }

  private static Stream<WrittenFault> foldLost(Written written) {
    return written.each(
        "piece", "^  fold \\w+$", (line, m) -> List.of(""), Set.of("fold", "seam-sides", READING));
  }

  private static Stream<WrittenFault> otherFabric(Written written) {
    return written.each(
        "piece",
        "^  cut \\d+ of (\\w+)",
        (line, m) -> Written.put(line, m, 1, "sateen"),
        Set.of("cut-count", READING));
  }

  private static Stream<WrittenFault> numberTaken(Written written) {
    return written.each(
        "piece",
        "^piece .* number (\\d+)",
        (line, m) -> Written.put(line, m, 1, m.group(1).equals("1") ? "2" : "1"),
        Set.of("label", READING));
  }

  private static Stream<WrittenFault> grainLost(Written written) {
    return written.each("piece", "^  grain .*", (line, m) -> List.of(""), Set.of("grain"));
  }

  private static Stream<WrittenFault> grainTurned(Written written) {
    return written
        .each(
            "piece",
            "^  grain .*",
            (line, m) ->
                List.of(
                    line.text().contains("along lower") || line.text().contains("right")
                        ? "  grain up"
                        : "  grain right"),
            Set.of("grain", "stretch-arrow", "opening-passes", "band-ratio", "girth-ease"))
        .filter(fault -> matters(written, sectionOf(written, fault)));
  }

  /** A strip of woven cloth may be cut either way. */
  private static boolean matters(Written written, Line line) {
    boolean knit = written.garment().text().contains("fabric main knit");
    return knit || !line.text().contains("along lower");
  }

  private static Stream<WrittenFault> stretchLost(Written written) {
    return written.each(
        "piece", "^  stretch across$", (line, m) -> List.of(""), Set.of("stretch-arrow"));
  }

  private static Stream<WrittenFault> stretchAlong(Written written) {
    return written.each(
        "piece",
        "^  stretch across$",
        (line, m) -> List.of("  stretch along"),
        Set.of("stretch-arrow"));
  }

  private static Stream<WrittenFault> wovenForKnit(Written written) {
    return written
        .each(
            "fabric",
            "^fabric \\w+ (knit)",
            (line, m) -> Written.put(line, m, 1, "woven"),
            Set.of("stretch-arrow", READING))
        .map(fault -> anywhere(written, fault));
  }

  /** A fault of a fabric shows on any piece that is cut from it. */
  private static WrittenFault anywhere(Written written, WrittenFault fault) {
    Set<String> pieces = new LinkedHashSet<>(fault.about());
    written.garment().run().pattern().pieces().forEach(card -> pieces.add(card.name()));
    return new WrittenFault(
        fault.where(), fault.text(), fault.line(), fault.checks(), pieces, fault.sizes());
  }

  private static Stream<WrittenFault> lessStretch(Written written) {
    return written
        .each(
            "fabric",
            "^  stretch across at least (\\d+)%",
            (line, m) ->
                Written.put(line, m, 1, Integer.toString(Integer.parseInt(m.group(1)) / 10)),
            Set.of("opening-passes", "band-ratio"))
        .map(fault -> anywhere(written, fault));
  }

  private static Stream<WrittenFault> narrowCloth(Written written) {
    return written
        .each(
            "fabric",
            "^  widths (.*)",
            (line, m) -> List.of("  widths 12 cm"),
            Set.of("cloth-width"))
        .filter(fault -> !sectionOf(written, fault).name().equals("interfacing"))
        .map(fault -> anywhere(written, fault));
  }

  private static Stream<WrittenFault> lengthenLost(Written written) {
    return written.each("piece", "^  lengthen at .*", (line, m) -> List.of(""), Set.of("lengthen"));
  }

  private static Stream<WrittenFault> bandShort(Written written) {
    return written.each(
        "piece",
        "^  rectangle (.*?) by ",
        (line, m) -> Written.put(line, m, 1, "0.6 * (" + m.group(1) + ")"),
        Set.of("band-ratio", "seam-length", READING));
  }

  private static Stream<WrittenFault> elasticWide(Written written) {
    return written.each(
        "elastic",
        "width (\\w+)",
        (line, m) -> Written.put(line, m, 1, m.group(1) + " + 8 mm"),
        Set.of("elastic-casing"));
  }

  private static Stream<WrittenFault> elasticTimes(Written written, String times) {
    return written.each(
        "elastic",
        "length ([^,]*)",
        (line, m) -> Written.put(line, m, 1, times + " * (" + of(m.group(1)) + ")"),
        Set.of("elastic-casing"));
  }

  private static String of(String length) {
    return length.replace("90% of waist", "waist * 0.9");
  }

  private static Stream<WrittenFault> elasticLong(Written written) {
    return elasticTimes(written, "1.5");
  }

  private static Stream<WrittenFault> elasticShort(Written written) {
    return elasticTimes(written, "0.5");
  }

  private static Stream<WrittenFault> zipShort(Written written) {
    return written.each(
        "piece",
        "closed by zip (\\d+ \\w+)",
        (line, m) -> Written.put(line, m, 1, "2 in"),
        Set.of("opening-passes"));
  }

  private static Stream<WrittenFault> viewLacks(Written written) {
    return written.each(
        "view",
        "^  pieces (.*)",
        (line, m) -> {
          List<String> changed = new ArrayList<>();
          List<String> pieces = List.of(m.group(1).split(", ", -1));
          for (String piece : pieces) {
            List<String> others = pieces.stream().filter(p -> !p.equals(piece)).toList();
            changed.add("  pieces " + String.join(", ", others));
          }
          return changed;
        },
        Set.of("view-whole", READING));
  }

  /** A number that the document names, off in the middle size alone, and told in no other. */
  private static Stream<WrittenFault> oneSizeOff(Written written) {
    return written
        .each(
            "",
            "^let (\\w+) += (.*)",
            (line, m) -> {
              List<String> changed = new ArrayList<>();
              var first = written.garment().run().sizes().get(0);
              var number = first.numbers().get(m.group(1));
              boolean length = number != null && number.kind() == QuantityKind.LENGTH;
              if (length && !m.group(2).contains(" when ") && !m.group(2).contains(" then ")) {
                String size = written.garment().threeSizes().get(1).size().name();
                String named = size.matches("\\d+") ? size : '"' + size + '"';
                String expression = m.group(2).replaceFirst(" +#.*", "");
                changed.add(
                    "let %s = %s + 6 mm when size from %s to %s, otherwise %s"
                        .formatted(m.group(1), expression, named, named, expression));
              }
              return changed;
            },
            Set.of("grade-even", "seam-length"))
        .map(
            fault ->
                new WrittenFault(
                    fault.where(),
                    fault.text(),
                    fault.line(),
                    fault.checks(),
                    anywhere(written, fault).about(),
                    List.of(written.garment().threeSizes().get(1).size().name())));
  }
}
