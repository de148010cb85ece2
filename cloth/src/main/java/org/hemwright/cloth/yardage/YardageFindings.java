package org.hemwright.cloth.yardage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hemwright.cloth.rule.BarsApart;
import org.hemwright.cloth.rule.ClothSheet;
import org.hemwright.cloth.rule.Fold;
import org.hemwright.cloth.rule.MatchedPair;
import org.hemwright.cloth.rule.Matching;
import org.hemwright.cloth.rule.Misfit;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.piece.Cut;
import org.hemwright.pattern.piece.PieceCard;
import org.hemwright.pattern.quantity.Quantity;

/**
 * Which pieces a width cannot take, whatever the fold, or in the folds that were asked for, with
 * what would mend it.
 */
public final class YardageFindings {
  /** A width that would do is told rounded up to this (mm). */
  private static final double TOLD_STEP = 10;

  private final SizeRun run;
  private final YardageTable table;
  private final YardageRequest request;

  private YardageFindings(SizeRun run, YardageTable table, YardageRequest request) {
    this.run = run;
    this.table = table;
    this.request = request;
  }

  /** Worth a look, each piece and width once with its sizes; of a table of everything. */
  public static List<Finding> of(SizeRun run, YardageTable table) {
    return of(run, table, YardageRequest.everything());
  }

  /** The same of a table that was asked for so. */
  public static List<Finding> of(SizeRun run, YardageTable table, YardageRequest request) {
    return new YardageFindings(run, table, request).all();
  }

  /** Their sentences. */
  public static Messages messages() {
    return Messages.beside(YardageFindings.class, "yardage.properties");
  }

  /** Whether a finding says that the cloth of a row is too narrow for a piece of it. */
  public static boolean isOf(Finding finding, YardageRow row) {
    boolean ofFold =
        finding.code().equals("cloth-fold-too-narrow")
            && Argument.of(row.fold().word()).equals(finding.arguments().get("fold"));
    return (ofFold || finding.code().startsWith("cloth-too-narrow"))
        && finding.sizes().contains(row.size().name())
        && Argument.of(row.fabric().name()).equals(finding.arguments().get("fabric"))
        && Argument.sold(row.width()).equals(finding.arguments().get("width"));
  }

  /** On no fold where it is single; the fold matters only where single cloth would do. */
  private record Narrow(Fabric fabric, double width, Fold fold, String piece) {}

  private List<Finding> all() {
    List<Finding> findings = new ArrayList<>(table.findings());
    List<Fabric> asked =
        run.pattern().fabrics().stream()
            .filter(each -> request.fabrics().isEmpty() || request.fabrics().contains(each.name()))
            .toList();
    List<Fabric> uncut = asked.stream().filter(fabric -> !isCut(fabric)).toList();
    uncut.forEach(
        fabric ->
            findings.add(
                Finding.warn("cloth-unused", fabric.name())
                    .with("fabric", fabric.name())
                    .at(fabric.origin())
                    .build()));
    if (table.rows().isEmpty() && uncut.size() < asked.size()) {
      findings.add(Finding.warn("cloth-nothing-laid", run.pattern().details().title()).build());
    }
    Map<Narrow, Map<String, Misfit>> narrow = new LinkedHashMap<>();
    for (YardageRow row : table.rows()) {
      for (Misfit misfit : row.misfits()) {
        onFold(row, misfit)
            .ifPresent(
                fold ->
                    narrow
                        .computeIfAbsent(
                            new Narrow(row.fabric(), row.width(), fold, misfit.piece()),
                            unused -> new LinkedHashMap<>())
                        .put(row.size().name(), misfit));
      }
    }
    narrow.forEach((where, sizes) -> findings.add(finding(where, sizes)));
    run.pattern().fabrics().forEach(fabric -> addClashes(fabric, findings));
    run.pattern().fabrics().forEach(fabric -> addPartings(fabric, findings));
    return findings;
  }

  private boolean isCut(Fabric fabric) {
    return run.pattern().pieces().stream()
        .flatMap(card -> card.cuts().stream())
        .anyMatch(cut -> cut.fabric().equals(fabric.name()));
  }

  /** Where a misfit is to be told: as on single cloth, on its fold, or not at all. */
  private Optional<Fold> onFold(YardageRow row, Misfit misfit) {
    if (row.fold() == Fold.SINGLE || misfit.across() > room(row.width()) + Tolerance.DRAWN_LENGTH) {
      return Optional.of(Fold.SINGLE);
    }
    return request.folds().contains(Fold.SINGLE) ? Optional.empty() : Optional.of(row.fold());
  }

  /** How much there is between the selvedges of a width as sold (mm). */
  private double room(double width) {
    return request.settings().usable(width * (1 - request.shrinkAcross()));
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
                    .with("apart", range(sizes))
                    .at(fabric.origin())
                    .build()));
    for (String notch : fabric.repeat().map(Fabric.Repeat::matched).orElse(List.of())) {
      boolean met = run.sizes().stream().anyMatch(sized -> isMet(sized, fabric, notch));
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

  /** Less than this (mm) beside each other bars are not seen to part; no source. */
  private static final double SEEN = 3;

  private record Parting(String seam, String notch, String piece, String mate) {}

  /** Matched notches beside which the bars part, since one edge slants more than the other. */
  private void addPartings(Fabric fabric, List<Finding> findings) {
    Optional<Fabric.Repeat> repeat = fabric.repeat().filter(own -> own.along().isPresent());
    Map<Parting, Map<String, Double>> parted = new LinkedHashMap<>();
    for (SizedPattern sized : run.sizes()) {
      for (BarsApart bars :
          BarsApart.of(sized, repeat.map(Fabric.Repeat::matched).orElse(List.of()))) {
        boolean here =
            isCutFrom(sized, fabric, bars.piece()) && isCutFrom(sized, fabric, bars.mate());
        if (here && bars.most() > SEEN) {
          parted
              .computeIfAbsent(
                  new Parting(bars.seam(), bars.notch(), bars.piece(), bars.mate()),
                  unused -> new LinkedHashMap<>())
              .put(sized.size().name(), bars.most());
        }
      }
    }
    parted.forEach(
        (where, sizes) ->
            findings.add(
                Finding.ok("cloth-bars-part", where.piece())
                    .sizes(List.copyOf(sizes.keySet()))
                    .with("piece", where.piece())
                    .with("mate", where.mate())
                    .with("notch", where.notch())
                    .with("seam", where.seam())
                    .with("fabric", fabric.name())
                    .with("apart", Argument.of(Quantity.length(Collections.max(sizes.values()))))
                    .at(fabric.origin())
                    .build()));
  }

  private static Argument.Range range(Map<String, Double> sizes) {
    return new Argument.Range(
        Quantity.length(Collections.min(sizes.values())),
        Quantity.length(Collections.max(sizes.values())));
  }

  private static String apart(Fabric fabric, Apart where) {
    if (!where.across()) {
      return "cloth-match-apart";
    }
    return fabric.liesFolded() ? "cloth-match-apart-across" : "cloth-match-apart-round";
  }

  /** Whether two copies of a fabric have a notch of that name, or a seam gives it a mate. */
  private static boolean isMet(SizedPattern sized, Fabric fabric, String notch) {
    return copies(sized, fabric, notch) > 1
        || MatchedPair.of(sized, List.of(notch)).stream()
            .anyMatch(
                pair ->
                    isCutFrom(sized, fabric, pair.one().piece())
                        && isCutFrom(sized, fabric, pair.other().piece()));
  }

  private static boolean isCutFrom(SizedPattern sized, Fabric fabric, String piece) {
    return sized.piece(piece).stream()
        .flatMap(found -> found.card().cuts().stream())
        .anyMatch(cut -> cut.fabric().equals(fabric.name()));
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
    boolean single = where.fold() == Fold.SINGLE;
    double room = single ? room(where.width()) : sizes.values().iterator().next().room();
    List<Cuttable> cuttables = cuttables(where, List.copyOf(sizes.keySet()));
    boolean inParts = cuttables.stream().anyMatch(each -> !each.splits().isEmpty());
    Optional<Double> takes = widthThatTakes(where, cuttables);
    String code =
        single
            ? "cloth-too-narrow" + (inParts ? "-split" : "") + (takes.isPresent() ? "" : "-ever")
            : "cloth-fold-too-narrow";
    Finding.Builder builder =
        Finding.warn(code, where.piece())
            .sizes(List.copyOf(sizes.keySet()))
            .with("piece", where.piece())
            .with("fabric", where.fabric().name())
            .with("width", Argument.sold(where.width()))
            .with("fold", where.fold().word())
            .with("room", Argument.mm(room))
            .with("across", new Argument.Range(Quantity.length(least), Quantity.length(most)))
            .with("least", Argument.mm(leastWidth(cuttables)))
            .values(most, room, "mm");
    takes.ifPresent(width -> builder.with("widest", Argument.sold(width)));
    run.pattern().pieces().stream()
        .filter(card -> card.name().equals(where.piece()))
        .map(PieceCard::origin)
        .findFirst()
        .ifPresent(builder::at);
    return builder.build();
  }

  /** What is cut of a fabric for one piece in some sizes. */
  private List<Cuttable> cuttables(Narrow where, List<String> sizes) {
    List<Cuttable> all = new ArrayList<>();
    for (String size : sizes) {
      run.size(size)
          .flatMap(sized -> sized.piece(where.piece()))
          .ifPresent(
              piece -> {
                for (int cut = 0; cut < piece.card().cuts().size(); cut++) {
                  if (piece.card().cuts().get(cut).fabric().equals(where.fabric().name())) {
                    Cuttable.of(piece, cut, "", request.settings().gap()).ifPresent(all::add);
                  }
                }
              });
    }
    return all;
  }

  /** The narrowest width (mm) that takes all of them, whole or in parts; rounded up. */
  private double leastWidth(List<Cuttable> cuttables) {
    double across = cuttables.stream().mapToDouble(Cuttable::leastAcross).max().orElse(0);
    double width = (across + 2 * request.settings().selvedge()) / (1 - request.shrinkAcross());
    return Math.ceil((width - Tolerance.DRAWN_LENGTH) / TOLD_STEP) * TOLD_STEP;
  }

  /**
   * The narrowest width that the fabric is sold in, or that was asked about, which has room for
   * them, whole or in parts.
   */
  private Optional<Double> widthThatTakes(Narrow where, List<Cuttable> cuttables) {
    return Stream.concat(where.fabric().widths().stream(), request.widths().stream())
        .distinct()
        .sorted()
        .filter(width -> width > where.width())
        .filter(
            width -> {
              ClothSheet flat =
                  ClothSheet.flat(width * (1 - request.shrinkAcross()), request.settings());
              return cuttables.stream().allMatch(each -> each.findsRoomOn(flat));
            })
        .findFirst();
  }
}
