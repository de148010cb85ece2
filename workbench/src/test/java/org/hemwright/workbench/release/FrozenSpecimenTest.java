package org.hemwright.workbench.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.exchange.run.SizeRunJson;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.out.Manifest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Releases of form 1 as they were frozen by 0.1.0, kept here byte for byte. Every later program
 * reads them: a test that fails here says that a version which somebody bought can be asked about
 * no more. The mend is a new number for the form and a reader for the old one, and never a new
 * specimen, once 0.1.0 is out.
 */
class FrozenSpecimenTest {
  private static final List<String> EXAMPLES = List.of("shingle-shirt", "brackish-skirt");
  private static final List<String> FILES =
      List.of(Release.FILE, Release.RUN, Manifest.FILE, "pattern.hem", "sizes.csv");

  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"shingle-shirt", "brackish-skirt"})
  void aReleaseOfFormOneIsReadWhole(String example) throws IOException {
    List<Finding> problems = new ArrayList<>();

    Release release = shelf(example).version("1.0", problems).orElseThrow();

    assertThat(problems).isEmpty();
    assertThat(release.run().sizes()).hasSize(2);
    assertThat(release.sources()).containsOnlyKeys("pattern.hem", "sizes.csv");
    assertThat(release.sources().get("pattern.hem")).isEqualTo(kept(example, "pattern.hem"));
  }

  /**
   * As long as form 1 is the form that is written, what was read is written again as it was:
   * nothing in the file was passed over.
   */
  @ParameterizedTest
  @ValueSource(strings = {"shingle-shirt", "brackish-skirt"})
  void nothingInTheRunIsPassedOver(String example) {
    byte[] bytes = kept(example, Release.RUN);
    SizeRun run = SizeRunJson.read(Release.RUN, bytes).run().orElseThrow();
    if (SizeRunJson.FORM == 1) {
      assertThat(SizeRunJson.write(run)).isEqualTo(bytes);
    }
  }

  /** How far round a piece is (mm), as the program of then told; the file's, so it never moves. */
  @ParameterizedTest
  @CsvSource({
    "shingle-shirt, 86, left_front, 1856.9533",
    "shingle-shirt, 130, sleeve, 1863.4432",
    "shingle-shirt, 130, collar, 617.3864",
    "brackish-skirt, 2P, front, 1545.3559",
    "brackish-skirt, 24P, back_lining, 1588.1686"
  })
  void theAnswersAreThoseOfThen(String example, String size, String piece, double round) {
    SizeRun run = SizeRunJson.read(Release.RUN, kept(example, Release.RUN)).run().orElseThrow();
    Piece drawn =
        run.size(size).orElseThrow().pieces().stream()
            .filter(each -> each.card().name().equals(piece))
            .findFirst()
            .orElseThrow();
    assertThat(round(drawn)).isCloseTo(round, within(0.001));
  }

  @Test
  void oneAlteredNumberIsTold() throws IOException {
    ReleaseShelf shelf = shelf("shingle-shirt");
    Path run = folder.resolve("1.0").resolve(Release.RUN);
    Files.writeString(run, Files.readString(run).replaceFirst("1(?=\\d+\\.)", "2"));
    List<Finding> problems = new ArrayList<>();
    assertThat(shelf.version("1.0", problems)).isEmpty();
    assertThat(problems).extracting(Finding::code).containsExactly("release-broken");
  }

  private static double round(Piece piece) {
    return piece.edges().stream().mapToDouble(edge -> edge.path().length()).sum();
  }

  private ReleaseShelf shelf(String example) throws IOException {
    Path release = Files.createDirectories(folder.resolve("1.0"));
    for (String file : FILES) {
      Files.write(release.resolve(file), kept(example, file));
    }
    return new ReleaseShelf(folder);
  }

  private static byte[] kept(String example, String file) {
    String name = "frozen-1/" + example + "/" + file;
    try (InputStream in = FrozenSpecimenTest.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is not among the test's files");
      }
      return in.readAllBytes();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** How the specimens were frozen: two sizes of each example, in a folder for each. */
  public static void main(String[] args) throws IOException {
    for (String example : EXAMPLES) {
      Evaluated evaluated = Workbench.evaluate(new PackedFolder(example));
      SizeRun whole = evaluated.run().orElseThrow();
      List<SizedPattern> two = List.of(whole.sizes().get(1), whole.sizes().get(12));
      SizeRun run = new SizeRun(whole.pattern(), two);
      SortedMap<String, byte[]> sources = new TreeMap<>(evaluated.sources());
      sources.keySet().removeIf(name -> !FILES.contains(name));
      Manifest manifest =
          new Manifest(
              whole.pattern().details().title(),
              whole.pattern().details().version(),
              whole.pattern().details().dated().toString(),
              "0.1.0",
              Map.of("sizes", two.size()),
              List.of(),
              sources);
      Path frozen = new ReleaseShelf(Path.of(args[0], example)).freeze(run, manifest, sources);
      System.out.println(frozen);
      for (SizedPattern sized : two) {
        for (Piece piece : sized.pieces()) {
          System.out.printf(
              "%s, %s, %s, %.4f%n",
              example, sized.size().name(), piece.card().name(), round(piece));
        }
      }
    }
  }
}
