package org.hemwright.workbench.release;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.exchange.run.ReadRun;
import org.hemwright.exchange.run.SizeRunJson;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.out.Sha256;

/** Reads a release from its folder, and believes only what its hashes vouch for. */
public final class ReleaseReading {
  private static final String MANIFEST = "manifest.json";

  private ReleaseReading() {}

  /** Whether a folder is that of a release. */
  public static boolean isRelease(PatternFolder folder) {
    return folder.file(Release.FILE) instanceof FolderFile.Content;
  }

  /**
   * The release that a folder holds.
   *
   * @param problems where the reason is added when it cannot be used
   */
  public static Optional<Release> of(PatternFolder folder, List<Finding> problems) {
    Optional<ReleaseFile> said = content(folder, Release.FILE).flatMap(ReleaseFile::read);
    if (said.isEmpty()) {
      return broken(folder, Release.FILE, problems);
    }
    SortedMap<String, byte[]> files = new TreeMap<>();
    for (Map.Entry<String, String> hash : said.get().hashes().entrySet()) {
      Optional<byte[]> bytes = content(folder, hash.getKey());
      if (bytes.isEmpty() || !Sha256.of(bytes.get()).equals(hash.getValue())) {
        return broken(folder, hash.getKey(), problems);
      }
      files.put(hash.getKey(), bytes.get());
    }
    byte[] kept = files.remove(Release.RUN);
    files.remove(MANIFEST);
    if (kept == null) {
      return broken(folder, Release.RUN, problems);
    }
    ReadRun read = SizeRunJson.read(Release.RUN, kept);
    problems.addAll(read.findings());
    return read.run().map(run -> new Release(run, said.get().publication(), files));
  }

  private static Optional<byte[]> content(PatternFolder folder, String name) {
    String pictures = PatternFolder.PICTURES + "/";
    FolderFile file =
        name.startsWith(pictures)
            ? folder.picture(name.substring(pictures.length()))
            : folder.file(name);
    return file instanceof FolderFile.Content content
        ? Optional.of(content.bytes())
        : Optional.empty();
  }

  private static Optional<Release> broken(
      PatternFolder folder, String file, List<Finding> problems) {
    problems.add(
        Finding.fail("release-broken", folder.name())
            .with("file", file)
            .at(new Origin(file, 1, 1))
            .build());
    return Optional.empty();
  }
}
