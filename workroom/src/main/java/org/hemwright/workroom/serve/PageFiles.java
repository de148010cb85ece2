package org.hemwright.workroom.serve;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Pattern;

/** The page's own files, out of the program's resources. */
final class PageFiles {
  /**
   * Folders and names of plain letters, one dot before the ending: nothing that leads elsewhere.
   */
  private static final Pattern OWN =
      Pattern.compile("(?:[a-z]{1,20}/){0,3}[a-z-]{1,30}\\.(?:js|css|svg)");

  private static final String FONTS = "/fonts/ttf/SourceSansPro/SourceSansPro-";

  private PageFiles() {}

  /**
   * A file that is sent.
   *
   * @param type its media type
   */
  @SuppressWarnings("ArrayRecordComponent")
  record Sent(String type, byte[] bytes) {}

  /**
   * A page itself; its import map bears the nonce.
   *
   * @param name {@code index.html} or {@code start.html}
   */
  static Sent page(String name, String nonce) {
    ObjectNode imports = JsonNodeFactory.instance.objectNode();
    Libraries.imports().forEach((module, path) -> imports.put(module, "./" + path));
    String html =
        new String(resource(name).orElseThrow(), StandardCharsets.UTF_8)
            .replace("{nonce}", nonce)
            .replace("{imports}", "{\"imports\":" + imports + "}");
    return new Sent("text/html; charset=utf-8", html.getBytes(StandardCharsets.UTF_8));
  }

  /** A file by its path below the token. */
  static Optional<Sent> file(String path) {
    if (path.startsWith("lib/")) {
      return Libraries.file(path).map(bytes -> new Sent("text/javascript; charset=utf-8", bytes));
    }
    if (path.equals("font/regular.ttf")) {
      return font("Regular.ttf");
    }
    if (path.equals("font/semibold.ttf")) {
      return font("SemiBold.ttf");
    }
    return OWN.matcher(path).matches()
        ? resource(path).map(bytes -> new Sent(type(path), bytes))
        : Optional.empty();
  }

  private static Optional<Sent> font(String name) {
    return bytes(FONTS + name).map(bytes -> new Sent("font/ttf", bytes));
  }

  private static String type(String path) {
    if (path.endsWith(".js")) {
      return "text/javascript; charset=utf-8";
    }
    return path.endsWith(".css") ? "text/css; charset=utf-8" : "image/svg+xml";
  }

  private static Optional<byte[]> resource(String path) {
    return bytes("/org/hemwright/workroom/page/" + path);
  }

  private static Optional<byte[]> bytes(String resource) {
    try (InputStream stream = PageFiles.class.getResourceAsStream(resource)) {
      return stream == null ? Optional.empty() : Optional.of(stream.readAllBytes());
    } catch (IOException broken) {
      throw new UncheckedIOException("the program's own files cannot be read", broken);
    }
  }
}
