package org.hemwright.pattern.notion;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.construction.Assembly;
import org.hemwright.pattern.construction.Done;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Cord;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.seam.Elastic;

/**
 * What a maker buys beside the cloth, for one view in one size.
 *
 * @param view its name
 * @param size its name
 * @param thread by machine; nothing where the document has no steps
 * @param elastics in the order of the document, those of this view
 * @param cords in the order of the document, those of this view
 * @param zips in the order of the steps
 * @param tapes in the order of the steps
 * @param fastenings in the order of the steps, those of one kind and size together
 * @param interfacings the fabrics that are fused, by name
 * @param needles every needle that a step asks for, the usual one first
 */
public record Notions(
    String view,
    String size,
    List<ThreadNeed> thread,
    List<ElasticNeed> elastics,
    List<CordNeed> cords,
    List<ZipNeed> zips,
    List<TapeNeed> tapes,
    List<FasteningNeed> fastenings,
    List<String> interfacings,
    List<Needle> needles) {
  public Notions {
    thread = List.copyOf(thread);
    elastics = List.copyOf(elastics);
    cords = List.copyOf(cords);
    zips = List.copyOf(zips);
    tapes = List.copyOf(tapes);
    fastenings = List.copyOf(fastenings);
    interfacings = List.copyOf(interfacings);
    needles = List.copyOf(needles);
  }

  /**
   * An elastic.
   *
   * @param width mm
   * @param cut to cut, with its overlap (mm)
   * @param finished once joined (mm)
   */
  public record ElasticNeed(String name, double width, double cut, double finished) {}

  /**
   * A cord.
   *
   * @param length mm
   * @param toggles whether its ends bear toggles
   */
  public record CordNeed(String name, double length, boolean toggles) {}

  /**
   * A zip.
   *
   * @param opening the opening that it closes
   * @param reach how long that is (mm)
   * @param length the shortest on sale that reaches (mm); nothing where none does
   */
  public record ZipNeed(String opening, double reach, OptionalDouble length) {}

  /**
   * A tape for binding.
   *
   * @param width finished (mm)
   * @param length in all (mm), with the joins of its ends
   */
  public record TapeNeed(double width, double length) {}

  /**
   * Buttons, or what else fastens.
   *
   * @param kind of it
   * @param count how many
   * @param size of each (mm)
   */
  public record FasteningNeed(Act.Fastening kind, int count, double size) {}

  /** What one view takes in one size. */
  public static Notions of(
      Pattern pattern, View view, SizedPattern sized, NotionSettings settings) {
    Assembly assembly = Assembly.of(pattern, view, sized);
    List<Step> steps = assembly.steps().stream().map(Done::step).toList();
    return new Notions(
        view.name(),
        sized.size().name(),
        steps.isEmpty() ? List.of() : new ThreadCount(sized, settings).of(assembly),
        sized.elastics().stream()
            .filter(elastic -> view.pieces().contains(elastic.piece()))
            .map(Notions::elastic)
            .toList(),
        cords(pattern, view, sized),
        zips(steps, sized, settings),
        tapes(assembly, sized, settings),
        fastenings(steps, sized),
        steps.stream()
            .filter(step -> step.act() instanceof Act.Fuse)
            .flatMap(step -> ((Act.Fuse) step.act()).fabric().stream())
            .distinct()
            .toList(),
        needles(pattern, steps));
  }

  /** What every view takes in every size, views in their order, of each the sizes in theirs. */
  public static List<Notions> all(SizeRun run, NotionSettings settings) {
    List<Notions> all = new ArrayList<>();
    for (View view : run.pattern().views()) {
      run.sizes().forEach(sized -> all.add(of(run.pattern(), view, sized, settings)));
    }
    return all;
  }

  private static ElasticNeed elastic(Elastic elastic) {
    return new ElasticNeed(elastic.name(), elastic.width(), elastic.cut(), elastic.finished());
  }

  private static List<CordNeed> cords(Pattern pattern, View view, SizedPattern sized) {
    List<CordNeed> cords = new ArrayList<>();
    for (Cord cord : pattern.making().cords()) {
      if (view.pieces().contains(cord.piece())) {
        mm(cord.length(), sized)
            .ifPresent(length -> cords.add(new CordNeed(cord.name(), length, cord.toggles())));
      }
    }
    return cords;
  }

  static OptionalDouble mm(Amount amount, SizedPattern sized) {
    return amount.in(sized.numbers());
  }

  private static List<ZipNeed> zips(List<Step> steps, SizedPattern sized, NotionSettings settings) {
    List<ZipNeed> zips = new ArrayList<>();
    for (Step step : steps) {
      if (step.act() instanceof Act.InsertZip zip) {
        List<Double> sold = zip.sold().isEmpty() ? settings.zips() : zip.sold();
        for (Work.OfOpening work : step.work(Work.OfOpening.class)) {
          opening(steps, work.opening())
              .map(left -> mm(left.length(), sized))
              .filter(OptionalDouble::isPresent)
              .map(OptionalDouble::getAsDouble)
              .ifPresent(
                  reach ->
                      zips.add(
                          new ZipNeed(
                              work.opening(),
                              reach,
                              sold.stream()
                                  .filter(length -> length >= reach - 0.5)
                                  .mapToDouble(Double::doubleValue)
                                  .min())));
        }
      }
    }
    return zips;
  }

  static Optional<Step.Opening> opening(List<Step> steps, String name) {
    return steps.stream()
        .flatMap(step -> step.leaves().stream())
        .filter(left -> left.name().equals(name))
        .findFirst();
  }

  private static List<TapeNeed> tapes(
      Assembly assembly, SizedPattern sized, NotionSettings settings) {
    List<TapeNeed> tapes = new ArrayList<>();
    for (Done done : assembly.steps()) {
      if (done.step().act() instanceof Act.Bind bind && bind.tape().isPresent()) {
        OptionalDouble width = mm(bind.tape().get(), sized);
        double length = new ThreadCount(sized, settings).along(done);
        width.ifPresent(
            wide -> tapes.add(new TapeNeed(wide, length * (1 + settings.leastWaste()))));
      }
    }
    return tapes;
  }

  private static List<FasteningNeed> fastenings(List<Step> steps, SizedPattern sized) {
    List<FasteningNeed> needs = new ArrayList<>();
    for (Step step : steps) {
      if (step.act() instanceof Act.Fasten fasten) {
        double size = mm(fasten.size(), sized).orElse(0);
        Optional<FasteningNeed> alike =
            needs.stream()
                .filter(need -> need.kind() == fasten.kind() && need.size() == size)
                .findFirst();
        int before = alike.map(FasteningNeed::count).orElse(0);
        alike.ifPresent(needs::remove);
        needs.add(new FasteningNeed(fasten.kind(), before + fasten.count(), size));
      }
    }
    return needs;
  }

  private static List<Needle> needles(Pattern pattern, List<Step> steps) {
    Set<Needle> needles = new LinkedHashSet<>();
    if (!steps.isEmpty()) {
      pattern.making().usualNeedle().ifPresent(needles::add);
    }
    steps.forEach(step -> step.sewing().needle().ifPresent(needles::add));
    return List.copyOf(needles);
  }
}
