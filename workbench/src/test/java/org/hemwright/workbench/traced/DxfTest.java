package org.hemwright.workbench.traced;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.hemwright.draft.Drafted;
import org.hemwright.draft.Drafting;
import org.hemwright.exchange.drawing.ReadDrawing;
import org.hemwright.exchange.dxf.DxfFile;
import org.hemwright.exchange.dxf.DxfReader;
import org.hemwright.exchange.dxf.DxfWriter;
import org.hemwright.exchange.dxf.RuleFile;
import org.hemwright.exchange.rule.ReadRules;
import org.hemwright.geometry.Curve;
import org.hemwright.geometry.Point;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.AddedAllowance;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Notch;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.traced.TracedDrawing;
import org.hemwright.pattern.traced.TracedInputs;
import org.hemwright.pattern.traced.TracedLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * DXF as the handbook's section 9 describes it: out and in again every point within 0.01 mm, and
 * read by ezdxf, a library that others wrote.
 */
class DxfTest {
  private static final double TRUE = 0.01;

  private static DxfFile file(SizeRun run, String ending) {
    return DxfWriter.write(run).files().stream()
        .filter(each -> each.name().endsWith(ending))
        .findFirst()
        .orElseThrow();
  }

  private static TracedDrawing read(DxfFile file) {
    ReadDrawing read = DxfReader.read(file.name(), file.bytes());
    assertThat(read.findings()).isEmpty();
    return read.drawing().orElseThrow();
  }

  private static TracedLine only(TracedDrawing drawing, String name) {
    assertThat(drawing.called(name)).as(name).hasSize(1);
    return drawing.called(name).get(0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"eddy-skirt", "marram-trousers", "inlet-tee"})
  void outAndInAgainEveryPointIsKept(String example) {
    SizeRun run = Examples.run(example);
    TracedDrawing drawing = read(file(run, "-all-sizes.dxf"));
    assertThat(drawing.inTrueSize()).isTrue();
    for (SizedPattern sized : run.sizes()) {
      for (Piece piece : sized.pieces()) {
        String block = piece.name() + "-" + sized.size().name();
        same(drawing, block + " sew lines", piece.stitchLine().path());
        same(
            drawing,
            block + " boundary",
            AddedAllowance.to(piece).cutLine().orElseThrow().outline().path());
        for (Mark.Drill drill : piece.marks(Mark.Drill.class)) {
          assertThat(drawing.called(block + " drill holes"))
              .anyMatch(dot -> dot.middle().distanceTo(drill.at()) < TRUE);
        }
        int notches =
            piece.notches().stream()
                .mapToInt(notch -> notch.kind() == Notch.Kind.SINGLE ? 1 : 2)
                .sum();
        assertThat(drawing.called(block + " notches")).hasSizeBetween(notches / 2, notches);
        piece
            .grain()
            .ifPresent(
                grain -> {
                  org.hemwright.geometry.Path line = only(drawing, block + " grain line").path();
                  assertThat(line.start().distanceTo(grain.from())).isLessThan(TRUE);
                  assertThat(line.end().distanceTo(grain.to())).isLessThan(TRUE);
                });
      }
    }
  }

  private static void same(TracedDrawing drawing, String name, org.hemwright.geometry.Path truth) {
    org.hemwright.geometry.Path read = only(drawing, name).path();
    assertThat(read.isClosed()).as(name).isTrue();
    for (Curve stretch : read.curves()) {
      Point corner = stretch.start();
      assertThat(truth.nearest(corner).point().distanceTo(corner)).as(name).isLessThan(TRUE);
    }
    for (Curve curve : truth.curves()) {
      assertThat(read.nearest(curve.start()).point().distanceTo(curve.start()))
          .as(name)
          .isLessThan(TRUE);
    }
  }

  /** The trousers, out as DXF with rules and in again as traced pieces: corners in every size. */
  @Test
  void aGarmentComesBackWithItsRules() {
    SizeRun run = Examples.run("marram-trousers");
    DxfFile rul = file(run, ".rul");
    ReadRules rules = RuleFile.read("rules.rul", rul.bytes());
    assertThat(rules.findings()).isEmpty();
    TracedInputs inputs =
        new TracedInputs(
            new TreeMap<>(Map.of("traced/all.dxf", Optional.of(read(file(run, "1.0.dxf"))))),
            new TreeMap<>(Map.of("rules.rul", rules.table())));
    String document =
        """
        language 1
        pattern "Back again"
        version 1.0
        dated 2026-11-25
        by "Tern Cove Patterns"
        sizes from "sizes.csv" base 14

        fabric main woven
          widths 150 cm

        piece front traced "traced/all.dxf" as "Front" number 1
          cut 2 of main, mirrored
          outline traced "front sew lines" from the top left clockwise, edges waist, centre, crotch, inseam, hem, outseam
          allowance 1/2 in, hem 1 1/4 in turned back
          notch outseam traced "front notches"
          grain traced "front grain line"
          grade from "rules.rul"
        """;
    Drafted traced = Drafting.draft("pattern.hem", document, run.pattern().chart(), inputs);
    assertThat(traced.findings()).isEmpty();
    for (SizedPattern sized : traced.run().orElseThrow().sizes()) {
      Piece own = sized.piece("front").orElseThrow();
      Piece truth = run.size(sized.size().name()).orElseThrow().piece("front").orElseThrow();
      for (var corner : truth.corners()) {
        assertThat(own.corners())
            .as("%s in %s", corner.before(), sized.size().name())
            .anyMatch(each -> each.point().distanceTo(corner.point()) < TRUE);
      }
      assertThat(own.notches()).isNotEmpty();
    }
  }

  @Test
  void theSameRunGivesTheSameBytes() {
    SizeRun run = Examples.run("eddy-skirt");
    List<DxfFile> once = DxfWriter.write(run).files();
    List<DxfFile> again = DxfWriter.write(run).files();
    for (int i = 0; i < once.size(); i++) {
      assertThat(again.get(i).bytes()).isEqualTo(once.get(i).bytes());
    }
  }

  /** Counts and places as ezdxf tells them; {@code python3-ezdxf} of Debian. */
  @Test
  void ezdxfReadsIt(@TempDir Path folder) throws IOException, InterruptedException {
    assumeTrue(
        Files.isExecutable(Path.of("/usr/bin/python3")) && said("import ezdxf", folder).isPresent(),
        "python3-ezdxf is not installed");
    SizeRun run = Examples.run("inlet-tee");
    DxfFile file = file(run, "1.0.dxf");
    Files.write(folder.resolve("tee.dxf"), file.bytes());
    String script =
        """
        import ezdxf
        doc = ezdxf.readfile("tee.dxf")
        errors = len(doc.audit().errors)
        print("errors", errors)
        for insert in doc.modelspace().query("INSERT"):
            block = doc.blocks.get(insert.dxf.name)
            for line in block.query("POLYLINE"):
                if line.dxf.layer == "14":
                    points = [v.dxf.location for v in line.vertices]
                    print(insert.dxf.name, len(points), line.is_closed,
                          round(points[0].x, 4), round(points[0].y, 4))
        """;
    String told = said(script, folder).orElseThrow();
    assertThat(told).contains("errors 0");
    SizedPattern base = run.size(run.pattern().base().name()).orElseThrow();
    for (Piece piece : base.pieces()) {
      String line =
          told.lines()
              .filter(each -> each.startsWith(piece.name() + " "))
              .findFirst()
              .orElseThrow();
      String[] parts = line.split(" ", -1);
      assertThat(parts[2]).isEqualTo("True");
      Point start = piece.stitchLine().path().start();
      assertThat(
              new Point(Double.parseDouble(parts[3]), Double.parseDouble(parts[4]))
                  .distanceTo(start))
          .isLessThan(TRUE);
    }
  }

  private static Optional<String> said(String script, Path folder)
      throws IOException, InterruptedException {
    Process process =
        new ProcessBuilder("/usr/bin/python3", "-c", script)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    return process.waitFor() == 0 ? Optional.of(said) : Optional.empty();
  }

  /** Halves of a mirror line, inches in the words, a polyline that repeats its first point. */
  @Test
  void filesOfOthersAreReadAsTheyAre() {
    String dxf =
        """
        0
        SECTION
        2
        BLOCKS
        0
        BLOCK
        2
        BACK
        0
        LWPOLYLINE
        8
        1
        70
        0
        10
        0
        20
        0
        10
        1
        20
        0
        10
        1
        20
        2
        10
        0
        20
        0
        0
        SPLINE
        8
        8
        0
        TEXT
        8
        1
        1
        UNITS : ENGLISH
        0
        TEXT
        8
        2
        10
        1
        20
        2
        1
        #12
        0
        ENDBLK
        0
        ENDSEC
        0
        EOF
        """;
    ReadDrawing read = DxfReader.read("back.dxf", dxf.getBytes(StandardCharsets.US_ASCII));
    assertThat(read.findings()).extracting("code").containsExactly("dxf-unread");
    TracedDrawing drawing = read.drawing().orElseThrow();
    assertThat(only(drawing, "BACK boundary").path().isClosed()).isTrue();
    assertThat(only(drawing, "BACK # 12").middle().distanceTo(new Point(25.4, 50.8)))
        .isLessThan(1e-9);
    assertThat(drawing.unread()).contains("1 spline");
    for (String broken : List.of("", "0\nSECTION", "AutoCAD Binary DXF", "x\ny\n")) {
      assertThat(DxfReader.read("a.dxf", broken.getBytes(StandardCharsets.US_ASCII)).findings())
          .isNotEmpty();
    }
  }
}
