package org.hemwright.workbench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.DocumentReader;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Statement;
import org.hemwright.paper.PaperOptions;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.compare.ChangeWords;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.sample.SampleLog;
import org.hemwright.workbench.compare.Compared;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.out.MadeFile;
import org.hemwright.workbench.out.Manifest;
import org.hemwright.workbench.release.Release;
import org.hemwright.workbench.release.ReleaseJudge;
import org.hemwright.workbench.release.ReleaseShelf;
import org.hemwright.workbench.report.OwnersChanges;

/** A publication and the releases before it. */
final class Releasing {
  private Releasing() {}

  /** What stands in the way of publishing under the version that the document says. */
  static List<Finding> judge(Evaluated evaluated, ReleaseShelf shelf) {
    ReleaseJudge judge = new ReleaseJudge(shelf, PatternFolder.DOCUMENT, Set.of(SampleLog.FILE));
    return judge.findings(
        evaluated.run().orElseThrow(), evaluated.sources(), versionLine(evaluated));
  }

  /** What changed since the last release, where there is one that is whole. */
  static Optional<MadeFile> changes(SizeRun run, ReleaseShelf shelf, PaperOptions options) {
    Optional<Release> before = shelf.before(run.pattern().details().version(), new ArrayList<>());
    return before.map(
        release -> {
          Compared compared = Compared.of(release.run(), run, options);
          String text = OwnersChanges.of(compared, new ChangeWords(Workbench.compareWording(run)));
          return new MadeFile(
              Publication.CHANGES + Manifest.plain(release.version()) + ".md",
              MadeFile.Reader.MAKER,
              text.getBytes(StandardCharsets.UTF_8),
              0);
        });
  }

  /** Freezes what was published; a version that stands on the shelf, unchanged, stays as it is. */
  static Path freeze(Evaluated evaluated, Manifest manifest, ReleaseShelf shelf)
      throws IOException {
    SizeRun run = evaluated.run().orElseThrow();
    Optional<Path> there =
        shelf.folder(run.pattern().details().version()).map(folder -> folder.path());
    return there.isPresent() ? there.get() : shelf.freeze(run, manifest, evaluated.sources());
  }

  /** Where the document says its version; its first line where it says none. */
  private static Origin versionLine(Evaluated evaluated) {
    byte[] bytes = evaluated.sources().getOrDefault(PatternFolder.DOCUMENT, new byte[0]);
    Document document =
        DocumentReader.read(PatternFolder.DOCUMENT, new String(bytes, StandardCharsets.UTF_8));
    for (Statement statement : document.statements()) {
      if (statement instanceof Statement.Version version) {
        return Source.of(document).origin(version.span());
      }
    }
    return new Origin(PatternFolder.DOCUMENT, 1, 1);
  }
}
