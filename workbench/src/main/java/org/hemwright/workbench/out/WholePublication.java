package org.hemwright.workbench.out;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a publication is whole: every file that its manifest lists is there, as it was written.
 */
public final class WholePublication {
  private static final ObjectMapper READER = new ObjectMapper();

  private WholePublication() {}

  /**
   * The files that are missing or were changed; none where it is whole.
   *
   * @param folder a publication's
   */
  public static List<String> broken(Path folder) throws IOException {
    Path manifest = folder.resolve(Manifest.FILE);
    if (!Files.isRegularFile(manifest, LinkOption.NOFOLLOW_LINKS)) {
      return List.of(Manifest.FILE);
    }
    byte[] said = Files.readAllBytes(manifest);
    List<String> broken = new ArrayList<>();
    if (!String.valueOf(folder.getFileName()).endsWith("-" + Manifest.hash(said))) {
      broken.add(Manifest.FILE);
    }
    for (JsonNode file : READER.readTree(said).path("files")) {
      String name = file.path("name").asText();
      Path place = folder.resolve(name).normalize();
      boolean whole =
          place.startsWith(folder.normalize())
              && Files.isRegularFile(place, LinkOption.NOFOLLOW_LINKS)
              && Sha256.of(Files.readAllBytes(place)).equals(file.path("sha256").asText());
      if (!whole) {
        broken.add(name);
      }
    }
    return List.copyOf(broken);
  }
}
