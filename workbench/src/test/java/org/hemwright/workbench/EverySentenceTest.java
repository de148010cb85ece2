package org.hemwright.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hemwright.pattern.finding.Wording;
import org.junit.jupiter.api.Test;

/** Whatever any stage may find can be put into words. */
class EverySentenceTest {
  private static final Pattern CODE =
      Pattern.compile(
          "\\b(?:fail|warn|file|at|problem|Unread|Refused)\\(\\s*\"([a-z0-9]+(?:-[a-z0-9]+)+)\"");

  @Test
  void everyCodeThatTheSourcesNameHasASentenceAndAMend() throws IOException {
    Set<String> codes = new TreeSet<>();
    for (Path source : sources()) {
      Matcher code = CODE.matcher(Files.readString(source));
      while (code.find()) {
        codes.add(code.group(1));
      }
    }

    Wording wording = Workbench.wording(Optional.empty());
    assertThat(codes).as("the sources were found").hasSizeGreaterThan(20);
    assertThat(wording.lacking(codes)).isEmpty();
  }

  @Test
  void noSentenceScolds() {
    Workbench.wording(Optional.empty())
        .messages()
        .sentences()
        .forEach(
            (key, sentence) -> {
              assertThat(sentence)
                  .as(key)
                  .doesNotContain("!")
                  .doesNotContainIgnoringCase("invalid");
              assertThat(sentence).as(key).doesNotContainIgnoringCase("error ");
            });
  }

  private static Set<Path> sources() throws IOException {
    Set<Path> sources = new TreeSet<>();
    try (Stream<Path> modules = Files.list(Path.of(".."))) {
      for (Path main : modules.map(module -> module.resolve("src/main/java")).toList()) {
        if (Files.isDirectory(main)) {
          try (Stream<Path> files = Files.walk(main)) {
            files.filter(file -> file.toString().endsWith(".java")).forEach(sources::add);
          }
        }
      }
    }
    return sources;
  }
}
