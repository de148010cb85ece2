package org.hemwright.workbench.out;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * The maker's files packed into one zip, ready to upload to a shop. The same bytes for the same
 * files: they stand in the order of their names, all dated as the pattern is.
 */
public final class Upload {
  private Upload() {}

  /**
   * Packs files.
   *
   * @param folder the folder that they unpack into
   * @param dated the day that each bears; the earliest that a zip can say is in 1980
   */
  public static byte[] zip(String folder, List<MadeFile> files, LocalDate dated) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
      for (MadeFile file :
          files.stream().sorted((one, other) -> one.name().compareTo(other.name())).toList()) {
        ZipEntry entry = new ZipEntry(folder + "/" + file.name());
        entry.setTimeLocal(dated.atStartOfDay());
        if (isPacked(file.name())) {
          CRC32 sum = new CRC32();
          sum.update(file.bytes());
          entry.setMethod(ZipEntry.STORED);
          entry.setSize(file.bytes().length);
          entry.setCrc(sum.getValue());
        }
        zip.putNextEntry(entry);
        zip.write(file.bytes());
        zip.closeEntry();
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return out.toByteArray();
  }

  /** What is small as it is; packing it again costs time and saves nothing. */
  private static boolean isPacked(String name) {
    return name.endsWith(".png") || name.endsWith(".jpg");
  }
}
