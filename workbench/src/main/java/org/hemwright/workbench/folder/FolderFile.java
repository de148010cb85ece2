package org.hemwright.workbench.folder;

/** What came of reading a file of a pattern folder. */
public sealed interface FolderFile {
  /** What the file holds. */
  final class Content implements FolderFile {
    private final byte[] bytes;

    Content(byte[] bytes) {
      this.bytes = bytes;
    }

    /** Its bytes, not to be changed. */
    public byte[] bytes() {
      return bytes;
    }
  }

  /** There is none of that name. */
  record Absent() implements FolderFile {}

  /**
   * It is there and was not read.
   *
   * @param reason the code of the finding that says why: {@code file-is-link}, {@code
   *     file-too-large}, {@code file-not-plain}, {@code file-unreadable}
   */
  record Refused(String reason) implements FolderFile {}
}
