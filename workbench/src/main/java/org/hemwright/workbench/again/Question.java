package org.hemwright.workbench.again;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hemwright.workbench.out.Sha256;

/**
 * What was asked, of which folder as it was, by which program. Who asks the same is answered the
 * same.
 *
 * @param key 64 hexadecimal digits, a hash over all of that
 */
public record Question(String key) {
  /**
   * A question.
   *
   * @param folder the pattern's; the embedded demo, a part of the program, where it is absent
   * @param words the command with all its arguments
   * @return absent where a part of it cannot be known again: see {@link FolderSum}
   */
  public static Optional<Question> of(Optional<Path> folder, List<String> words) {
    try {
      String asked = folder.isPresent() ? FolderSum.of(folder.get()) : "";
      StringBuilder text = new StringBuilder();
      text.append(ProgramSum.get()).append('\n').append(asked).append('\n');
      for (String word : words) {
        text.append(word.length()).append(' ').append(word).append('\n');
      }
      return Optional.of(new Question(Sha256.of(text.toString().getBytes(StandardCharsets.UTF_8))));
    } catch (IOException | IllegalArgumentException notKnown) {
      // Of the second kind is a path of classes that names what is no place on this disk.
      return Optional.empty();
    }
  }
}
