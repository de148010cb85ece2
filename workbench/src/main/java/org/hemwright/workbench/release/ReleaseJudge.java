package org.hemwright.workbench.release;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import org.hemwright.exchange.run.SizeRunJson;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.compare.Change;
import org.hemwright.pattern.compare.Comparison;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;

/**
 * Whether a pattern may go out under its version: not where that version was released and the
 * pattern has changed since. Comments and blank lines of the document change no pattern, and the
 * sample log is no part of it.
 *
 * @param shelf the releases
 * @param document the document's file name
 * @param apart files that are read beside the pattern and are no part of it
 */
public record ReleaseJudge(ReleaseShelf shelf, String document, Set<String> apart) {
  public ReleaseJudge {
    apart = Set.copyOf(apart);
  }

  /**
   * What stands in the way; nothing for a version that was not released.
   *
   * @param run all sizes
   * @param sources the files it was made from
   * @param said where the document says its version
   */
  public List<Finding> findings(SizeRun run, SortedMap<String, byte[]> sources, Origin said) {
    List<Finding> found = new ArrayList<>();
    String version = run.pattern().details().version();
    Optional<Release> released = shelf.version(version, found);
    if (released.isEmpty()) {
      return found;
    }
    Release release = released.get();
    String chart = run.pattern().chart().file();
    boolean sameText =
        same(release.sources(), sources, document) && same(release.sources(), sources, chart);
    boolean sameRun = Arrays.equals(SizeRunJson.content(release.run()), SizeRunJson.content(run));
    if (!sameRun) {
      found.add(changed(release, run, said, sameText));
    }
    List<String> files = otherFiles(release.sources(), sources, chart);
    if (!files.isEmpty()) {
      found.add(
          Finding.fail("release-files-changed", "version " + version)
              .with("files", Argument.of(files))
              .with("dated", release.run().pattern().details().dated().toString())
              .at(said)
              .build());
    }
    return found;
  }

  private static Finding changed(Release release, SizeRun run, Origin said, boolean sameText) {
    List<Change> changes = Comparison.of(release.run(), run).changes();
    List<String> pieces =
        changes.stream().flatMap(change -> change.piece().stream()).distinct().toList();
    String code = sameText ? "release-redrawn" : "release-changed";
    String subject = "version " + run.pattern().details().version();
    Finding.Builder told = sameText ? Finding.warn(code, subject) : Finding.fail(code, subject);
    return told.with(
            "what", pieces.isEmpty() ? new Argument.Term("release-words") : Argument.of(pieces))
        .with("dated", release.run().pattern().details().dated().toString())
        .at(said)
        .build();
  }

  private List<String> otherFiles(
      SortedMap<String, byte[]> was, SortedMap<String, byte[]> is, String chart) {
    Set<String> names = new TreeSet<>(was.keySet());
    names.addAll(is.keySet());
    names.removeAll(apart);
    names.remove(document);
    names.remove(chart);
    return names.stream().filter(name -> !same(was, is, name)).toList();
  }

  private static boolean same(
      SortedMap<String, byte[]> was, SortedMap<String, byte[]> is, String name) {
    byte[] old = was.get(name);
    byte[] now = is.get(name);
    return Arrays.equals(old, now);
  }
}
