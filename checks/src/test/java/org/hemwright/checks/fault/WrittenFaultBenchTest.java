package org.hemwright.checks.fault;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.hemwright.checks.CheckSettings;
import org.hemwright.checks.StandardChecks;
import org.hemwright.checks.bench.BenchPage;
import org.hemwright.checks.bench.BenchRow;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Slips of the pen, planted in the text of every example at every line where they apply, one at a
 * time: each is told by a check that is meant for it, and about its piece, seam, view or line. Run
 * with {@code -Dwrite.docs=true} the test writes {@code docs/fault-bench-documents.md}.
 */
@Tag("whole")
class WrittenFaultBenchTest {
  private static final List<Check> CHECKS = StandardChecks.with(CheckSettings.HANDBOOK);

  /** The documents that slips are planted in. */
  private static final Set<String> GARMENTS =
      Set.of("brackish-skirt", "eddy-skirt", "inlet-tee", "marram-trousers", "shingle-shirt");

  /** Slips that nothing can tell, and why. */
  private static final Map<String, String> REASONS =
      Map.ofEntries(
          Map.entry(
              "shingle-shirt line 328: seam back_yoke_seam     back.yoke with "
                  + "yoke.outer.back with yoke.inner.back reversed",
              "the edge is straight across the fold and alike from either end"),
          Map.entry(
              "shingle-shirt line 328: seam back_yoke_seam     back.yoke with "
                  + "yoke.outer.back reversed with yoke.inner.back",
              "the edge is straight across the fold and alike from either end"),
          Map.entry(
              "shingle-shirt line 348: seam left_cuff_ends     cuff.left_end to "
                  + "fold_left with cuff.left_end from fold_left",
              "both halves of the end are as long as each other, and the cuff is "
                  + "folded between them"),
          Map.entry(
              "shingle-shirt line 349: seam right_cuff_ends    cuff.right_end to "
                  + "fold_right with cuff.right_end from fold_right",
              "both halves of the end are as long as each other, and the cuff is "
                  + "folded between them"),
          Map.entry(
              "shingle-shirt line 48: let neck_width = 68.47 mm",
              "the collar follows the neckline, and no level of the document names " + "the neck"),
          Map.entry(
              "shingle-shirt line 260: allowance 6 mm, upper 1 cm then 6 mm turned "
                  + "back, left_end none, right_end none, lower none",
              "an edge that is sewn onto a line, not to another edge, may lie flat "
                  + "there without an allowance"),
          Map.entry(
              "marram-trousers line 60 left out: notch crotch at centre_hip",
              "the notch stands on both fronts alike and the seam between them is "
                  + "short enough without"),
          Map.entry(
              "inlet-tee line 128: let side_lift = -1.12 mm",
              "the solved number is the same to 0.1 mm in every size that uses it, "
                  + "and so is the seam"),
          Map.entry(
              "inlet-tee, shoulder (cm) in 44: 14.65 for 14.56",
              "0.9 mm in the last size: no tape tells it, and a chart may break there"),
          Map.entry(
              "inlet-tee, back width (cm) in 44: 48.52 for 48.25",
              "2.7 mm in the last size, whose step may be another"));

  private static final BenchPage PAGE =
      new BenchPage(
          "fault-bench-documents.md",
          WrittenFaultBenchTest.class,
          "Slips",
          """
          # The fault bench of documents and charts

          Each slip of the pen is planted in the text of five examples, or in their size charts, at every line or
          cell where it applies, one at a time; then the whole is read, drafted and checked in every size. It
          counts as caught when a check that is meant for it, or reading the document itself (`reading`), tells
          it about the piece, seam, view, line or cell that was changed. Slips that change nothing a maker would
          notice are not planted: a symmetrical piece no longer mirrored, a patch pocket cut the other way. What
          goes wrong in one size of the drafted pieces is planted in [the fault bench](fault-bench.md).
          """,
          REASONS);

  @Test
  void everySlipIsToldByACheckMeantForIt() throws IOException {
    List<BenchRow> rows = new ArrayList<>();
    List<Written> documents =
        Garment.all().stream()
            .filter(garment -> GARMENTS.contains(garment.name()))
            .filter(garment -> garment.name().matches(System.getProperty("bench.only", ".*")))
            .map(Written::of)
            .toList();
    for (Slip slip : Slips.ALL) {
      if (!slip.words().matches(System.getProperty("bench.rows", ".*"))) {
        continue;
      }
      BenchRow row = new BenchRow(slip.words());
      for (Written written : documents) {
        slip.plant().apply(written).forEach(fault -> add(row, written, fault));
      }
      rows.add(row);
      if (Boolean.getBoolean("bench.show")) {
        System.out.println(row + " " + row.survivors());
      }
    }
    rows.addAll(ChartFaults.rows(documents.stream().map(Written::garment).toList()));
    PAGE.holds(rows);
  }

  /** A change that leaves every piece, seam and elastic as it was is no fault. */
  private static void add(BenchRow row, Written written, WrittenFault fault) {
    Drafted drafted = Drafting.draft("pattern.hem", fault.text(), written.garment().chart());
    boolean same =
        drafted.findings().isEmpty()
            && drafted.run().filter(run -> isLike(run, written.garment().run())).isPresent();
    if (!same) {
      row.add(fault.where(), told(drafted, fault));
    }
  }

  private static boolean isLike(SizeRun one, SizeRun other) {
    for (int i = 0; i < one.sizes().size(); i++) {
      SizedPattern a = one.sizes().get(i);
      SizedPattern b = other.sizes().get(i);
      if (!a.seams().equals(b.seams())
          || !a.elastics().equals(b.elastics())
          || !a.pieces().equals(b.pieces())) {
        return false;
      }
    }
    return one.pattern().views().equals(other.pattern().views())
        && one.pattern().fabrics().equals(other.pattern().fabrics());
  }

  /** The checks that told it, of those that are meant for it. */
  private static Set<String> told(Drafted drafted, WrittenFault fault) {
    Set<String> told = new TreeSet<>();
    for (Finding finding : drafted.findings()) {
      if (fault.checks().contains(WrittenFault.READING) && finding.status() != Status.OK) {
        told.add(WrittenFault.READING);
      }
    }
    drafted
        .run()
        .ifPresent(
            run -> {
              for (Check check : CHECKS) {
                if (fault.checks().contains(check.id())
                    && check.check(run).stream().anyMatch(finding -> isAbout(finding, fault))) {
                  told.add(check.id());
                }
              }
            });
    return told;
  }

  private static boolean isAbout(Finding finding, WrittenFault fault) {
    boolean line = finding.origin().filter(place -> place.line() == fault.line()).isPresent();
    boolean named =
        Stream.concat(
                Stream.of(finding.subject()),
                finding.arguments().values().stream()
                    .filter(Argument.Text.class::isInstance)
                    .map(argument -> ((Argument.Text) argument).text()))
            .flatMap(text -> Arrays.stream(text.split("[. ]")))
            .anyMatch(fault.about()::contains);
    boolean names =
        finding.arguments().values().stream()
            .filter(Argument.Names.class::isInstance)
            .flatMap(argument -> ((Argument.Names) argument).names().stream())
            .anyMatch(fault.about()::contains);
    boolean sized = fault.sizes().isEmpty() || finding.sizes().equals(fault.sizes());
    return finding.status() != Status.OK && sized && (line || named || names);
  }
}
