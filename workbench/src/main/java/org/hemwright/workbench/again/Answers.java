package org.hemwright.workbench.again;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.hemwright.workbench.out.OutFolder;
import org.hemwright.workbench.out.Sha256;

/**
 * The last answer of each command, kept as a text file: a hash over the rest, the question, a line
 * for each file that was made, then the lines that were told and said. One that is missing or
 * broken is none; where it cannot be written it is let be.
 *
 * @param folder need not be there yet
 */
public record Answers(Path folder) {
  private static final long MOST_BYTES = 64L << 20;
  private static final String MADE = "made ";
  private static final String TOLD = "told ";
  private static final String SAID = "said ";

  /** The name of the file that holds a command's answer. */
  public static String file(String command) {
    return "answer-" + command + ".txt";
  }

  /** What was answered to this very question, if that was the last one. */
  public Optional<Answer> to(Question question, String command) {
    Path file = folder.resolve(file(command));
    try {
      if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) || Files.size(file) > MOST_BYTES) {
        return Optional.empty();
      }
      return read(question, Files.readString(file));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private static Optional<Answer> read(Question question, String kept) {
    String begun = begun(question);
    int sum = kept.indexOf('\n') + 1;
    String rest = kept.substring(sum);
    if (!rest.startsWith(begun) || !kept.substring(0, sum).equals(sum(rest))) {
      return Optional.empty();
    }
    SortedMap<String, String> made = new TreeMap<>();
    List<String> told = new ArrayList<>();
    List<String> said = new ArrayList<>();
    for (String line : rest.substring(begun.length()).split("\n", -1)) {
      String what = line.substring(Math.min(line.length(), MADE.length()));
      if (line.startsWith(MADE)) {
        int blank = what.indexOf(' ');
        made.put(what.substring(blank + 1), what.substring(0, blank));
      } else if (line.startsWith(TOLD)) {
        told.add(what);
      } else {
        said.add(what);
      }
    }
    return Optional.of(new Answer(String.join("\n", told), String.join("\n", said), made));
  }

  /** Keeps an answer in place of the command's last one. */
  public void keep(Question question, String command, Answer answer) {
    List<String> lines = new ArrayList<>();
    answer.made().forEach((name, hash) -> lines.add(MADE + hash + ' ' + name));
    add(TOLD, answer.told(), lines);
    add(SAID, answer.said(), lines);
    String rest = begun(question) + String.join("\n", lines);
    try {
      new OutFolder(folder)
          .replace(file(command), (sum(rest) + rest).getBytes(StandardCharsets.UTF_8));
    } catch (IOException unwritable) {
      // It is answered anew the next time.
    }
  }

  private static void add(String kind, String text, List<String> lines) {
    for (String line : text.split("\n", -1)) {
      lines.add(kind + line);
    }
  }

  private static String begun(Question question) {
    return question.key() + "\n";
  }

  private static String sum(String rest) {
    return Sha256.of(rest.getBytes(StandardCharsets.UTF_8)) + "\n";
  }
}
