package org.hemwright.workbench.again;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;
import org.hemwright.workbench.out.Sha256;

/**
 * A hash over every name and every byte in a folder, whether or not a pattern is made from it: what
 * the program reads is a part of that, releases and pictures too. Left out are what is made, the
 * folder {@code out}, and what lies hidden beside the document, since no document may name that.
 */
final class FolderSum extends SimpleFileVisitor<Path> {
  /** A folder of more is not summed up (bytes): that takes longer than it saves. */
  private static final long MOST_BYTES = 256L << 20;

  private static final int MOST_FILES = 5_000;
  private static final String MADE = "out";

  private final Path root;
  private final Map<String, String> files = new TreeMap<>();
  private long bytes;

  private FolderSum(Path root) {
    this.root = root;
  }

  /**
   * The hash of a folder.
   *
   * @return 64 hexadecimal digits
   * @throws IOException where something cannot be read, is a link or no plain file, or is too much
   */
  static String of(Path folder) throws IOException {
    FolderSum sum = new FolderSum(folder.toRealPath());
    Files.walkFileTree(sum.root, sum);
    StringBuilder text = new StringBuilder();
    sum.files.forEach((name, hash) -> text.append(hash).append(' ').append(name).append('\n'));
    return Sha256.of(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  @Override
  public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
    return folder.equals(root.resolve(MADE)) || isHidden(folder)
        ? FileVisitResult.SKIP_SUBTREE
        : FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
    if (isHidden(file)) {
      return FileVisitResult.CONTINUE;
    }
    bytes += attributes.size();
    if (!attributes.isRegularFile() || bytes > MOST_BYTES || files.size() >= MOST_FILES) {
      throw new IOException("not summed up: " + file);
    }
    files.put(root.relativize(file).toString(), Sha256.of(Files.readAllBytes(file)));
    return FileVisitResult.CONTINUE;
  }

  private boolean isHidden(Path file) {
    return root.equals(file.getParent()) && file.getFileName().toString().startsWith(".");
  }
}
