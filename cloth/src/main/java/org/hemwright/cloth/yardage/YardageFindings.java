package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.Matching;
import org.hemwright.cloth.rule.Misfit;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.Quantity;

/** Which pieces a width cannot take, whatever the fold, with what would mend it. */
public final class YardageFindings {
  private final SizeRun run;
  private final YardageTable table;

  private YardageFindings(SizeRun run, YardageTable table) {
    this.run = run;
    this.table = table;
  }

  /** Worth a look, each piece and width once with its sizes. */
  public static List<Finding> of(SizeRun run, YardageTable table) {
    return new YardageFindings(run, table).all();
  }

  /** Their sentences. */
  public static Messages messages() {
    return Messages.beside(YardageFindings.class, "yardage.properties");
  }

  /** Whether a finding says that the cloth of a row is too narrow for a piece of it. */
  public static boolean isOf(Finding finding, YardageRow row) {
    return finding.code().startsWith("cloth-too-narrow")
        && finding.sizes().contains(row.size().name())
        && Argument.of(row.fabric().name()).equals(finding.arguments().get("fabric"))
        && Argument.mm(row.width()).equals(finding.arguments().get("width"));
  }

  private record Narrow(Fabric fabric, double width, String piece) {}

  private List<Finding> all() {
    Map<Narrow, Map<String, Misfit>> narrow = new LinkedHashMap<>();
    for (YardageRow row : table.rows()) {
      if (row.fold() == Fold.SINGLE) {
        for (Misfit misfit : row.misfits()) {
          narrow
              .computeIfAbsent(
                  new Narrow(row.fabric(), row.width(), misfit.piece()),
                  unused -> new LinkedHashMap<>())
              .put(row.size().name(), misfit);
        }
      }
    }
    List<Finding> findings = new ArrayList<>(table.findings());
    narrow.forEach((where, sizes) -> findings.add(finding(where, sizes)));
    run.pattern().fabrics().forEach(fabric -> addClashes(fabric, findings));
    return findings;
  }

  private record Apart(String piece, String mate, String notch, boolean across) {}

  /** Matched notches that do not match: beside their bar, or without a mate. */
  private void addClashes(Fabric fabric, List<Finding> findings) {
    Map<Apart, Map<String, Double>> apart = new LinkedHashMap<>();
    for (SizedPattern sized : run.sizes()) {
      for (Matching.Clash clash : GarmentCloth.clashes(sized, fabric)) {
        apart
            .computeIfAbsent(
                new Apart(clash.piece(), clash.mate(), clash.notch(), clash.across()),
                unused -> new LinkedHashMap<>())
            .put(sized.size().name(), clash.apart());
      }
    }
    apart.forEach(
        (where, sizes) ->
            findings.add(
                Finding.warn(apart(fabric, where), where.piece())
                    .sizes(List.copyOf(sizes.keySet()))
                    .with("piece", where.piece())
                    .with("mate", where.mate())
                    .with("notch", where.notch())
                    .with("fabric", fabric.name())
                    .with(
                        "apart",
                        new Argument.Range(
                            Quantity.length(Collections.min(sizes.values())),
                            Quantity.length(Collections.max(sizes.values()))))
                    .at(fabric.origin())
                    .build()));
    for (String notch : fabric.repeat().map(Fabric.Repeat::matched).orElse(List.of())) {
      boolean met = run.sizes().stream().anyMatch(sized -> copies(sized, fabric, notch) > 1);
      if (!met) {
        findings.add(
            Finding.warn("cloth-match-alone", fabric.name())
                .with("notch", notch)
                .with("fabric", fabric.name())
                .at(fabric.origin())
                .build());
      }
    }
  }

  private static String apart(Fabric fabric, Apart where) {
    if (!where.across()) {
      return "cloth-match-apart";
    }
    return fabric.liesFolded() ? "cloth-match-apart-across" : "cloth-match-apart-round";
  }

  /** How many copies of pieces that are cut from a fabric have a notch of that name. */
  private static int copies(SizedPattern sized, Fabric fabric, String notch) {
    return sized.pieces().stream()
        .filter(
            piece ->
                piece.notches().stream()
                    .anyMatch(each -> each.name().filter(notch::equals).isPresent()))
        .flatMap(piece -> piece.card().cuts().stream())
        .filter(cut -> cut.fabric().equals(fabric.name()))
        .mapToInt(Cut::count)
        .sum();
  }

  private Finding finding(Narrow where, Map<String, Misfit> sizes) {
    double least = sizes.values().stream().mapToDouble(Misfit::across).min().orElseThrow();
    double most = sizes.values().stream().mapToDouble(Misfit::across).max().orElseThrow();
    double room = sizes.values().iterator().next().room();
    Optional<Double> takes = widthThatTakes(where, new ArrayList<>(sizes.keySet()));
    Finding.Builder builder =
        takes.isPresent()
            ? Finding.warn("cloth-too-narrow", where.piece())
            : Finding.warn("cloth-too-narrow-ever", where.piece());
    builder
        .sizes(List.copyOf(sizes.keySet()))
        .with("piece", where.piece())
        .with("fabric", where.fabric().name())
        .with("width", Argument.mm(where.width()))
        .with("room", Argument.mm(room))
        .with("across", new Argument.Range(Quantity.length(least), Quantity.length(most)))
        .values(most, room, "mm");
    takes.ifPresent(width -> builder.with("widest", Argument.mm(width)));
    run.pattern().pieces().stream()
        .filter(card -> card.name().equals(where.piece()))
        .map(PieceCard::origin)
        .findFirst()
        .ifPresent(builder::at);
    return builder.build();
  }

  /** The narrowest width of the table in which the piece finds room in all of these sizes. */
  private Optional<Double> widthThatTakes(Narrow where, List<String> sizes) {
    return table.rows().stream()
        .filter(row -> row.fabric().equals(where.fabric()) && row.fold() == Fold.SINGLE)
        .map(YardageRow::width)
        .distinct()
        .sorted()
        .filter(
            width ->
                width > where.width()
                    && table.rows().stream()
                        .filter(row -> row.width() == width && row.fold() == Fold.SINGLE)
                        .filter(row -> row.fabric().equals(where.fabric()))
                        .filter(row -> sizes.contains(row.size().name()))
                        .flatMap(row -> row.misfits().stream())
                        .noneMatch(misfit -> misfit.piece().equals(where.piece())))
        .findFirst();
  }
}
