package org.hemwright.checks.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hemwright.checks.CheckSettings;
import org.hemwright.checks.StandardChecks;
import org.hemwright.checks.bench.BenchPage;
import org.hemwright.checks.bench.BenchRow;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Status;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every fault, planted at every place where it applies in three sizes of every example, is told by
 * the check that is meant for it, in the right size and about the right thing. Run with {@code
 * -Dwrite.docs=true} the test writes {@code docs/fault-bench.md}; without, it holds it.
 */
@Tag("whole")
class FaultBenchTest {
  private static final List<Check> CHECKS = StandardChecks.with(CheckSettings.HANDBOOK);

  /** One planted fault in so many is shown to all the checks, in all sizes. */
  private static final int SAMPLE = 101;

  private static final BenchPage PAGE =
      new BenchPage(
          "fault-bench.md",
          FaultBenchTest.class,
          "Faults",
          """
          # The fault bench

          Each fault is planted in every example, at every place where it applies, in the smallest, a middle
          and the largest size (or in all sizes, where it says so), one at a time. It counts as caught when the
          check that is meant for it tells it in that size and about that piece, edge or seam, and in no other
          size.
          """,
          Map.of());

  @Test
  void everyFaultIsToldByTheCheckMeantForIt() throws IOException {
    List<BenchRow> rows = new ArrayList<>();
    List<Garment> garments = Garment.all();
    for (Fault fault : Faults.ALL) {
      BenchRow row = new BenchRow(fault.words());
      for (Garment garment : garments) {
        for (Planted planted : fault.plant().apply(garment).toList()) {
          Set<String> told = isTold(fault, planted) ? Set.of(planted.check()) : Set.of();
          row.add(planted.where(), told);
        }
      }
      rows.add(row);
      if (Boolean.getBoolean("bench.show")) {
        System.out.println(row);
      }
    }
    PAGE.holds(rows);
  }

  private static boolean isTold(Fault fault, Planted planted) {
    SizeRun run = planted.run();
    SizeRun looked =
        fault.reach() == Fault.Reach.ALL_SIZES
            ? run
            : new SizeRun(run.pattern(), run.size(planted.sizes().get(0)).stream().toList());
    return CHECKS.stream()
        .filter(check -> check.id().equals(planted.check()))
        .flatMap(check -> check.check(looked).stream())
        .anyMatch(planted::isToldBy);
  }

  /** Among all the other findings of the whole run, too; and no other size is blamed. */
  @Test
  void aFaultIsToldWhereAllChecksRun() {
    int count = 0;
    for (Garment garment : Garment.all()) {
      for (Fault fault : Faults.ALL) {
        for (Planted planted : fault.plant().apply(garment).toList()) {
          if (count++ % SAMPLE == 0) {
            List<Finding> findings =
                CHECKS.stream()
                    .flatMap(check -> check.check(planted.run()).stream())
                    .filter(finding -> finding.status() != Status.OK)
                    .toList();
            assertThat(findings).as(planted.where()).anyMatch(planted::isToldBy);
            assertThat(findings)
                .as(planted.where())
                .allMatch(finding -> planted.sizes().containsAll(finding.sizes()));
          }
        }
      }
    }
  }
}
