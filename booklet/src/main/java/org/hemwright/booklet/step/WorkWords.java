package org.hemwright.booklet.step;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Edge;

/** What a step is done to, in words: seams, edges of pieces, darts, elastics. */
final class WorkWords {
  private final Telling telling;
  private final Step step;

  WorkWords(Telling telling, Step step) {
    this.telling = telling;
    this.step = step;
  }

  /**
   * What the title names: of a hem the pieces alone, where the edges are called by nothing else.
   */
  List<Inline> named() {
    List<Work.OfEdge> edges = step.work(Work.OfEdge.class);
    boolean hems =
        step.act() instanceof Act.Hem
            && edges.size() == step.work().size()
            && edges.stream().allMatch(edge -> edge.edge().contains("hem"));
    return hems
        ? telling
            .words()
            .listed(
                edges.stream()
                    .map(edge -> telling.piece(edge.piece(), edge.copy()))
                    .distinct()
                    .toList())
        : all();
  }

  /** All that the step names. */
  List<Inline> all() {
    return listed(step.work());
  }

  /** What a step in her own words says that it deals with. */
  List<Work> dealt() {
    return step.act() instanceof Act.Own own
        ? own.deals().stream().map(Act.Dealing::work).distinct().toList()
        : List.of();
  }

  /** Things in a row, edges of the same names told together. */
  List<Inline> listed(List<Work> works) {
    Map<Owner, List<String>> edges = new LinkedHashMap<>();
    for (Work work : works) {
      if (work instanceof Work.OfEdge edge) {
        edges.computeIfAbsent(Owner.of(edge), k -> new ArrayList<>()).add(edge.edge());
      }
    }
    List<List<Inline>> items = new ArrayList<>();
    Set<List<String>> told = new LinkedHashSet<>();
    Set<String> taken = new LinkedHashSet<>();
    for (Work work : works) {
      if (work instanceof Work.OfEdge edge) {
        List<String> names = edges.getOrDefault(Owner.of(edge), List.of());
        if (told.add(names)) {
          items.add(
              edges(
                  edges.entrySet().stream()
                      .filter(entry -> entry.getValue().equals(names))
                      .map(Map.Entry::getKey)
                      .toList(),
                  names));
        }
      } else if (work instanceof Work.OfIntake intake) {
        List<Inline> names =
            telling
                .words()
                .listed(
                    works.stream()
                        .filter(Work.OfIntake.class::isInstance)
                        .map(Work.OfIntake.class::cast)
                        .filter(other -> other.piece().equals(intake.piece()))
                        .map(other -> List.<Inline>of(telling.name(other.intake())))
                        .toList());
        if (taken.add(intake.piece())) {
          items.add(
              telling.say(
                  "work.intake",
                  Slots.of("intake", names).and("piece", telling.piece(intake.piece()))));
        }
      } else {
        items.add(thing(work));
      }
    }
    return telling.words().listed(items);
  }

  /** A piece, or one copy of it. */
  private record Owner(String piece, Optional<String> copy) {
    static Owner of(Work.OfEdge edge) {
      return new Owner(edge.piece(), edge.copy());
    }
  }

  /** Edges of the same names on one piece or several: "the neck edges of front and back". */
  private List<Inline> edges(List<Owner> owners, List<String> names) {
    List<Inline> pieces =
        telling
            .words()
            .listed(owners.stream().map(own -> telling.piece(own.piece(), own.copy())).toList());
    Optional<String> other = owners.size() == 1 ? only(owners.get(0), names) : Optional.empty();
    if (other.isPresent()) {
      return telling.say(
          "work.edges.but",
          Slots.of("edge", telling.edges(List.of(other.get()))).and("piece", pieces));
    }
    return telling.say(
        "work.edge", Slots.of("edges", telling.edges(names, owners.size())).and("piece", pieces));
  }

  /** The one edge of a piece that is left where most of them are named. */
  private Optional<String> only(Owner owner, List<String> names) {
    List<String> others =
        telling.drawn().piece(owner.piece()).stream()
            .flatMap(piece -> piece.edges().stream())
            .map(Edge::name)
            .distinct()
            .filter(name -> !names.contains(name))
            .toList();
    return names.size() > 2 && others.size() == 1 ? Optional.of(others.get(0)) : Optional.empty();
  }

  /** The key of a thing whose name is a word of the language, rather than a name to be quoted. */
  private String said(String key, String name) {
    return telling.isSaid(name) ? key + ".said" : key;
  }

  private List<Inline> thing(Work work) {
    if (work instanceof Work.OfSeam seam) {
      return telling.say(
          said("work.seam", telling.seamStem(seam.seam())),
          Slots.of("seam", telling.seamName(seam.seam())));
    } else if (work instanceof Work.OfPiece piece) {
      return telling.say(
          "work.piece", Slots.of("piece", telling.piece(piece.piece(), piece.copy())));
    } else if (work instanceof Work.OfMark mark) {
      return telling.say(
          said("work.mark", mark.mark()),
          Slots.of("mark", telling.name(mark.mark())).and("piece", telling.piece(mark.piece())));
    } else if (work instanceof Work.OfIntake intake) {
      return telling.say(
          "work.intake",
          Slots.of("intake", telling.name(intake.intake()))
              .and("piece", telling.piece(intake.piece())));
    } else if (work instanceof Work.OfElastic elastic) {
      return telling.say(
          said("work.elastic", elastic.elastic()),
          Slots.of("elastic", telling.name(elastic.elastic())));
    } else if (work instanceof Work.OfCord cord) {
      return telling.say("work.cord", Slots.of("cord", telling.name(cord.cord())));
    } else if (work instanceof Work.OfOpening opening) {
      return telling.say("work.opening", Slots.of("opening", telling.name(opening.opening())));
    }
    Work.OfEdge edge = (Work.OfEdge) work;
    return edges(List.of(Owner.of(edge)), List.of(edge.edge()));
  }
}
