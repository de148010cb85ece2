package org.hemwright.workroom.serve;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/** The editor's libraries: which module each name stands for, and the files themselves. */
final class Libraries {
  /**
   * A library.
   *
   * @param name what modules import
   * @param jar the folder it has among the program's resources
   * @param main its module there
   */
  private record Library(String name, String jar, String main) {}

  private static final List<Library> ALL =
      List.of(
          codemirror("state"),
          codemirror("view"),
          codemirror("language"),
          codemirror("commands"),
          codemirror("autocomplete"),
          codemirror("lint"),
          codemirror("search"),
          new Library("@lezer/common", "lezer__common", "dist/index.js"),
          new Library("@lezer/highlight", "lezer__highlight", "dist/index.js"),
          new Library("@lezer/lr", "lezer__lr", "dist/index.js"),
          new Library("@marijn/find-cluster-break", "marijn__find-cluster-break", "src/index.js"),
          new Library("style-mod", "style-mod", "src/style-mod.js"),
          new Library("w3c-keyname", "w3c-keyname", "index.js"),
          new Library("crelt", "crelt", "index.js"));

  private Libraries() {}

  private static Library codemirror(String name) {
    return new Library("@codemirror/" + name, "codemirror__" + name, "dist/index.js");
  }

  /** From what modules import to the path of the file, below the token. */
  static Map<String, String> imports() {
    Map<String, String> imports = new LinkedHashMap<>();
    ALL.forEach(each -> imports.put(each.name(), "lib/" + each.jar() + ".js"));
    return imports;
  }

  /** The file of a path that {@link #imports} gives. */
  static Optional<byte[]> file(String path) {
    for (Library library : ALL) {
      if (path.equals("lib/" + library.jar() + ".js")) {
        return Optional.of(bytes(library));
      }
    }
    return Optional.empty();
  }

  private static byte[] bytes(Library library) {
    String poms = "/META-INF/maven/org.webjars.npm/" + library.jar() + "/pom.properties";
    try (InputStream pom = Libraries.class.getResourceAsStream(poms)) {
      if (pom == null) {
        throw new IllegalStateException("the program lacks the library " + library.name());
      }
      Properties properties = new Properties();
      properties.load(pom);
      String file =
          "/META-INF/resources/webjars/"
              + library.jar()
              + "/"
              + properties.getProperty("version")
              + "/"
              + library.main();
      try (InputStream stream = Libraries.class.getResourceAsStream(file)) {
        if (stream == null) {
          throw new IllegalStateException("the program lacks " + file);
        }
        return stream.readAllBytes();
      }
    } catch (IOException broken) {
      throw new UncheckedIOException("the program's own files cannot be read", broken);
    }
  }
}
