package org.hemwright.workbench.again;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.jar.Manifest;
import org.hemwright.workbench.out.Sha256;

/**
 * A hash that tells this program from any other: one of another version, one that was built from
 * changed sources, one on another Java or in another language.
 */
final class ProgramSum {
  private static final List<String> INSTALLATION =
      List.of("java.vm.name", "java.vm.version", "os.name", "os.version", "os.arch");

  /** What is loaded does not change while it runs. */
  private static Optional<String> known = Optional.empty();

  private ProgramSum() {}

  /** 64 hexadecimal digits. */
  static synchronized String get() throws IOException {
    if (known.isEmpty()) {
      known = Optional.of(reckoned());
    }
    return known.get();
  }

  private static String reckoned() throws IOException {
    StringBuilder text = new StringBuilder();
    for (String property : INSTALLATION) {
      text.append(System.getProperty(property)).append('\n');
    }
    text.append(Locale.getDefault()).append('\n');
    for (Path part : parts()) {
      text.append(Files.isDirectory(part) ? FolderSum.of(part) : jar(part)).append('\n');
    }
    return Sha256.of(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  /** The jars and folders that classes are loaded from, also those that a jar names. */
  private static Set<Path> parts() throws IOException {
    Deque<Path> waiting = new ArrayDeque<>();
    for (String part : System.getProperty("java.class.path", "").split(File.pathSeparator, -1)) {
      waiting.add(Path.of(part).toAbsolutePath());
    }
    Set<Path> parts = new LinkedHashSet<>();
    while (!waiting.isEmpty()) {
      Path part = waiting.remove();
      if (Files.exists(part) && parts.add(part) && !Files.isDirectory(part)) {
        waiting.addAll(named(part));
      }
    }
    return parts;
  }

  private static List<Path> named(Path jar) throws IOException {
    try (JarFile file = new JarFile(jar.toFile())) {
      Manifest manifest = file.getManifest();
      String named =
          manifest == null
              ? null
              : manifest.getMainAttributes().getValue(Attributes.Name.CLASS_PATH);
      return named == null
          ? List.of()
          : Arrays.stream(named.strip().split(" +", -1))
              .filter(each -> !each.isEmpty())
              .map(each -> Path.of(jar.toUri().resolve(each)))
              .toList();
    }
  }

  /** A jar lists a sum of each of its files, so that not all of it has to be read. */
  private static String jar(Path jar) throws IOException {
    List<String> entries = new ArrayList<>();
    try (JarFile file = new JarFile(jar.toFile())) {
      file.stream()
          .forEach(
              entry -> entries.add(entry.getName() + ' ' + entry.getCrc() + ' ' + entry.getSize()));
    }
    return Sha256.of(String.join("\n", entries).getBytes(StandardCharsets.UTF_8));
  }
}
