package org.hemwright.exchange.chart;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;

/**
 * A spreadsheet file unpacked under a limit, looked over, and packed again, so that the library
 * that reads it sees exactly what was looked over.
 *
 * <p>Refused: more than {@value #MOST_UNPACKED} bytes unpacked or {@value #MOST_PARTS} parts (a zip
 * bomb), document type declarations (entities that grow), texts that are not in an ASCII-like
 * encoding, and cell addresses beyond column {@code ZZZ}, for which the library would make room.
 * Formulas are cut down to a mark, since only the value saved beside them is read.
 */
final class RepackedSpreadsheet {
  private static final int MOST_UNPACKED = 24 << 20;
  private static final int MOST_PARTS = 1000;

  private static final Pattern FORMULA =
      Pattern.compile("<((?:\\w+:)?)f(?:\\s[^<>]*)?(?:/>|>[^<]*</(?:\\w+:)?f\\s*>)");
  private static final Pattern ADDRESS = Pattern.compile("\\sr\\s*=\\s*(?:\"([^\"]*)\"|'([^']*)')");
  private static final Pattern NEAR = Pattern.compile("[A-Za-z]{0,3}[0-9]{1,7}");

  private RepackedSpreadsheet() {}

  /** The file packed anew; absent when it is refused or is no packed file. */
  static Optional<byte[]> of(byte[] content) {
    try {
      return unpacked(content).map(RepackedSpreadsheet::packed);
    } catch (IOException | RuntimeException broken) {
      return Optional.empty();
    }
  }

  /** The parts by name, as the list at the file's end names them. */
  private static Optional<Map<String, byte[]>> unpacked(byte[] content) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    int room = MOST_UNPACKED;
    try (ZipFile zip =
        ZipFile.builder().setSeekableByteChannel(new SeekableInMemoryByteChannel(content)).get()) {
      for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
        byte[] bytes = zip.getInputStream(entry).readNBytes(room + 1);
        room -= bytes.length;
        if (room < 0 || parts.size() >= MOST_PARTS) {
          return Optional.empty();
        }
        if (!entry.getName().endsWith(".xml") && !entry.getName().endsWith(".rels")) {
          continue;
        }
        Optional<byte[]> part = lookedOver(bytes);
        if (part.isEmpty()) {
          return Optional.empty();
        }
        parts.put(entry.getName(), part.get());
      }
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(parts);
  }

  private static Optional<byte[]> lookedOver(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    if (text.indexOf('\0') >= 0 || text.contains("<!DOCTYPE") || text.contains("<!ENTITY")) {
      return Optional.empty();
    }
    if (!text.contains("sheetData")) {
      return Optional.of(bytes);
    }
    Matcher addresses = ADDRESS.matcher(text);
    while (addresses.find()) {
      String address = addresses.group(1) == null ? addresses.group(2) : addresses.group(1);
      if (!NEAR.matcher(address).matches()) {
        return Optional.empty();
      }
    }
    String marked = FORMULA.matcher(text).replaceAll("<$1f>1</$1f>");
    return Optional.of(marked.getBytes(StandardCharsets.ISO_8859_1));
  }

  private static byte[] packed(Map<String, byte[]> parts) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      zip.setLevel(1);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue());
        zip.closeEntry();
      }
    } catch (IOException problem) {
      throw new IllegalArgumentException("could not be packed again", problem);
    }
    return out.toByteArray();
  }
}
