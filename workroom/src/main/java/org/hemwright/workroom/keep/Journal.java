package org.hemwright.workroom.keep;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;

/** The append-only file of all that happened: a line for each revision. */
final class Journal {
  private final Path file;

  Journal(Path file) {
    this.file = file;
  }

  /**
   * Every whole entry, in order. What follows a line that cannot be read did not come to the disk
   * and is cut off, so that the next entry starts on a line of its own.
   */
  List<Entry> read() throws IOException {
    List<Entry> entries = new ArrayList<>();
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return entries;
    }
    byte[] bytes = Files.readAllBytes(file);
    int start = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        var entry = Entry.read(new String(bytes, start, i - start, StandardCharsets.UTF_8));
        if (entry.isEmpty()) {
          break;
        }
        entries.add(entry.get());
        start = i + 1;
      }
    }
    if (start < bytes.length) {
      try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
        channel.truncate(start);
      }
    }
    return entries;
  }

  /** Appends entries and waits until the disk has them. */
  void append(List<Entry> entries) throws IOException {
    StringBuilder lines = new StringBuilder();
    entries.forEach(entry -> lines.append(entry.line()));
    try (FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      long whole = channel.size();
      channel.position(whole);
      try {
        ByteBuffer bytes = ByteBuffer.wrap(lines.toString().getBytes(StandardCharsets.UTF_8));
        while (bytes.hasRemaining()) {
          channel.write(bytes);
        }
        channel.force(false);
      } catch (IOException full) {
        channel.truncate(whole);
        throw full;
      }
    }
  }
}
