package org.hemwright.workbench.release;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.exchange.run.SizeRunJson;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.FolderFile;
import org.hemwright.workbench.out.Manifest;
import org.hemwright.workbench.out.OutFolder;

/**
 * The releases of one pattern.
 *
 * @param path the folder {@code releases} of the pattern's folder; made with the first release
 */
public record ReleaseShelf(Path path) {
  /** The folder's name within the pattern's. */
  public static final String FOLDER = "releases";

  /** The sentences for what a release can say. */
  public static Messages messages() {
    return Messages.beside(ReleaseShelf.class, "release.properties");
  }

  /** The releases of the pattern in a folder. */
  public static ReleaseShelf of(Path folder) {
    return new ReleaseShelf(folder.resolve(FOLDER));
  }

  /** The versions on the shelf, oldest first as far as their numbers say. */
  public List<String> versions() {
    List<String> versions = new ArrayList<>();
    for (DiskFolder folder : folders()) {
      said(folder).ifPresent(said -> versions.add(said.version()));
    }
    versions.sort(VersionOrder.INSTANCE);
    return List.copyOf(versions);
  }

  /** The folder of a version, whole or not. */
  public Optional<DiskFolder> folder(String version) {
    return folders().stream()
        .filter(folder -> said(folder).filter(said -> said.version().equals(version)).isPresent())
        .findFirst();
  }

  /**
   * A version as it was released; absent where there is none, or none that is whole.
   *
   * @param problems where the reason is added when it is not whole
   */
  public Optional<Release> version(String version, List<Finding> problems) {
    return folder(version).flatMap(folder -> ReleaseReading.of(folder, problems));
  }

  /**
   * The newest release of another version than this one.
   *
   * @param problems where the reason is added when it is not whole
   */
  public Optional<Release> before(String version, List<Finding> problems) {
    List<String> others = new ArrayList<>(versions());
    others.remove(version);
    List<String> older =
        others.stream().filter(each -> VersionOrder.INSTANCE.compare(each, version) < 0).toList();
    List<String> from = older.isEmpty() ? others : older;
    return from.isEmpty() ? Optional.empty() : version(from.get(from.size() - 1), problems);
  }

  /**
   * Freezes a version that is not yet on the shelf.
   *
   * @param sources the files that it was made from
   * @return its folder
   */
  public Path freeze(SizeRun run, Manifest manifest, SortedMap<String, byte[]> sources)
      throws IOException {
    String version = run.pattern().details().version();
    SortedMap<String, byte[]> files = new TreeMap<>(sources);
    files.put(Release.RUN, SizeRunJson.write(run));
    files.put(Manifest.FILE, manifest.json());
    ReleaseFile said = ReleaseFile.of(version, manifest.folderName(), files);
    Map<String, byte[]> all = new TreeMap<>(files);
    all.put(Release.FILE, said.json());
    return new OutFolder(path).folder(freeName(version), all);
  }

  /** Two versions may come to one name in a disk's letters. */
  private String freeName(String version) {
    String plain = Manifest.plain(version);
    String name = plain;
    List<Path> taken = folders().stream().map(DiskFolder::path).toList();
    for (int i = 2; taken.contains(path.resolve(name)); i++) {
      name = plain + "-" + i;
    }
    return name;
  }

  private static Optional<ReleaseFile> said(DiskFolder folder) {
    return folder.file(Release.FILE) instanceof FolderFile.Content content
        ? ReleaseFile.read(content.bytes())
        : Optional.empty();
  }

  private List<DiskFolder> folders() {
    return new DiskFolder(path).folders();
  }
}
