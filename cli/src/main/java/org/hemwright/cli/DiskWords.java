package org.hemwright.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Locale;

/** What the disk refused, as a sentence, and what would mend it. */
final class DiskWords {
  private DiskWords() {}

  /** A sentence and its mend, parted by a semicolon. */
  static String of(IOException refused) {
    String reason = reason(refused).toLowerCase(Locale.ROOT);
    if (reason.contains("no space left") || reason.contains("disk full")) {
      return where(refused) + "the disk is full; make room, or give another place with --out";
    }
    if (reason.contains("quota")) {
      return where(refused)
          + "your share of the disk is full; make room, or give another place with --out";
    }
    if (reason.contains("read-only")) {
      return where(refused) + "the disk can only be read; give another place with --out";
    }
    if (reason.contains("name too long")) {
      return where(refused) + "the name is too long for this disk; give another with --out";
    }
    if (reason.contains("file too large")) {
      return where(refused)
          + "no file may be as large as that there; give another place with --out";
    }
    if (refused instanceof AccessDeniedException || reason.contains("not permitted")) {
      return where(refused)
          + "you may not write there; change the folder's permissions, or give another place with"
          + " --out";
    }
    if (refused instanceof NoSuchFileException) {
      return where(refused) + "there is no such folder; make it, or give another place with --out";
    }
    if (refused instanceof FileAlreadyExistsException
        || refused instanceof NotDirectoryException
        || reason.contains("not a directory")) {
      return where(refused)
          + "a file stands where a folder belongs; move it away, or give another place with --out";
    }
    if (refused instanceof DirectoryNotEmptyException || reason.contains("is a directory")) {
      return where(refused)
          + "a folder stands where a file belongs; move it away, or give another place with --out";
    }
    return where(refused)
        + "it cannot be written or read"
        + (reason.isEmpty() ? "" : " (" + reason(refused) + ")")
        + "; give another place with --out";
  }

  private static String where(IOException refused) {
    if (refused instanceof FileSystemException file && file.getFile() != null) {
      return file.getFile() + ": ";
    }
    return "";
  }

  private static String reason(IOException refused) {
    String reason =
        refused instanceof FileSystemException file ? file.getReason() : refused.getMessage();
    return reason == null ? "" : reason;
  }
}
