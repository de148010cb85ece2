package org.hemwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.finding.Wording;

/**
 * Tells findings to a person, one a line: {@code file:line:column: what is so; what would mend it}.
 *
 * @param messages where to
 * @param folder put before file names, so that a terminal can open them
 * @param wording makes the sentences
 */
record Tell(PrintWriter messages, Optional<Path> folder, Wording wording) {
  void all(List<Finding> findings) {
    for (Finding finding : findings) {
      if (finding.status() != Status.OK) {
        messages.println(line(finding));
      }
    }
    messages.flush();
  }

  String line(Finding finding) {
    String where = finding.origin().map(this::place).orElse(finding.subject()) + ": ";
    String kind = finding.status() == Status.WARN ? "worth a look: " : "";
    String message = wording.message(finding).strip();
    if (finding.reason().isPresent()) {
      return where + "accepted: " + message + " Because: " + finding.reason().get();
    }
    String mend = wording.mend(finding).strip();
    String sentence = message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
    return where + kind + (mend.isEmpty() ? message : sentence + "; " + uncapitalised(mend));
  }

  private String place(Origin origin) {
    String file =
        folder
            .map(path -> path.resolve(origin.file()).normalize().toString())
            .orElse(origin.file());
    return file + ":" + origin.line() + ":" + origin.column();
  }

  /** A mend after a semicolon starts small, but for a word that is not only a capital at first. */
  private static String uncapitalised(String mend) {
    boolean word =
        mend.length() > 1
            && Character.isUpperCase(mend.charAt(0))
            && !Character.isUpperCase(mend.charAt(1));
    return word ? Character.toLowerCase(mend.charAt(0)) + mend.substring(1) : mend;
  }
}
