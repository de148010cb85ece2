package org.hemwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;

/**
 * The reasons are the C library's words for ENOSPC, EROFS, EDQUOT and their like, as Java gives
 * them.
 */
class DiskWordsTest {
  @Test
  void eachRefusalIsToldPlainlyWithWhatWouldMendIt() {
    assertThat(DiskWords.of(new FileSystemException("out/a.pdf", null, "No space left on device")))
        .isEqualTo("out/a.pdf: the disk is full; make room, or give another place with --out");
    assertThat(DiskWords.of(new IOException("No space left on device")))
        .isEqualTo("the disk is full; make room, or give another place with --out");
    assertThat(DiskWords.of(new FileSystemException("out", null, "Read-only file system")))
        .isEqualTo("out: the disk can only be read; give another place with --out");
    assertThat(DiskWords.of(new FileSystemException("out", null, "Disk quota exceeded")))
        .startsWith("out: your share of the disk is full;");
    assertThat(DiskWords.of(new AccessDeniedException("out")))
        .isEqualTo(
            "out: you may not write there; change the folder's permissions, or give another place"
                + " with --out");
    assertThat(DiskWords.of(new NoSuchFileException("gone/out")))
        .isEqualTo("gone/out: there is no such folder; make it, or give another place with --out");
    assertThat(DiskWords.of(new FileAlreadyExistsException("notes.txt")))
        .startsWith("notes.txt: a file stands where a folder belongs;");
    assertThat(DiskWords.of(new FileSystemException("out", null, "Input/output error")))
        .isEqualTo(
            "out: it cannot be written or read (Input/output error); give another place with"
                + " --out");
  }
}
