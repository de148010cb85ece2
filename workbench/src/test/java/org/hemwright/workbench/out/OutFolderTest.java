package org.hemwright.workbench.out;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutFolderTest {
  @TempDir Path folder;

  @Test
  void aPublicationStandsWholeUnderItsVersionAndHashWithAPointerToIt() throws IOException {
    Path published = new OutFolder(folder.resolve("out")).publish(manifest("1.0", "abc"));

    assertThat(published.getFileName().toString()).matches("1\\.0-[0-9a-f]{12}");
    assertThat(published.resolve("svg/front.svg")).hasContent("abc");
    assertThat(folder.resolve("out/current.txt")).hasContent(published.getFileName() + "\n");
    assertThat(names(folder.resolve("out")))
        .containsExactly(published.getFileName().toString(), "current.txt");
  }

  @Test
  void theManifestListsEveryFileWithItsHash() throws IOException {
    Path published = new OutFolder(folder).publish(manifest("1.0", "abc"));

    JsonNode manifest = new ObjectMapper().readTree(published.resolve("manifest.json").toFile());
    assertThat(manifest.get("pattern").asText()).isEqualTo("Sandling skirt");
    assertThat(manifest.get("version").asText()).isEqualTo("1.0");
    JsonNode file = manifest.get("files").get(0);
    assertThat(file.get("name").asText()).isEqualTo("svg/front.svg");
    assertThat(file.get("bytes").asInt()).isEqualTo(3);
    assertThat(file.get("for").asText()).isEqualTo("maker");
    assertThat(manifest.at("/counts/sizes").asInt()).isEqualTo(20);
    assertThat(manifest.at("/counts/pages").asInt()).isEqualTo(1);
    // The first test message of FIPS 180-4's published examples.
    assertThat(file.get("sha256").asText())
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    assertThat(manifest.get("made_from").get(0).get("name").asText()).isEqualTo("pattern.hem");
  }

  @Test
  void theSamePatternLandsInTheSameFolderAndAnotherInAnother() throws IOException {
    OutFolder out = new OutFolder(folder);
    Path first = out.publish(manifest("1.0", "abc"));
    Path again = out.publish(manifest("1.0", "abc"));
    Path other = out.publish(manifest("1.0", "abd"));

    assertThat(again).isEqualTo(first);
    assertThat(other).isNotEqualTo(first);
    assertThat(folder.resolve("current.txt")).hasContent(other.getFileName() + "\n");
    assertThat(first.resolve("svg/front.svg")).hasContent("abc");
  }

  @Test
  void aPublicationThatWasBrokenFromOutsideIsWrittenAnew() throws IOException {
    OutFolder out = new OutFolder(folder);
    Path published = out.publish(manifest("1.0", "abc"));
    Files.writeString(published.resolve("svg/front.svg"), "half");

    assertThat(out.publish(manifest("1.0", "abc"))).isEqualTo(published);
    assertThat(published.resolve("svg/front.svg")).hasContent("abc");
    assertThat(names(folder)).hasSize(2);
  }

  @Test
  void aWriterThatDiedLeavesTheLastPublicationAsItWas() throws IOException {
    OutFolder out = new OutFolder(folder);
    Path published = out.publish(manifest("1.0", "abc"));
    // What a program that was stopped halfway leaves behind.
    Path half = Files.createDirectories(folder.resolve(".building-99999999-1/svg"));
    Files.writeString(half.resolve("front.svg"), "ha");

    assertThat(folder.resolve("current.txt")).hasContent(published.getFileName() + "\n");
    assertThat(out.current()).contains(published);
    assertThat(out.publish(manifest("1.1", "abc")).resolve("svg/front.svg")).hasContent("abc");
    assertThat(half.getParent()).as("what it left is swept away").doesNotExist();
  }

  @Test
  void aFileThatCannotBeWrittenLeavesNothingOfThePublication() throws IOException {
    Files.writeString(folder.resolve("file"), "in the way");

    assertThatThrownBy(() -> new OutFolder(folder.resolve("file")).publish(manifest("1", "a")))
        .isInstanceOf(IOException.class);
    assertThat(names(folder)).containsExactly("file");
  }

  @Test
  void aWholeFolderHoldsWhatItIsGivenAndNothingOfBefore() throws IOException {
    OutFolder out = new OutFolder(folder);
    out.whole("cloth", Map.of("a.txt", bytes("a"), "layouts/b.svg", bytes("b")));
    Path whole = out.whole("cloth", Map.of("a.txt", bytes("a"), "layouts/c.svg", bytes("c")));
    assertThat(names(whole)).containsExactly("a.txt", "layouts");
    assertThat(names(whole.resolve("layouts"))).containsExactly("c.svg");
    out.whole("cloth", Map.of("a.txt", bytes("a")));
    assertThat(names(whole)).containsExactly("a.txt");
    Object before = Files.readAttributes(whole, "*").get("fileKey");
    out.whole("cloth", Map.of("a.txt", bytes("a")));
    assertThat(Files.readAttributes(whole, "*").get("fileKey")).as("let be").isEqualTo(before);
    assertThat(names(folder)).containsExactly("cloth");
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void neitherAVersionNorAFilesNameLeadsOutOfTheFolder() throws IOException {
    Path out = folder.resolve("deep/out");
    Path published = new OutFolder(out).publish(manifest("../../../1 ö/x", "abc"));
    assertThat(published.getParent()).isEqualTo(out);
    assertThat(published.getFileName().toString()).matches("[A-Za-z0-9_][A-Za-z0-9._-]*");

    Manifest outside =
        new Manifest(
            "t", "1", "d", "0.1.0", Map.of(), made(Map.of("../../x.svg", "a")), files(Map.of()));
    assertThatThrownBy(() -> new OutFolder(out).publish(outside))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(names(folder)).containsExactly("deep");
    assertThat(names(out)).hasSize(2);
  }

  private static Manifest manifest(String version, String front) {
    return new Manifest(
        "Sandling skirt",
        version,
        "2026-11-25",
        "0.1.0",
        Map.of("sizes", 20),
        made(Map.of("svg/front.svg", front)),
        files(Map.of("pattern.hem", "language 1")));
  }

  private static List<MadeFile> made(Map<String, String> texts) {
    List<MadeFile> made = new ArrayList<>();
    files(texts)
        .forEach((name, bytes) -> made.add(new MadeFile(name, MadeFile.Reader.MAKER, bytes, 1)));
    return made;
  }

  private static SortedMap<String, byte[]> files(Map<String, String> texts) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    texts.forEach((name, text) -> files.put(name, text.getBytes(StandardCharsets.UTF_8)));
    return files;
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(each -> each.getFileName().toString())
          .filter(name -> !name.equals(".lock"))
          .sorted()
          .toList();
    }
  }
}
