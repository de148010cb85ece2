package org.hemwright.cloth.laying;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The published strip packing instances and layouts in ../shared/data/strip-packing (README.md
 * there names their origins), read in place.
 */
final class PublishedInstances {

  private PublishedInstances() {}

  /** The folder, or an absent one where this checkout stands alone. */
  static Path folder() {
    Path start = Path.of("").toAbsolutePath();
    for (Path p = start; p != null; p = p.getParent()) {
      Path folder = p.resolve("shared/data/strip-packing");
      if (Files.isDirectory(folder)) {
        return folder;
      }
    }
    return start.resolve("shared/data/strip-packing");
  }

  static boolean present() {
    return Files.isDirectory(folder().resolve("reference-layouts"));
  }

  static List<String> withLayouts() {
    if (!present()) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder().resolve("reference-layouts"))) {
      return files.map(p -> p.getFileName().toString().replace(".json", "")).sorted().toList();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  static StripProblem problem(String name) throws IOException, LayFileRefused {
    Path file = folder().resolve(name + ".json");
    return LayFile.read(name + ".json", Files.readString(file)).problem();
  }

  /** The instance at the strip width that its published layout states. */
  static StripProblem problemOfLayout(String name) throws IOException, LayFileRefused {
    StripProblem nominal = problem(name);
    double width = layoutFile(name).get("stripWidthUsed").doubleValue();
    return new StripProblem(nominal.name(), width, nominal.shapes());
  }

  static Layout layout(String name) throws IOException {
    JsonNode file = layoutFile(name);
    List<Placement> placements = new ArrayList<>();
    for (JsonNode p : file.get("placements")) {
      placements.add(
          new Placement(
              p.get("id").asText(),
              Turn.of(p.get("rotationDegrees").doubleValue()),
              p.get("x").doubleValue(),
              p.get("y").doubleValue()));
    }
    return new Layout(file.get("reportedLength").doubleValue(), placements);
  }

  static double density(String name) throws IOException {
    return layoutFile(name).get("reportedDensityPercent").doubleValue() / 100;
  }

  private static JsonNode layoutFile(String name) throws IOException {
    Path file = folder().resolve("reference-layouts").resolve(name + ".json");
    return new ObjectMapper().readTree(file.toFile());
  }
}
