package org.hemwright.workbench.out;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program that publishes is killed at random moments, as by {@code kill -9}; what the pointer
 * names is whole each time. Four times here; {@code -Dhemwright.kills=50} for more.
 */
@Tag("whole")
class KilledWriterTest {
  private static final int KILLS = Integer.getInteger("hemwright.kills", 4);
  private static final int LONGEST_WAIT = 900;
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  @Test
  void whatThePointerNamesIsWholeWheneverTheWriterIsKilled() throws Exception {
    pattern();
    SplittableRandom random = new SplittableRandom(9);
    int aside = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      Process writer = start(List.of(), kill * 1000);
      awaitReady(writer);
      Thread.sleep(random.nextInt(LONGEST_WAIT));
      writer.destroyForcibly();
      assertThat(writer.waitFor(10, TimeUnit.MINUTES)).isTrue();
      aside +=
          names(folder.resolve("out")).stream().anyMatch(n -> n.startsWith(".building")) ? 1 : 0;
      assertWhole();
    }
    System.out.println(KILLS + " kills, " + aside + " of them while a folder stood half written");
  }

  /** A limit on the length of files stands for a disk that takes no more, halfway through. */
  @Test
  void aDiskThatTakesNoMoreLeavesTheLastPublication() throws Exception {
    assumeThat(Path.of("/bin/bash")).exists();
    pattern();
    Process writer = start(List.of(), 0);
    awaitReady(writer);
    writer.destroyForcibly();
    assertThat(writer.waitFor(10, TimeUnit.MINUTES)).isTrue();
    String before = Files.readString(folder.resolve("out/current.txt"));

    Process full = start(List.of("/bin/bash", "-c", "ulimit -f 24; exec \"$@\"", "limited"), 5000);
    String told = new String(full.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(full.waitFor()).as(told).isNotZero();

    assertThat(told).contains("File too large");
    assertThat(folder.resolve("out/current.txt")).hasContent(before);
    assertWhole();
  }

  private void pattern() throws IOException {
    Files.writeString(folder.resolve("sizes.csv"), "size,hip (cm)\n8,92\n10,96\n12,100\n");
    Files.writeString(
        folder.resolve("pattern.hem"),
        """
        language 1
        pattern "Small square"
        version 1.0
        dated 2026-11-25
        by "Tern Cove Patterns"
        sizes from "sizes.csv" base 8
        fabric main woven
          widths 115 cm
        piece square "Square" number 1
          cut 1 of main
          rectangle hip / 4 by 20 cm, edges lower, right, upper, left
          allowance 1 cm
          grain along left
          point corner at 0 cm, 0 cm
          stack at corner
        """);
  }

  private Process start(List<String> before, int version) throws IOException {
    List<String> command = new ArrayList<>(before);
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-XX:-UsePerfData"));
    command.addAll(List.of("-Djava.awt.headless=true", "-cp"));
    command.add(System.getProperty("java.class.path"));
    command.add(PublishAgain.class.getName());
    command.addAll(List.of(folder.toString(), Integer.toString(version)));
    return new ProcessBuilder(command).start();
  }

  private static void awaitReady(Process writer) throws IOException {
    BufferedReader said =
        new BufferedReader(new InputStreamReader(writer.getInputStream(), StandardCharsets.UTF_8));
    String line = said.readLine();
    if (line == null) {
      throw new AssertionError(
          new String(writer.getErrorStream().readAllBytes(), StandardCharsets.UTF_8));
    }
    assertThat(line).isEqualTo("ready");
  }

  /** Looks for itself: hashes by the JDK, names by the manifest. */
  private void assertWhole() throws IOException {
    Path out = folder.resolve("out");
    Path current = out.resolve(Files.readString(out.resolve("current.txt")).strip());
    byte[] manifest = Files.readAllBytes(current.resolve("manifest.json"));
    assertThat(current.getFileName().toString()).endsWith("-" + sha256(manifest).substring(0, 12));
    JsonNode files = JSON.readTree(manifest).get("files");
    assertThat(files.size()).isGreaterThan(5);
    for (JsonNode file : files) {
      byte[] bytes = Files.readAllBytes(current.resolve(file.get("name").asText()));
      assertThat(sha256(bytes)).isEqualTo(file.get("sha256").asText());
    }
    for (String release : names(folder.resolve("releases"))) {
      if (!release.startsWith(".")) {
        Path frozen = folder.resolve("releases").resolve(release);
        JsonNode hashes = JSON.readTree(frozen.resolve("release.json").toFile()).get("sha256");
        for (var hash : hashes.properties()) {
          assertThat(sha256(Files.readAllBytes(frozen.resolve(hash.getKey()))))
              .isEqualTo(hash.getValue().asText());
        }
      }
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(each -> each.getFileName().toString()).toList();
    }
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException impossible) {
      throw new AssertionError(impossible);
    }
  }
}
