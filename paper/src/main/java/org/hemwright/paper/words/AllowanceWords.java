package org.hemwright.paper.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.hemwright.pattern.finding.SizeWords;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.LengthKind;

/** Says which allowances a piece includes: the usual one, then the edges that differ. */
public final class AllowanceWords {
  private AllowanceWords() {}

  /**
   * The statement, a line for the usual allowance and one for each exception.
   *
   * @param pieces one piece in some sizes, by the sizes' names, at least one
   */
  public static List<String> of(Speech speech, Map<String, Piece> pieces) {
    Map<String, String> byEdge = new LinkedHashMap<>();
    Map<String, Double> lengths = new LinkedHashMap<>();
    for (Piece piece : pieces.values()) {
      for (Edge edge : piece.edges()) {
        if (!edge.onFold() && !byEdge.containsKey(edge.name())) {
          String text = edgeText(speech, pieces, edge.name());
          byEdge.put(edge.name(), text);
          lengths.merge(text, edge.path().length(), Double::sum);
        }
      }
    }
    if (byEdge.isEmpty()) {
      return List.of();
    }
    String usual = "";
    double longest = -1;
    for (Map.Entry<String, Double> entry : lengths.entrySet()) {
      if (entry.getValue() > longest) {
        usual = entry.getKey();
        longest = entry.getValue();
      }
    }
    List<String> lines = new ArrayList<>();
    lines.add(usual.equals("none") ? "No seam allowance" : "Seam allowance included: " + usual);
    Map<String, List<String>> exceptions = new LinkedHashMap<>();
    for (Map.Entry<String, String> entry : byEdge.entrySet()) {
      if (!entry.getValue().equals(usual)) {
        exceptions
            .computeIfAbsent(entry.getValue(), key -> new ArrayList<>())
            .add(Speech.spoken(entry.getKey()));
      }
    }
    exceptions.forEach(
        (text, edges) -> lines.add(Speech.capital(String.join(", ", edges)) + ": " + text));
    return lines;
  }

  private static String edgeText(Speech speech, Map<String, Piece> pieces, String edge) {
    Map<String, String> bySize = new LinkedHashMap<>();
    pieces.forEach(
        (size, piece) ->
            piece.edge(edge).ifPresent(drawn -> bySize.put(size, text(speech, drawn.allowance()))));
    Map<String, List<String>> alike = PieceWords.alike(bySize);
    if (alike.size() == 1) {
      return alike.keySet().iterator().next();
    }
    return alike.entrySet().stream()
        .map(
            entry ->
                entry.getKey()
                    + " in "
                    + new SizeWords(speech.chart()).of(entry.getValue()).replace(' ', '\u00a0'))
        .collect(Collectors.joining("; "));
  }

  private static String text(Speech speech, Allowance allowance) {
    if (allowance.width() == 0) {
      return "none";
    }
    if (allowance instanceof Allowance.TurnedBack turned) {
      if (turned.folds().size() == 2) {
        return speech.length(turned.folds().get(0), LengthKind.ALLOWANCE)
            + " turned back, then "
            + speech.length(turned.folds().get(1), LengthKind.ALLOWANCE)
            + " turned under";
      }
      return speech.length(allowance.width(), LengthKind.ALLOWANCE) + " turned back";
    }
    return speech.length(allowance.width(), LengthKind.ALLOWANCE);
  }
}
