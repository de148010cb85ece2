package org.hemwright.workbench.folder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/**
 * A pattern folder that is packed in the program.
 *
 * @param shelf where it lies: {@code examples} or {@code starters}
 * @param name of the example: {@code eddy-skirt}
 */
public record PackedFolder(String shelf, String name) implements PatternFolder {
  /** The pattern that every command takes when it is given no folder. */
  public static final PackedFolder DEMO = new PackedFolder("eddy-skirt");

  /** Whole garments to look at, from the plainest to the richest. */
  public static final List<PackedFolder> EXAMPLES =
      List.of(
          DEMO,
          new PackedFolder("inlet-tee"),
          new PackedFolder("marram-trousers"),
          new PackedFolder("brackish-skirt"),
          new PackedFolder("shingle-shirt"));

  /** The pictures that are packed with an example: what is packed cannot be listed. */
  private static final Map<String, List<String>> PACKED =
      Map.of(
          "examples/inlet-tee",
          List.of("logo.svg", "view-A-back.svg", "view-A-front.svg"),
          "examples/shingle-shirt",
          List.of(
              "bind_slits.svg",
              "logo.svg",
              "roll_yoke.svg",
              "view-A-back.svg",
              "view-A-front.svg"));

  /** One of the examples. */
  public PackedFolder(String name) {
    this("examples", name);
  }

  public PackedFolder {
    if (!PatternFolder.isPlain(name)) {
      throw new IllegalArgumentException("an example has a plain name, not " + name);
    }
  }

  @Override
  public List<String> names() {
    return this.equals(DEMO)
        ? List.of("booklet.de.md", PROSE, DOCUMENT, "sizes.csv")
        : List.of(PROSE, DOCUMENT, "sizes.csv");
  }

  @Override
  public List<String> pictures() {
    return PACKED.getOrDefault(shelf + "/" + name, List.of());
  }

  @Override
  public FolderFile picture(String picture) {
    return PatternFolder.isPlain(picture)
        ? packed(PICTURES + "/" + picture)
        : new FolderFile.Refused("file-not-plain");
  }

  @Override
  public FolderFile file(String file) {
    if (!PatternFolder.isInside(file)) {
      return new FolderFile.Refused("file-not-plain");
    }
    return packed(file);
  }

  private FolderFile packed(String file) {
    String resource = "/org/hemwright/" + shelf + "/" + name + "/" + file;
    try (InputStream stream = PackedFolder.class.getResourceAsStream(resource)) {
      return stream == null
          ? new FolderFile.Absent()
          : new FolderFile.Content(stream.readAllBytes());
    } catch (IOException broken) {
      throw new UncheckedIOException("the program's own files cannot be read", broken);
    }
  }
}
