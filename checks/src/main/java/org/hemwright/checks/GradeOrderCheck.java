package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.FindingOrder;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.measure.Measurements;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.piece.PieceCard;

/**
 * No girth shrinks and no edge turns back from one size to the next while no measurement of the
 * chart shrinks (handbook section 2, "A good nest"). Drafts with separate size ranges are separate.
 */
record GradeOrderCheck(CheckSettings settings) implements Check {
  @Override
  public String id() {
    return "grade-order";
  }

  @Override
  public List<Finding> check(SizeRun run) {
    List<Finding> findings = new ArrayList<>();
    for (PieceRun draft : PieceRun.of(run)) {
      ExchangedSizes.of(draft).forEach(at -> findings.add(exchanged(draft, at)));
    }
    for (PieceCard card : run.pattern().pieces()) {
      List<SizedPattern> drawn =
          run.sizes().stream().filter(sized -> piece(sized, card).isPresent()).toList();
      if (drawn.size() > 1) {
        for (Edge edge : piece(drawn.get(0), card).orElseThrow().edges()) {
          edge(run.pattern().chart(), card, edge.name(), drawn, findings);
        }
      }
    }
    girths(run, findings);
    List<String> chart = run.pattern().chart().sizes().stream().map(Size::name).toList();
    return new FindingOrder(chart).of(findings);
  }

  private static Finding exchanged(PieceRun draft, int at) {
    Piece piece = draft.pieces().get(at);
    return Finding.fail("grade-exchanged", draft.card().name())
        .sizes(List.of(draft.size(at - 1), draft.size(at)))
        .with("piece", draft.card().name())
        .with("smaller", draft.size(at - 1))
        .with("larger", draft.size(at))
        .at(Place.on(piece.card().origin(), piece.name(), piece.corners().get(0).point()))
        .build();
  }

  private static Optional<Piece> piece(SizedPattern sized, PieceCard card) {
    return sized.pieces().stream()
        .filter(piece -> piece.name().equals(card.name()))
        .filter(piece -> piece.card().origin().equals(card.origin()))
        .findFirst();
  }

  private static boolean rises(SizeChart chart, Size smaller, Size larger) {
    return chart.columns().stream()
        .allMatch(
            column -> {
              double before =
                  column.cells().get(smaller.position()).value().orElse(Double.NEGATIVE_INFINITY);
              double after =
                  column.cells().get(larger.position()).value().orElse(Double.POSITIVE_INFINITY);
              return after >= before;
            });
  }

  /** Lengths put back in line where a size sticks out of it, which another check tells. */
  private static double[] inLine(SizeChart chart, List<SizedPattern> sizes, double[] lengths) {
    double[] strays = new Stray(PieceRun.chart(chart, sizes)).of(lengths);
    double[] inLine = lengths.clone();
    for (int i = 0; i < inLine.length; i++) {
      inLine[i] -= strays[i];
    }
    return inLine;
  }

  /** An edge may shorten from size to size, as a side below an armhole does; but not turn. */
  private void edge(
      SizeChart chart,
      PieceCard card,
      String name,
      List<SizedPattern> drawn,
      List<Finding> findings) {
    List<Edge> edges =
        drawn.stream()
            .flatMap(sized -> piece(sized, card).stream())
            .flatMap(piece -> piece.edge(name).stream())
            .toList();
    if (edges.size() < drawn.size()) {
      return;
    }
    double[] lengths =
        inLine(chart, drawn, edges.stream().mapToDouble(edge -> edge.path().length()).toArray());
    double overall = lengths[lengths.length - 1] - lengths[0];
    int sense = overall < -settings.grade().back() ? -1 : 1;
    for (int i = 1; i < edges.size(); i++) {
      double was = lengths[i - 1];
      double is = lengths[i];
      Size smaller = drawn.get(i - 1).size();
      Size larger = drawn.get(i).size();
      if (sense * (was - is) > settings.grade().back() && rises(chart, smaller, larger)) {
        Edge edge = edges.get(i);
        findings.add(
            problem(
                    is < was ? "grade-edge-shorter" : "grade-edge-longer",
                    card.name() + "." + name,
                    was,
                    is,
                    smaller,
                    larger)
                .with("piece", card.name())
                .with("edge", name)
                .at(
                    Place.on(
                        edge.origin(),
                        card.name(),
                        edge.path().at(edge.path().length() / 2).point()))
                .build());
      }
    }
  }

  /** A single step back: a level that crosses a flare may shrink over several sizes on end. */
  private void girths(SizeRun run, List<Finding> findings) {
    SizeChart chart = run.pattern().chart();
    for (Measurements.OfLevel level : Measurements.girths(run)) {
      List<String> sizes = List.copyOf(level.girth().keySet());
      List<SizedPattern> drawn =
          run.sizes().stream().filter(s -> level.girth().containsKey(s.size().name())).toList();
      double[] girths =
          inLine(chart, drawn, level.girth().values().stream().mapToDouble(g -> g).toArray());
      for (int i = 1; i < sizes.size(); i++) {
        double was = girths[i - 1];
        double is = girths[i];
        boolean roseBefore = i < 2 || was >= girths[i - 2];
        boolean risesAfter = i + 1 >= sizes.size() || girths[i + 1] >= is;
        Size smaller = chart.size(sizes.get(i - 1)).orElseThrow();
        Size larger = chart.size(sizes.get(i)).orElseThrow();
        if (is < was - settings.grade().back()
            && roseBefore
            && risesAfter
            && rises(chart, smaller, larger)) {
          findings.add(
              problem("grade-girth", "level " + level.level(), was, is, smaller, larger)
                  .with("level", level.level())
                  .with("view", level.view())
                  .with("pieces", Argument.of(level.pieces()))
                  .build());
        }
      }
    }
  }

  private static Finding.Builder problem(
      String code, String subject, double was, double is, Size smaller, Size larger) {
    return Finding.warn(code, subject)
        .sizes(List.of(larger.name()))
        .with("smaller", smaller.name())
        .with("larger", larger.name())
        .with("was", Argument.mm(was))
        .with("is", Argument.mm(is))
        .with("by", Argument.mm(Math.abs(was - is)))
        .values(is, was, "mm");
  }
}
