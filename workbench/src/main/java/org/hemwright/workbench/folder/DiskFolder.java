package org.hemwright.workbench.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.stream.Stream;

/**
 * A pattern folder on the disk.
 *
 * @param path as it was given
 */
public record DiskFolder(Path path) implements PatternFolder {
  /** More names than this are not listed; they serve only to guess what was meant. */
  private static final int MOST_NAMES = 1000;

  @Override
  public String name() {
    return path.toString();
  }

  @Override
  public List<String> names() {
    return names(path);
  }

  @Override
  public List<String> pictures() {
    Path folder = path.resolve(PICTURES);
    return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS) ? names(folder) : List.of();
  }

  private static List<String> names(Path folder) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries
          .limit(MOST_NAMES)
          .filter(entry -> Files.isRegularFile(entry, LinkOption.NOFOLLOW_LINKS))
          .map(entry -> entry.getFileName().toString())
          .sorted()
          .toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  /** The folders that lie in it, in alphabetical order; links and hidden ones are let be. */
  public List<DiskFolder> folders() {
    if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    try (Stream<Path> entries = Files.list(path)) {
      return entries
          .filter(entry -> Files.isDirectory(entry, LinkOption.NOFOLLOW_LINKS))
          .filter(entry -> !entry.getFileName().toString().startsWith("."))
          .sorted()
          .map(DiskFolder::new)
          .toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  @Override
  public FolderFile file(String name) {
    return file(path, name);
  }

  @Override
  public FolderFile picture(String name) {
    Path folder = path.resolve(PICTURES);
    return Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
        ? file(folder, name)
        : new FolderFile.Absent();
  }

  private static FolderFile file(Path folder, String name) {
    if (!PatternFolder.isInside(name)) {
      return new FolderFile.Refused("file-not-plain");
    }
    try {
      Path file = folder.resolve(name);
      if (name.contains("/") && Files.isSymbolicLink(file.getParent())) {
        return new FolderFile.Refused("file-is-link");
      }
      BasicFileAttributes attributes =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      if (attributes.isSymbolicLink()) {
        return new FolderFile.Refused("file-is-link");
      }
      if (!attributes.isRegularFile()) {
        return new FolderFile.Refused("file-unreadable");
      }
      return read(file);
    } catch (NoSuchFileException absent) {
      return new FolderFile.Absent();
    } catch (IOException | InvalidPathException unreadable) {
      return new FolderFile.Refused("file-unreadable");
    }
  }

  /** Refuses a link once more as it opens, should the file have been changed for one meanwhile. */
  private static FolderFile read(Path file) throws IOException {
    try (var stream =
        Files.newInputStream(file, StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS)) {
      byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
      return bytes.length > MOST_BYTES
          ? new FolderFile.Refused("file-too-large")
          : new FolderFile.Content(bytes);
    }
  }
}
