package org.hemwright.checks;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.pattern.Acceptance;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeRange;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.NearName;
import org.hemwright.pattern.finding.Status;

/**
 * Holds what the checks of a size run found against what the designer accepts. An accepted finding
 * keeps its words and its place; its status and her reason tell it apart.
 */
public final class Acceptances {
  /** The name under which a report tells of acceptances that no longer apply. */
  public static final String ID = "acceptance";

  private final SizeRun run;

  private Acceptances(SizeRun run) {
    this.run = run;
  }

  /** What the pattern of this run accepts. */
  public static Acceptances of(SizeRun run) {
    return new Acceptances(run);
  }

  /**
   * The findings of one check, those accepted marked so. A finding that is accepted in some of its
   * sizes only becomes two.
   *
   * @param check the check's name
   * @param findings as the check gives them, before or after sizes are grouped
   */
  public List<Finding> judged(String check, List<Finding> findings) {
    List<Finding> judged = new ArrayList<>();
    for (Finding finding : findings) {
      Finding left = finding;
      boolean all = false;
      for (Acceptance acceptance : run.pattern().acceptances()) {
        if (all || !open(left) || !acceptance.isAbout(check, left)) {
          continue;
        }
        List<String> covered = covered(acceptance, left);
        if (covered.isEmpty() && !(left.sizes().isEmpty() && acceptance.sizes().isEmpty())) {
          continue;
        }
        judged.add(left.in(covered).accepted(acceptance.reason()));
        List<String> others =
            left.sizes().stream().filter(size -> !covered.contains(size)).toList();
        all = others.isEmpty();
        left = left.in(others);
      }
      if (!all) {
        judged.add(left);
      }
    }
    return List.copyOf(judged);
  }

  private static boolean open(Finding finding) {
    return finding.status() == Status.WARN || finding.status() == Status.FAIL;
  }

  private List<String> covered(Acceptance acceptance, Finding finding) {
    return finding.sizes().stream()
        .filter(name -> acceptance.sizes().isEmpty() || in(acceptance.sizes().get(), name))
        .toList();
  }

  private boolean in(SizeRange range, String name) {
    return run.pattern().chart().size(name).filter(range::contains).isPresent();
  }

  /**
   * The acceptances that no finding answers to, and those that name no check. Only those are judged
   * whose sizes are all in the run.
   *
   * @param found what each check that ran found, by its name
   */
  public List<Finding> idle(Map<String, List<Finding>> found) {
    List<Finding> idle = new ArrayList<>();
    Set<String> checks = new LinkedHashSet<>(found.keySet());
    found.values().forEach(each -> each.forEach(finding -> checks.add(finding.code())));
    for (Acceptance acceptance : run.pattern().acceptances()) {
      if (whole(acceptance) && found.entrySet().stream().noneMatch(e -> meets(acceptance, e))) {
        boolean known = checks.contains(acceptance.check());
        idle.add(known ? unmet(acceptance, found) : unknown(acceptance, found));
      }
    }
    return List.copyOf(idle);
  }

  private boolean meets(Acceptance acceptance, Map.Entry<String, List<Finding>> check) {
    return check.getValue().stream()
        .filter(finding -> finding.status() != Status.OK)
        .filter(finding -> acceptance.isAbout(check.getKey(), finding))
        .anyMatch(
            finding ->
                finding.sizes().isEmpty()
                    ? acceptance.sizes().isEmpty()
                    : !covered(acceptance, finding).isEmpty());
  }

  private boolean whole(Acceptance acceptance) {
    return run.pattern().chart().sizes().stream()
        .filter(size -> acceptance.sizes().filter(range -> !range.contains(size)).isEmpty())
        .map(Size::name)
        .allMatch(name -> run.size(name).isPresent());
  }

  private static Finding unmet(Acceptance acceptance, Map<String, List<Finding>> found) {
    Set<String> others = new LinkedHashSet<>();
    found.forEach(
        (check, findings) ->
            findings.stream()
                .filter(Acceptances::open)
                .filter(
                    finding ->
                        acceptance.check().equals(check)
                            || acceptance.check().equals(finding.code()))
                .forEach(finding -> others.add(finding.subject())));
    Finding.Builder finding = finding("accept-unmet", acceptance);
    if (!others.isEmpty()) {
      finding.with("others", Argument.of(List.copyOf(others)));
    }
    return finding.build();
  }

  private static Finding unknown(Acceptance acceptance, Map<String, List<Finding>> found) {
    List<String> ids = List.copyOf(new LinkedHashMap<>(found).keySet());
    Finding.Builder finding = finding("accept-unknown-check", acceptance);
    Optional<String> near = NearName.to(acceptance.check(), ids);
    near.ifPresent(name -> finding.with("near", name));
    return finding.with("checks", Argument.of(ids)).build();
  }

  private static Finding.Builder finding(String code, Acceptance acceptance) {
    Finding.Builder finding =
        Finding.warn(code, acceptance.subject())
            .with("check", acceptance.check())
            .with("reason", acceptance.reason())
            .at(acceptance.origin());
    acceptance
        .sizes()
        .ifPresent(
            range -> finding.with("from", range.first().name()).with("to", range.last().name()));
    return finding;
  }

  /**
   * The line of the document that would accept a finding, her reason left open.
   *
   * @param check the name of the check that found it
   */
  public static String line(String check, Finding finding) {
    boolean plain = finding.subject().matches("[A-Za-z][A-Za-z0-9_. ]*");
    String subject = plain ? finding.subject() : '"' + finding.subject() + '"';
    return "accept " + check + " on " + subject + " because \"\"";
  }
}
