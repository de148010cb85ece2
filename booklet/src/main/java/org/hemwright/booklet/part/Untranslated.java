package org.hemwright.booklet.part;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/** What of the designer's words has no wording yet in the language of a booklet. */
public final class Untranslated {
  private static final int SHOWN = 8;

  private Untranslated() {}

  /**
   * What stays as the document says it, told once.
   *
   * @param file her text in that language
   * @param written whether there is one
   */
  public static List<Finding> in(Telling telling, String file, boolean written) {
    Set<String> missing = new LinkedHashSet<>();
    words(telling).stream()
        .filter(text -> !text.isBlank() && telling.own().of(text).isEmpty())
        .forEach(missing::add);
    names(telling).stream().filter(name -> !isKnown(telling, name)).forEach(missing::add);
    List<Finding> findings = new ArrayList<>();
    if (!written) {
      findings.add(Finding.warn("prose-untranslated", file).at(new Origin(file, 1, 1)).build());
    }
    if (!missing.isEmpty()) {
      findings.add(
          Finding.warn("words-untranslated", file)
              .with("count", Argument.of(missing.size()))
              .with("words", Argument.of(missing.stream().limit(SHOWN).toList()))
              .at(new Origin(file, 1, 1))
              .build());
    }
    return findings;
  }

  private static boolean isKnown(Telling telling, String name) {
    return telling.isSaid(name)
        || telling.words().has("edge." + name)
        || telling.words().has("measure." + name);
  }

  /** Titles and sentences. */
  private static Set<String> words(Telling telling) {
    Set<String> words = new LinkedHashSet<>();
    words.add(telling.run().pattern().details().title());
    telling.run().pattern().pieces().forEach(card -> words.add(card.title()));
    telling.run().pattern().fabrics().forEach(fabric -> words.add(fabric.title()));
    telling.run().pattern().views().forEach(view -> words.add(view.title()));
    for (Making.Stage stage : telling.run().pattern().making().stages()) {
      words.add(stage.title());
      for (Step step : stage.steps()) {
        if (step.act() instanceof Act.Own own) {
          words.add(own.words());
        } else if (step.act() instanceof Act.LeaveRaw raw) {
          raw.why().ifPresent(words::add);
        }
        step.sewing().raw().flatMap(raw -> raw.when()).ifPresent(words::add);
        step.leaves().forEach(opening -> opening.where().ifPresent(words::add));
        words.addAll(step.words().notes());
        words.addAll(step.words().look());
      }
    }
    return words;
  }

  /** Names that steps say. */
  private static Set<String> names(Telling telling) {
    Set<String> names = new LinkedHashSet<>();
    for (Step step : telling.run().pattern().making().steps()) {
      for (Work work : step.work()) {
        if (work instanceof Work.OfSeam seam) {
          names.add(telling.seamStem(seam.seam()));
        } else if (work instanceof Work.OfEdge edge) {
          names.add(edge.edge());
        } else if (work instanceof Work.OfMark mark) {
          names.add(mark.mark());
        } else if (work instanceof Work.OfIntake intake) {
          names.add(intake.intake());
        } else if (work instanceof Work.OfElastic elastic) {
          names.add(elastic.elastic());
        } else if (work instanceof Work.OfCord cord) {
          names.add(cord.cord());
        }
      }
      step.leaves().forEach(opening -> names.add(opening.name()));
    }
    return names;
  }
}
