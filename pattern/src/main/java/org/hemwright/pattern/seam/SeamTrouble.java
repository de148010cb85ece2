package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;

/** Finds the words' values for why a seam does not resolve, and what would make it. */
final class SeamTrouble {
  private final SeamRequest request;
  private final List<List<Sought>> layers;
  private final List<Finding> findings = new ArrayList<>();

  SeamTrouble(SeamRequest request, List<List<Sought>> layers) {
    this.request = request;
    this.layers = layers;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  private Finding.Builder problem(SeamProblem problem) {
    return problem.in(request, request.origin());
  }

  private String text(int layer) {
    return request.layers().get(layer).text();
  }

  /** A run breaks; the ways to write it that would hold together are told, if there are any. */
  void breaks(List<Sought> layer, int after, List<List<Sought>> holding) {
    Finding.Builder finding =
        SeamProblem.RUN_BREAKS
            .in(request, layer.get(after + 1).term().origin())
            .with("first", layer.get(after).term().text())
            .with("second", layer.get(after + 1).term().text());
    if (!holding.isEmpty()) {
      List<Argument> ways = new ArrayList<>();
      for (List<Sought> way : holding) {
        List<SeamRequest.Term> terms = way.stream().map(Sought::term).toList();
        ways.add(Argument.of("`" + new SeamRequest.Run(terms).text() + "`"));
      }
      finding.with("written", new Argument.AnyOf(ways));
    }
    findings.add(finding.build());
  }

  /** Two layers do not come together. */
  void explain(
      Pairing.Outcome outcome,
      int layer,
      List<Strand> first,
      List<Strand> second,
      boolean withItself) {
    switch (outcome) {
      case PAIRED -> throw new IllegalStateException("a seam that is paired needs no reason");
      case COUNTS_DIFFER ->
          findings.add(
              problem(SeamProblem.COUNTS_DIFFER)
                  .with("first", text(0))
                  .with("first_count", Argument.of(first.size()))
                  .with("second", text(layer))
                  .with("second_count", Argument.of(second.size()))
                  .build());
      case TWO_WAYS ->
          findings.add(
              problem(SeamProblem.TWO_WAYS)
                  .with("first", text(0))
                  .with("second", text(layer))
                  .build());
      case HANDS_DIFFER -> {
        if (withItself) {
          findings.add(
              problem(first.size() == 1 ? SeamProblem.SINGLE_COPY : SeamProblem.CUT_ALIKE)
                  .with("first", text(0))
                  .with("piece", layers.get(0).get(0).term().piece())
                  .build());
        } else {
          findings.add(handsDiffer(layer, first, second));
        }
      }
    }
  }

  private Finding handsDiffer(int layer, List<Strand> first, List<Strand> second) {
    List<Strand> turned = second.stream().map(Strand::flipped).toList();
    if (Pairing.of(first, turned, false).outcome() == Pairing.Outcome.PAIRED) {
      return problem(SeamProblem.STARTS_APART)
          .with("first", text(0))
          .with("second", text(layer))
          .with("written", request.layers().get(layer).turned().text())
          .build();
    }
    for (int alike : new int[] {0, layer}) {
      List<Strand> strands = alike == 0 ? first : second;
      if (strands.stream().map(Strand::hand).distinct().count() == 1) {
        return problem(SeamProblem.CUT_ALIKE)
            .with("first", text(alike))
            .with("piece", layers.get(alike).get(0).term().piece())
            .build();
      }
    }
    return problem(SeamProblem.HANDS_DIFFER)
        .with("first", text(0))
        .with("second", text(layer))
        .build();
  }

  /**
   * Warns where each join takes two different copies of one piece, or of two pieces whose copies
   * have the same names, and nothing in the seam asks for that.
   */
  void warnOfCrossing(List<List<Strand>> joins) {
    if (layers.size() != 2 || layers.stream().anyMatch(layer -> layer.size() != 1)) {
      return;
    }
    Sought first = layers.get(0).get(0);
    Sought second = layers.get(1).get(0);
    boolean open =
        first.term().copy().isEmpty()
            && second.term().copy().isEmpty()
            && !first.term().every()
            && !second.term().every()
            && !first.placed()
            && !second.placed();
    boolean samePiece = first.term().piece().equals(second.term().piece());
    boolean sameEdge = samePiece && first.edge() == second.edge();
    boolean sameNames = names(first).equals(names(second));
    boolean named = joins.stream().flatMap(List::stream).noneMatch(Strand::numbered);
    boolean allCross =
        joins.stream().noneMatch(join -> join.get(0).copies().equals(join.get(1).copies()));
    if (open && !sameEdge && allCross && sameNames && (samePiece || named)) {
      findings.add(
          problem(SeamProblem.CROSSES)
              .with("first", text(0))
              .with("second", text(1))
              .with("one", joins.get(0).get(0).copies())
              .with("other", joins.get(0).get(1).copies())
              .with("written", request.layers().get(1).turned().text())
              .build());
    }
  }

  /**
   * Warns where the edges beside the two starts are named unlike each other, and each like the one
   * beside the other's end: waist to hem and hem to waist.
   */
  void warnOfEnds(List<List<Strand>> joins) {
    if (layers.size() != 2 || joins.isEmpty()) {
      return;
    }
    Strand first = joins.get(0).get(0);
    Strand second = joins.get(0).get(1);
    if (first.run().size() != 1 || second.run().size() != 1 || first.placed() || second.placed()) {
      return;
    }
    EdgePlace here = first.run().get(0);
    EdgePlace there = second.run().get(0);
    if (here.piece().equals(there.piece()) && here.edge().equals(there.edge())) {
      return; // An edge folded on itself, as the end of a cuff.
    }
    String firstStart = beside(first, true);
    String firstEnd = beside(first, false);
    if (!firstStart.equals(firstEnd)
        && firstStart.equals(beside(second, false))
        && firstEnd.equals(beside(second, true))) {
      findings.add(
          problem(SeamProblem.ENDS_UNLIKE)
              .with("first", text(0))
              .with("second", text(1))
              .with("at_first", firstStart)
              .with("at_second", firstEnd)
              .with("written", request.layers().get(1).turned().text())
              .build());
    }
  }

  /** The name of the edge beside a strand's start or end. */
  private static String beside(Strand strand, boolean start) {
    CutPart part = strand.parts().get(0);
    EdgePlace place = strand.run().get(0);
    int edge = Sought.edgeIndex(part.piece(), place.edge());
    boolean counterClockwise = place.reversed() == part.edge(edge).reversed();
    EdgeEnd beside = new EdgeEnd(part, edge, start != counterClockwise).besideAtCorner();
    return part.edge(beside.edge()).name();
  }

  private static Set<String> names(Sought sought) {
    return sought.parts().stream().map(part -> part.copy().name()).collect(Collectors.toSet());
  }
}
