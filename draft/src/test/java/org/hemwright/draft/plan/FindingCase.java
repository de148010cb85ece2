package org.hemwright.draft.plan;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.hemwright.draft.Charts;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Wording;

/**
 * A few lines of a document and what is told of them, from a text file: {@code === code}, the
 * lines, {@code ---}, and each finding as {@code line:column: what is so; what would mend it}.
 * Lines are counted from the first after {@code ===}; the headings stand before them.
 *
 * @param name the code that the case is about, and what sets it apart
 */
record FindingCase(String name, String lines, List<String> expected) {
  static final SizeChart CHART =
      Charts.of(
          """
          size,waist (cm),hip (cm),hip depth (cm),arm (cm)
          8,66,92,19.5,26
          10,70,96,19.8,27
          12,74,100,20,28
          14,78,104,20.2,
          16,82,108,20.4,30
          18,88,114,20.6,31
          20,94,120,20.8,32
          22,100,126,21,33
          24,106,132,21.2,34
          26,112,138,21.4,
          """);

  /** What the line {@code @garment} stands for; its lines count with the headings. */
  static final String GARMENT =
      """
      piece panel "Panel" number 1
        cut 2 of main, on the fold
        copies front, back
        rectangle 30 cm by 60 cm, edges hem, side, waist, centre
        fold centre
        allowance 1 cm, hem 2 cm turned back
        grain along centre
      piece band "Band" number 2
        cut 1 of main
        rectangle 120 cm by 8 cm, edges lower, end_right, upper, end_left
        point fold_left on end_left at 50% from start
        point fold_right on end_right at 50% from start
        inner fold_line is fold_left to fold_right
        allowance 1 cm
        grain up
      piece lost "Pocket" number 3
        cut 1 of main
        rectangle 12 cm by 12 cm, edges edge, right, top, left
        allowance 1 cm
        grain up
      seam side_seams panel.side with panel.side
      seam band_ring band.end_right with band.end_left
      seam band_fold band.lower with band.upper
      seam waist_seam band.lower with every panel.waist, quarters at sides and centres
      elastic waist_elastic in band, width 3 cm, length 90% of waist, overlap 2 cm
      view A "Skirt"
        pieces panel, band
      view B "Pocket alone"
        pieces lost
      """;

  private static final String GARMENT_LINE = "@garment\n";

  static final String HEADINGS =
      """
      language 1
      pattern "Test"
      version 1.0
      dated 2026-11-25
      by "Tern Cove Patterns"
      sizes from "sizes.csv" base 14
      fabric main knit "Jersey"
        widths 115 cm, 150 cm
      """;

  /** The cases of a file that lies beside this class. */
  static List<FindingCase> in(String file) {
    try (InputStream stream = FindingCase.class.getResourceAsStream(file)) {
      if (stream == null) {
        throw new IllegalArgumentException(file);
      }
      return read(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }

  private static List<FindingCase> read(String text) {
    List<FindingCase> cases = new ArrayList<>();
    String name = "";
    StringBuilder lines = new StringBuilder();
    List<String> expected = new ArrayList<>();
    boolean told = false;
    for (String line : (text + "\n=== end").lines().toList()) {
      if (line.startsWith("=== ")) {
        if (!name.isEmpty()) {
          cases.add(new FindingCase(name, lines.toString(), List.copyOf(expected)));
        }
        name = line.substring(4);
        lines.setLength(0);
        expected.clear();
        told = false;
      } else if (line.equals("---")) {
        told = true;
      } else if (told && !line.isBlank()) {
        expected.add(line);
      } else if (!told) {
        lines.append(line).append('\n');
      }
    }
    return cases;
  }

  /** The code that the case is about. */
  String code() {
    return name.replaceAll(" .*", "");
  }

  private String before() {
    return lines.startsWith(GARMENT_LINE) ? HEADINGS + GARMENT : HEADINGS;
  }

  private String own() {
    return lines.startsWith(GARMENT_LINE) ? lines.substring(GARMENT_LINE.length()) : lines;
  }

  /** What is found. */
  List<Finding> found() {
    Drafted drafted = Drafting.draft("p", before() + own(), CHART, TracedSketch.INPUTS);
    return drafted.findings();
  }

  /** What is told. */
  List<String> told() {
    Wording wording =
        Wording.of(Drafting.messages(), Wording.patternMessages())
            .overSizes(CHART.sizes().stream().map(Size::name).toList());
    int before = (int) before().lines().count();
    return found().stream()
        .map(
            finding -> {
              String place =
                  finding
                      .origin()
                      .map(origin -> (origin.line() - before) + ":" + origin.column() + ": ")
                      .orElse("");
              return place + wording.message(finding) + " " + wording.mend(finding);
            })
        .toList();
  }

  @Override
  public String toString() {
    return name;
  }
}
