package org.hemwright.paper.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hemwright.paper.type.Face;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/** Letters in the designer's words that our type does not have, so that they print as "?". */
public final class MissingLetters {
  private MissingLetters() {}

  /** One finding for each text that has such letters. */
  public static List<Finding> in(SizeRun run) {
    Map<String, Finding.Builder> findings = new LinkedHashMap<>();
    look(findings, "pattern", run.pattern().details().title());
    look(findings, "by", run.pattern().details().by());
    run.pattern().details().brand().footer().ifPresent(footer -> look(findings, "footer", footer));
    for (Size size : run.pattern().chart().sizes()) {
      look(findings, "size " + size.name(), size.name());
    }
    for (Fabric fabric : run.pattern().fabrics()) {
      look(findings, fabric.name(), fabric.title());
    }
    for (PieceCard card : run.pattern().pieces()) {
      look(findings, card.name(), card.title());
    }
    for (SizedPattern sized : run.sizes()) {
      for (Piece piece : sized.pieces()) {
        for (Mark mark : piece.marks()) {
          look(findings, piece.name(), text(mark));
        }
      }
    }
    return findings.values().stream().map(Finding.Builder::build).toList();
  }

  private static void look(Map<String, Finding.Builder> findings, String subject, String text) {
    List<String> missing = new ArrayList<>(Face.REGULAR.missing(text));
    if (!missing.isEmpty()) {
      findings.putIfAbsent(
          text,
          Finding.warn("letters-missing", subject)
              .with("text", text)
              .with("letters", Argument.of(missing)));
    }
  }

  private static String text(Mark mark) {
    if (mark instanceof Mark.Drill drill) {
      return drill.text().orElse("");
    } else if (mark instanceof Mark.Inner inner) {
      return inner.text().orElse("");
    } else if (mark instanceof Mark.Placement placement) {
      return placement.text().orElse("");
    } else if (mark instanceof Mark.Label label) {
      return label.text();
    }
    return "";
  }
}
