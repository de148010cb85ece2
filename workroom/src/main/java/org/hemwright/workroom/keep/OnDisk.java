package org.hemwright.workroom.keep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.hemwright.workbench.folder.DiskFolder;
import org.hemwright.workbench.folder.FolderFile;

/** What lies on the disk under the name of a text. */
sealed interface OnDisk {
  /** A text, and how it lies in its file. */
  record Text(FileForm form) implements OnDisk {}

  /** Nothing. */
  record Absent() implements OnDisk {}

  /** Something that is no text, or cannot be read. */
  record Foreign() implements OnDisk {}

  /** Looks. */
  static OnDisk of(Path folder, String name) {
    FolderFile file = new DiskFolder(folder).file(name);
    if (file instanceof FolderFile.Content content) {
      Optional<FileForm> form = FileForm.of(name, content.bytes());
      return form.isPresent() ? new Text(form.get()) : new Foreign();
    }
    return file instanceof FolderFile.Absent ? new Absent() : new Foreign();
  }

  /** The text that lies there. */
  default Optional<String> text() {
    return this instanceof Text there ? Optional.of(there.form.text()) : Optional.empty();
  }

  /** Whether a file is set to be read and not written; a new one is not. */
  static boolean isReadOnly(Path file) throws IOException {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    PosixFileAttributeView rights =
        Files.getFileAttributeView(file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    if (rights == null) {
      return !Files.isWritable(file);
    }
    // The files of an administrator can be written whatever their rights say.
    Set<PosixFilePermission> writes =
        EnumSet.of(
            PosixFilePermission.OWNER_WRITE,
            PosixFilePermission.GROUP_WRITE,
            PosixFilePermission.OTHERS_WRITE);
    writes.retainAll(rights.readAttributes().permissions());
    return writes.isEmpty() || !Files.isWritable(file);
  }
}
