package org.hemwright.pattern.seam;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.hemwright.pattern.finding.Finding;

/** Resolves seams one after another: simple ones first, since runs need them to find their way. */
final class SeamResolver {
  private final CutParts parts;
  private final Set<String> absent;
  private final JoinedEnds joined;
  private final Map<Integer, Seam> seams = new TreeMap<>();
  private final Map<Integer, List<Finding>> findings = new TreeMap<>();

  SeamResolver(CutParts parts, Set<String> absent) {
    this.parts = parts;
    this.absent = absent;
    this.joined = new JoinedEnds(parts);
  }

  SeamResolution resolve(List<SeamRequest> requests) {
    Map<Integer, List<List<Sought>>> waiting = new TreeMap<>();
    for (int i = 0; i < requests.size(); i++) {
      List<Finding> unknown = new ArrayList<>();
      Optional<List<List<Sought>>> read =
          new TermReader(parts, absent, unknown).read(requests.get(i));
      findings.put(i, unknown);
      if (read.isPresent()) {
        waiting.put(i, read.get());
      }
    }
    for (Kind kind : Kind.values()) {
      boolean further = true;
      while (further) {
        further = false;
        for (int i : List.copyOf(waiting.keySet())) {
          List<List<Sought>> layers = waiting.getOrDefault(i, List.of());
          if (Kind.of(requests.get(i)).compareTo(kind) <= 0
              && attempt(i, requests.get(i), layers)) {
            waiting.remove(i);
            further = true;
          }
        }
      }
    }
    List<Finding> told = new ArrayList<>();
    findings.forEach(
        (i, found) -> {
          if (!waiting.containsKey(i) || !follows(i, requests)) {
            told.addAll(found);
          }
        });
    return new SeamResolution(List.copyOf(seams.values()), told);
  }

  private boolean attempt(int index, SeamRequest request, List<List<Sought>> layers) {
    SeamAttempt attempt = new SeamAttempt(request, layers, parts, new StrandMaker(joined));
    Optional<Seam> seam = attempt.seam();
    findings.put(index, attempt.findings());
    seam.ifPresent(
        found -> {
          seams.put(index, found);
          found.joins().forEach(joined::add);
        });
    return seam.isPresent();
  }

  /**
   * Whether a seam may have failed only because a simpler one on the same pieces is missing: then
   * that one is the cause to be told.
   */
  private boolean follows(int index, List<SeamRequest> requests) {
    SeamRequest request = requests.get(index);
    Set<String> own = pieces(request);
    for (int i = 0; i < requests.size(); i++) {
      SeamRequest other = requests.get(i);
      if (!seams.containsKey(i)
          && Kind.of(other).compareTo(Kind.of(request)) < 0
          && pieces(other).stream().anyMatch(own::contains)) {
        return true;
      }
    }
    return false;
  }

  private static Set<String> pieces(SeamRequest request) {
    return request.layers().stream()
        .flatMap(layer -> layer.places().stream())
        .map(SeamRequest.Term::piece)
        .collect(Collectors.toSet());
  }

  /** What a seam needs to know of others. */
  private enum Kind {
    /** Edges alone. */
    SINGLE,
    /** Edges that follow on each other. */
    RUN,
    /** All copies of an edge, as far as they hang together. */
    EVERY;

    static Kind of(SeamRequest request) {
      if (request.layers().stream()
          .flatMap(layer -> layer.places().stream())
          .anyMatch(SeamRequest.Term::every)) {
        return EVERY;
      }
      return request.layers().stream().anyMatch(layer -> layer.places().size() > 1) ? RUN : SINGLE;
    }
  }
}
