package org.hemwright.workbench.traced;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.workbench.Evaluated;
import org.hemwright.workbench.Workbench;
import org.hemwright.workbench.folder.DiskFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guide's traced piece, in a folder on the disk: read, drafted and checked. */
class TracedGuideTest {
  private static String block(String kind) throws IOException {
    Matcher matcher =
        Pattern.compile("```" + kind + "\n(.*?)```", Pattern.DOTALL)
            .matcher(Files.readString(Path.of("..", "docs", "language.md")));
    assertThat(matcher.find()).as(kind).isTrue();
    return matcher.group(1);
  }

  private static Path folder(Path at) throws IOException {
    String whole = block("hem");
    String headings = whole.substring(0, whole.indexOf("\ndial ") + 1);
    Files.writeString(at.resolve("pattern.hem"), headings + "\n" + block("hem traced"));
    Files.writeString(at.resolve("sizes.csv"), block("csv"));
    Files.createDirectory(at.resolve("traced"));
    Files.writeString(at.resolve("traced/panel.svg"), block("svg"));
    return at;
  }

  @Test
  void theGuidesTracedPieceLivesAsAnyOther(@TempDir Path at) throws IOException {
    Evaluated evaluated = Workbench.evaluate(new DiskFolder(folder(at)));
    assertThat(evaluated.problems()).isEmpty();
    assertThat(evaluated.sources()).containsKey("traced/panel.svg");
    SizedPattern base = evaluated.run().orElseThrow().size("14").orElseThrow();
    Piece panel = base.piece("panel").orElseThrow();
    assertThat(panel.notches()).hasSize(1);
    assertThat(panel.marks(Mark.Placement.class)).hasSize(1);
    List<String> failing =
        Workbench.check(evaluated.run().orElseThrow()).stream()
            .filter(answer -> !answer.findings().isEmpty())
            .map(answer -> answer.id() + " " + answer.findings())
            .toList();
    assertThat(failing).isEmpty();
  }

  @Test
  void aDrawingIsReadFromItsFolderAndFromNowhereElse(@TempDir Path at) throws IOException {
    folder(at);
    DiskFolder folder = new DiskFolder(at);
    String text = Files.readString(at.resolve("pattern.hem"));
    for (String name :
        List.of("../panel.svg", "/etc/passwd", "traced/../../x.svg", "a/b/c.svg", ".x/a.svg")) {
      Files.writeString(at.resolve("pattern.hem"), text.replace("traced/panel.svg", name));
      assertThat(Workbench.evaluate(folder).problems())
          .as(name)
          .extracting("code")
          .contains("file-not-plain");
    }
    Files.move(at.resolve("traced"), at.resolve("elsewhere"));
    Files.createSymbolicLink(at.resolve("traced"), at.resolve("elsewhere"));
    Files.writeString(at.resolve("pattern.hem"), text);
    assertThat(Workbench.evaluate(folder).problems()).extracting("code").contains("file-is-link");
  }
}
