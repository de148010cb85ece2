package org.hemwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hemwright.checks.CheckSettings;
import org.hemwright.checks.StandardChecks;
import org.hemwright.paper.LinesApartCheck;
import org.hemwright.paper.nest.WordsFitCheck;
import org.hemwright.pattern.Check;
import org.junit.jupiter.api.Test;

/**
 * {@code docs/checks.md} lists every check with its sentence, its limits, what it catches on the
 * fault benches and its tests, as they stand in the code; {@code -Dwrite.docs=true} writes it.
 */
class CheckListTest {
  private static final Path ROOT = Path.of("..");
  private static final Path PAGE = ROOT.resolve("docs/checks.md");
  private static final List<Check> CHECKS =
      Stream.concat(
              StandardChecks.with(CheckSettings.HANDBOOK).stream(),
              Stream.of(WordsFitCheck.USUAL, LinesApartCheck.USUAL))
          .toList();

  /** What a customer would find while sewing, and the checks that find it first. */
  private static final Map<String, List<Asked>> ASKED = asked();

  private record Asked(String question, List<String> checks) {}

  private static Asked asked(String question, String... checks) {
    return new Asked(question, List.of(checks));
  }

  private static Map<String, List<Asked>> asked() {
    Map<String, List<Asked>> all = new LinkedHashMap<>();
    all.put(
        "Sewing together",
        List.of(
            asked(
                "seam lengths walked between notches, with dart, pleat, ease and stretch accounted",
                "seam-length"),
            asked(
                "notch mates at equal distance, single and double told apart",
                "notch-mates",
                "seam-marks"),
            asked("quarter points of loops", "loop-marks", "making-marks"),
            asked("junctions that run through smoothly", "junction"),
            asked("square at folds and centres, no peak at a fold", "square-at-fold"),
            asked("allowances equal on both sides, wide enough to sew", "allowance-equal"),
            asked("their corners ending together", "allowance-ends"),
            asked("turned-back hems lying flat", "hem-flat"),
            asked("an allowance deeper than its curve allows", "allowance-drawn"),
            asked("hem and facing curves that must be eased, with the amount", "hem-ease"),
            asked("linings that end above the hem", "lining-hem"),
            asked("paired darts, their caps and marks", "dart", "intake-marks"),
            asked("sleeve cap against armhole, ease between which notches", "cap-ease"),
            asked(
                "band and cuff ratios against their openings, casings apart",
                "band-ratio",
                "elastic-casing"),
            asked("left with right, front with back, no copy twice", "seam-sides")));
    all.put(
        "Going on and staying on",
        List.of(
            asked(
                "girths at each body level, ease, the cloth's stretch across and along",
                "girth-ease"),
            asked(
                "the opening over the largest part it must pass, by the stiffest of cloth, band and"
                    + " seam",
                "opening-passes"),
            asked("slits as long as they are said to be", "closure-length"),
            asked(
                "elastic length cut, finished and stretched; casing depth against the elastic",
                "elastic-casing"),
            asked("rise against the body's rise", "rise")));
    all.put(
        "Grading",
        List.of(
            asked("order of every girth and length against the chart's own steps", "grade-order"),
            asked("evenness of every girth, length, point and mark", "grade-even"),
            asked(
                "lines that cross in the nest, curve character, corner angles that drift",
                "nest-alike",
                "grade-even"),
            asked("seams that match in the base size and part in others", "seam-length")));
    all.put(
        "Complete",
        List.of(
            asked(
                "every edge sewn, hemmed, finished, folded or declared raw",
                "edge-used",
                "making-edges"),
            asked("outlines that can be cut", "outline-simple"),
            asked("grain on every piece, alike across seams and on what is laid on", "grain"),
            asked("name, number, title", "label"),
            asked("count and cloth; cut count against what the seams use", "cut-count"),
            asked("each cloth used for what it is", "cloth-role"),
            asked("fold edges cut on the fold", "fold"),
            asked("stretch arrow on knits", "stretch-arrow"),
            asked("lengthen lines where the trade expects them", "lengthen"),
            asked("text that does not fit", "words-fit"),
            asked("lines too close to tell apart in print", "lines-apart"),
            asked("pieces wider than each cloth", "cloth-width", "split"),
            asked("views with all that is sewn to their pieces", "view-whole"),
            asked(
                "steps that can be followed",
                "making-order",
                "making-openings",
                "making-pressing",
                "making-stitches"),
            asked("stitches and needles that hand and machine can sew with", "stitch-settings")));
    all.put(
        "Size chart and wearers",
        List.of(
            asked(
                "steps that go backwards, columns used by no piece, slips of the pen, units,"
                    + " proportions outside the survey",
                "size-chart"),
            asked(
                "cautions for children's clothes",
                "child-cords",
                "child-small-parts",
                "child-sleepwear")));
    return all;
  }

  @Test
  void everyCheckIsListed() throws IOException {
    Set<String> listed = new LinkedHashSet<>();
    ASKED.values().forEach(rows -> rows.forEach(row -> listed.addAll(row.checks)));
    assertThat(CHECKS).extracting(Check::id).doesNotHaveDuplicates();
    assertThat(listed).containsExactlyInAnyOrderElementsOf(CHECKS.stream().map(Check::id).toList());

    String made = page();
    if (Boolean.getBoolean("write.docs")) {
      Files.writeString(PAGE, made);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(made);
  }

  private static String page() {
    Map<String, Set<String>> caught = new LinkedHashMap<>();
    for (String bench : List.of("fault-bench.md", "fault-bench-documents.md", "step-bench.md")) {
      for (String line : read(ROOT.resolve("docs").resolve(bench)).split("\n", -1)) {
        String[] cells = line.split(" \\| ", -1);
        if (cells.length > 2 && cells[1].contains("`")) {
          for (String id : cells[1].replace("`", "").split(", ", -1)) {
            caught.computeIfAbsent(id, key -> new LinkedHashSet<>()).add(cells[0].substring(2));
          }
        }
      }
    }
    StringBuilder page =
        new StringBuilder(
            """
            # The checks

            What `check` asks, in every size. Lengths of limits are millimetres, angles degrees, shares parts of
            one; where each comes from is said in `SewingLimits`, `WearLimits`, `GradeLimits`, `MakingLimits` and
            `ChildLimits`. What each catches is planted on [the fault bench](fault-bench.md), [that of documents
            and charts](fault-bench-documents.md) and [that of steps](step-bench.md). This page is written and
            held by `CheckListTest` (`-Dwrite.docs=true`).

            ## What is asked, and by which check
            """);
    ASKED.forEach(
        (group, rows) -> {
          page.append("\n**").append(group).append("**\n\n| asked | checks |\n| --- | --- |\n");
          rows.forEach(
              row ->
                  page.append("| ")
                      .append(row.question)
                      .append(" | ")
                      .append(
                          String.join(", ", row.checks.stream().map(CheckListTest::code).toList()))
                      .append(" |\n"));
        });
    page.append("\n## The checks one by one\n");
    for (Check check : CHECKS) {
      String name = check.getClass().getSimpleName();
      Path source = source(name);
      String text = read(source);
      page.append("\n### `").append(check.id()).append("`\n\n").append(sentence(check, text));
      page.append("\n\n- Class: `").append(name).append("`");
      List<String> limits = limits(name, text);
      if (!limits.isEmpty()) {
        page.append("\n- Limits: ").append(String.join("; ", limits));
      }
      Set<String> faults = caught.getOrDefault(check.id(), Set.of());
      if (!faults.isEmpty()) {
        page.append("\n- Catches on the benches: ").append(String.join("; ", faults));
      }
      Set<String> held = tests(check, name);
      assertThat(held).as("tests of " + check.id()).isNotEmpty();
      page.append("\n- Tests: ")
          .append(String.join(", ", held.stream().map(CheckListTest::code).toList()));
      page.append('\n');
    }
    return page.toString();
  }

  private static String code(String text) {
    return "`" + text + "`";
  }

  private static String read(Path path) {
    try {
      return Files.readString(path);
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private static Path source(String name) {
    for (String folder :
        List.of(
            "checks/src/main/java/org/hemwright/checks",
            "paper/src/main/java/org/hemwright/paper",
            "paper/src/main/java/org/hemwright/paper/nest")) {
      Path path = ROOT.resolve(folder).resolve(name + ".java");
      if (Files.exists(path)) {
        return path;
      }
    }
    throw new AssertionError("no source of " + name);
  }

  /** What its Javadoc says it asks; of the steps' checks the question of each. */
  private static String sentence(Check check, String text) {
    if (check.getClass().getSimpleName().equals("ConstructionCheck")) {
      String questions =
          read(
              ROOT.resolve(
                  "pattern/src/main/java/org/hemwright/pattern/construction/Trouble.java"));
      Matcher question =
          Pattern.compile("/\\*\\* ([^*]+?) \\*/\\s+[A-Z]+\\(\"" + check.id() + "\"\\)")
              .matcher(questions);
      assertThat(question.find()).as(check.id()).isTrue();
      return question.group(1);
    }
    int type =
        text.indexOf(
            check.getClass().getSimpleName() + (check.getClass().isRecord() ? "(" : " implements"));
    int start = text.lastIndexOf("/**", type);
    String doc = text.substring(start + 3, text.indexOf("*/", start));
    String plain =
        doc.replaceAll("\n \\* ?", " ")
            .replaceAll("@param.*", "")
            .replaceAll("\\{@(?:code|link) [^}]*?(\\w+)}", "$1")
            .replaceAll("<[^>]+>", "")
            .replaceAll("\\s+", " ")
            .strip();
    return plain;
  }

  private static final Pattern LIMIT =
      Pattern.compile(
          "settings\\s*(?:\\(\\))?\\s*\\.(sewing|wear|grade|making)\\(\\)\\s*\\.(\\w+)\\(\\)");

  /** The settings that its source reads, with their defaults. */
  private static List<String> limits(String name, String text) {
    List<String> limits = new ArrayList<>();
    Set<String> read = new TreeSet<>();
    Matcher limit = LIMIT.matcher(text);
    while (limit.find()) {
      read.add(limit.group(1) + "." + limit.group(2));
    }
    for (String each : read) {
      String[] part = each.split("\\.", -1);
      Record group = (Record) value(CheckSettings.HANDBOOK, part[0]);
      String shown = number(part[1], (double) value(group, part[1]));
      limits.add(code(each) + " " + shown);
    }
    if (name.startsWith("Child")) {
      limits.add("`ChildLimits`, by age and by height");
    }
    return limits;
  }

  private static Object value(Record record, String name) {
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      if (component.getName().equals(name)) {
        try {
          return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException trouble) {
          throw new LinkageError(trouble.getMessage(), trouble);
        }
      }
    }
    throw new AssertionError("no limit " + name);
  }

  private static String number(String name, double value) {
    boolean angle = Set.of("angleWarn", "angleFail", "grainApart", "arrowOff").contains(name);
    double shown = angle ? StrictMath.toDegrees(value) : value;
    String text = String.format(Locale.ROOT, "%.3f", shown).replaceAll("\\.?0+$", "");
    return angle ? text + "°" : text;
  }

  /** What finds where a check only tells. */
  private static final Map<String, String> TOLD_BY =
      Map.of("AllowanceDrawnCheck", "AddedAllowance.to(", "SplitCheck", "Divided.of(");

  /** The test classes that ask for it by its name. */
  private static Set<String> tests(Check check, String name) {
    Set<String> found = new TreeSet<>();
    for (String module : List.of("checks", "pattern", "draft", "workbench")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/test/java"))) {
        files
            .filter(path -> path.toString().endsWith(".java"))
            .filter(path -> !path.endsWith("CheckListTest.java"))
            .forEach(
                path -> {
                  String text = read(path);
                  boolean own = !module.equals("pattern") && !module.equals("draft");
                  if ((own && text.contains("\"" + check.id() + "\""))
                      || text.contains("new " + name + "(")
                      || text.contains(name + ".USUAL")
                      || text.contains(TOLD_BY.getOrDefault(name, "\0"))) {
                    found.add(path.getFileName().toString().replace(".java", ""));
                  }
                });
      } catch (IOException trouble) {
        throw new UncheckedIOException(trouble);
      }
    }
    return found;
  }
}
