package org.hemwright.workbench.starter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.hemwright.workbench.folder.PackedFolder;
import org.hemwright.workbench.folder.PatternFolder;

/**
 * A sound block to begin with.
 *
 * @param name {@code knit-tee}
 * @param words what it is, in one line
 */
public record Starter(String name, String words) {
  private static final String FOLDER = "starters";

  /** What a starter's folder holds. */
  private static final List<String> FILES =
      List.of(PatternFolder.DOCUMENT, "sizes.csv", PatternFolder.PROSE);

  private static final List<Starter> ALL =
      List.of(
          new Starter(
              "one-piece-leg", "Knit pull-on bottoms, the leg one piece, elastic in a casing"),
          new Starter("trousers", "Woven pull-on trousers, front and back apart, folded waistband"),
          new Starter("knit-tee", "A tee for jersey, set-in sleeves and a neckband"),
          new Starter("skirt-block", "A fitted skirt with darts, waist facing and a zip"));

  /** Every starter. */
  public static List<Starter> all() {
    return ALL;
  }

  /** The one of a name. */
  public static Optional<Starter> named(String name) {
    return ALL.stream().filter(starter -> starter.name.equals(name)).findFirst();
  }

  /** Its files. */
  public List<String> files() {
    return FILES;
  }

  /** It as a pattern folder. */
  public PatternFolder folder() {
    return new PackedFolder(FOLDER, name);
  }

  /** What one of its files holds. */
  public byte[] bytes(String file) {
    String resource = "/org/hemwright/%s/%s/%s".formatted(FOLDER, name, file);
    try (InputStream stream = Starter.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException(resource + " is not packed in the program");
      }
      return stream.readAllBytes();
    } catch (IOException broken) {
      throw new UncheckedIOException("the program's own files cannot be read", broken);
    }
  }

  /** Its document, for a garment of another name. */
  public String document(String title) {
    String text = new String(bytes(PatternFolder.DOCUMENT), StandardCharsets.UTF_8);
    return text.replaceFirst(
        "(?m)^pattern \".*\"$",
        java.util.regex.Matcher.quoteReplacement("pattern \"" + title + "\""));
  }
}
