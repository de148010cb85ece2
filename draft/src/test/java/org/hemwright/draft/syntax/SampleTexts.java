package org.hemwright.draft.syntax;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The documents that tests read: the sketch, the shipped examples, the guide's blocks. */
public final class SampleTexts {
  private static final Path ROOT = Path.of("..");
  private static final Pattern BLOCK = Pattern.compile("(?s)```hem\\n(.*?)```");

  private SampleTexts() {}

  /** The sketch of the whole language. */
  public static String sketch() {
    return read(Path.of("src/test/resources/org/hemwright/draft/syntax/sandling.hem"));
  }

  /** Every shipped example, by its folder's name. */
  public static Map<String, String> examples() {
    Map<String, String> texts = new LinkedHashMap<>();
    for (String name :
        List.of("brackish-skirt", "eddy-skirt", "inlet-tee", "marram-trousers", "shingle-shirt")) {
      texts.put(name, read(ROOT.resolve("examples").resolve(name).resolve("pattern.hem")));
    }
    return texts;
  }

  /** The language guide's blocks of document text, each with the language line. */
  public static List<String> guideBlocks() {
    List<String> blocks = new ArrayList<>();
    Matcher block = BLOCK.matcher(read(ROOT.resolve("docs/language.md")));
    while (block.find()) {
      String text = block.group(1);
      blocks.add(text.startsWith("language") ? text : "language 1\n" + text);
    }
    return blocks;
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException trouble) {
      throw new UncheckedIOException(trouble);
    }
  }
}
