package org.hemwright.workbench.again;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.hemwright.workbench.out.Sha256;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** An answer is told again as it was told, and only where it would come out so. */
class AnswersTest {
  private static final Question QUESTION = new Question(Sha256.of(new byte[] {1}));
  private static final Question OTHER = new Question(Sha256.of(new byte[] {2}));

  @TempDir Path folder;
  private Answers answers;
  private Path file;

  @BeforeEach
  void aFolder() {
    answers = new Answers(folder.resolve(".hemwright"));
    file = folder.resolve(".hemwright").resolve(Answers.file("cloth"));
  }

  private static Answer answer(String said) {
    Map<String, byte[]> files = new TreeMap<>();
    files.put("yardage.csv", bytes("size,buy\n"));
    files.put("layouts/size 14.svg", bytes("<svg/>"));
    return new Answer("worth a look: é\n", said, Answer.hashes(files));
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "\n", "{}", "1.6 m\n", "\r\n1.6 m\r\n\r\n", "made said told \n\n", "½"})
  void whatIsKeptIsToldAsItWas(String said) {
    answers.keep(QUESTION, "cloth", answer(said));
    assertThat(answers.to(QUESTION, "cloth")).contains(answer(said));
  }

  @Test
  void anotherQuestionAndAnotherCommandAreNotAnswered() {
    answers.keep(QUESTION, "cloth", answer("1.6 m\n"));
    assertThat(answers.to(OTHER, "cloth")).isEmpty();
    assertThat(answers.to(QUESTION, "publish")).isEmpty();
    answers.keep(OTHER, "cloth", answer("1.7 m\n"));
    assertThat(answers.to(QUESTION, "cloth")).as("the last one only").isEmpty();
    assertThat(answers.to(OTHER, "cloth")).contains(answer("1.7 m\n"));
  }

  @Test
  void oneThatWasChangedOrTornAnywhereIsNone() throws IOException {
    answers.keep(QUESTION, "cloth", answer("1.6 m\n"));
    String kept = Files.readString(file);
    for (int i = 0; i < kept.length(); i++) {
      for (String damaged :
          new String[] {
            kept.substring(0, i),
            kept.substring(0, i) + (char) (kept.charAt(i) ^ 1) + kept.substring(i + 1),
            kept.substring(0, i) + kept.substring(i + 1),
            kept.substring(0, i) + "\n" + kept.substring(i)
          }) {
        Files.writeString(file, damaged);
        assertThat(answers.to(QUESTION, "cloth")).as("at %d: %s", i, damaged).isEmpty();
      }
    }
    Files.write(file, new byte[] {(byte) 0xff, 0, 10});
    assertThat(answers.to(QUESTION, "cloth")).as("no text").isEmpty();
    Files.writeString(file, kept);
    assertThat(answers.to(QUESTION, "cloth")).isPresent();
  }

  @Test
  void whatWasMadeHasToStandAsItWas() throws IOException {
    Answer answer = answer("");
    Path out = folder.resolve("out/cloth");
    assertThat(answer.stands(out, false)).as("nothing").isFalse();
    Files.createDirectories(out.resolve("layouts"));
    Files.writeString(out.resolve("yardage.csv"), "size,buy\n");
    assertThat(answer.stands(out, false)).as("one is missing").isFalse();
    Files.writeString(out.resolve("layouts/size 14.svg"), "<svg/>");
    assertThat(answer.stands(out, true)).isTrue();
    Files.writeString(out.resolve("yardage.csv"), "size,cut\n");
    assertThat(answer.stands(out, false)).as("one was changed").isFalse();
    Files.writeString(out.resolve("yardage.csv"), "size,buy\n");
    Files.writeString(out.resolve("old.svg"), "<svg/>");
    assertThat(answer.stands(out, false)).as("among others").isTrue();
    assertThat(answer.stands(out, true)).as("not alone").isFalse();
  }

  @Test
  void aFileOutsideIsNoneThatWasMade() throws IOException {
    Path out = Files.createDirectories(folder.resolve("out"));
    Files.writeString(folder.resolve("pattern.hem"), "x");
    Answer answer = new Answer("", "", Answer.hashes(Map.of("../pattern.hem", bytes("x"))));
    assertThat(answer.stands(out, false)).isFalse();
  }
}
