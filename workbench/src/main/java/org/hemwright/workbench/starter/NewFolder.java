package org.hemwright.workbench.starter;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import org.hemwright.workbench.folder.PatternFolder;
import org.hemwright.workbench.out.OutFolder;

/**
 * A new pattern folder.
 *
 * @param path where it is
 * @param title what the garment is called
 */
public record NewFolder(Path path, String title) {
  private static final int LONGEST = 60;

  /**
   * A folder for a garment of this name, beside the present one: {@code Kelp skirt} in kelp-skirt.
   */
  public static NewFolder called(String name, Path in) {
    String title = name.strip().replaceAll("[\\s_-]+", " ").replace('"', '\'');
    String capital =
        title.isEmpty()
            ? "New pattern"
            : title.substring(0, 1).toUpperCase(Locale.ROOT) + title.substring(1);
    return new NewFolder(in.resolve(folderName(title)), capital);
  }

  private static String folderName(String title) {
    String plain =
        title.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    String folder = plain.isEmpty() ? "new-pattern" : plain;
    return folder.length() <= LONGEST ? folder : folder.substring(0, LONGEST);
  }

  /** Whether something stands there already; then nothing is written. */
  public boolean isTaken() {
    return new OutFolder(path).isThere();
  }

  /**
   * Fills it from a starter.
   *
   * @throws IOException where it cannot be written
   */
  public void fill(Starter starter) throws IOException {
    fill(starter, ChartRun.WOMEN);
  }

  /**
   * Fills it from a starter, drafted for a size run.
   *
   * @throws IOException where it cannot be written
   */
  public void fill(Starter starter, ChartRun run) throws IOException {
    OutFolder folder = new OutFolder(path);
    for (String file : starter.files()) {
      byte[] bytes =
          switch (file) {
            case PatternFolder.DOCUMENT ->
                starter.document(title, run).getBytes(StandardCharsets.UTF_8);
            case Starter.SIZES -> starter.sizes(run);
            default -> starter.bytes(file);
          };
      folder.replace(file, bytes);
    }
  }
}
