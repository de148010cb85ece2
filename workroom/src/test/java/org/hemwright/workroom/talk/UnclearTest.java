package org.hemwright.workroom.talk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.hemwright.pattern.finding.Messages;
import org.junit.jupiter.api.Test;

/**
 * Every reason for which a question is refused is a sentence of the message file, and no other is
 * there.
 */
class UnclearTest {
  private static final Pattern KEY =
      Pattern.compile(
          "(?:new (?:Question\\.)?Unclear|Unclear\\.sentence)\\(\\s*(\"[a-z-]+\"|[^)])");

  @Test
  void everyReasonIsASentenceOfTheFile() throws IOException {
    Messages all = Messages.beside(Question.class, "unclear.properties");
    Set<String> said = new TreeSet<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(each -> each.toString().endsWith(".java")).toList()) {
        Matcher key = KEY.matcher(Files.readString(file));
        while (key.find()) {
          assertThat(key.group(1)).as("a key in " + file).startsWith("\"");
          said.add(key.group(1).replace("\"", ""));
        }
      }
    }
    assertThat(said).isEqualTo(new TreeSet<>(all.sentences().keySet()));
    assertThat(all.sentences().values())
        .allSatisfy(each -> assertThat(each).matches("[A-Z\u201c].*\\.|\\{0}").doesNotContain("!"));
    assertThat(new Question.Unclear("row-cells", 7).reason())
        .isEqualTo("A row holds values, 7 at most.");
  }
}
