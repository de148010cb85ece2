package org.hemwright.pattern.notion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.construction.Assembly;
import org.hemwright.pattern.construction.Done;
import org.hemwright.pattern.construction.Strip;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.ThreadUse.Range;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.measure.LayerWalk;
import org.hemwright.pattern.notion.ThreadNeed.Machine;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Elastic;
import org.hemwright.pattern.seam.Seam;

/** Adds up the thread of every step. */
final class ThreadCount {
  /** A box with its two diagonals, over its side. */
  private static final double BOX = 4 + 2 * StrictMath.sqrt(2);

  private final SizedPattern sized;
  private final NotionSettings settings;
  private List<Step> steps = List.of();

  ThreadCount(SizedPattern sized, NotionSettings settings) {
    this.sized = sized;
    this.settings = settings;
  }

  /** By machine, those that are used. */
  List<ThreadNeed> of(Assembly assembly) {
    steps = assembly.steps().stream().map(Done::step).toList();
    Sum sewing = new Sum();
    Sum overlock = new Sum();
    for (Done done : assembly.steps()) {
      double length = along(done) * rows(done.step());
      if (length > 0) {
        add(done.step(), length, runs(done), sewing, overlock);
      }
    }
    List<ThreadNeed> needs = new ArrayList<>();
    if (sewing.sewn > 0) {
      needs.add(sewing.need(Machine.SEWING, 1, settings.spool()));
    }
    if (overlock.sewn > 0) {
      needs.add(overlock.need(Machine.OVERLOCK, overlock.threads, settings.cone()));
    }
    return needs;
  }

  /** What one machine needs so far. */
  private final class Sum {
    private double sewn;
    private Range thread = new Range(0, 0);
    private int threads = 1;

    void add(double length, Range ratio, int lines) {
      sewn += length;
      double tails = lines * settings.tail();
      thread =
          thread.plus(
              new Range(
                  ratio.least() * length * (1 + settings.leastWaste())
                      + (ratio.least() > 0 ? tails : 0),
                  ratio.most() * length * (1 + settings.mostWaste()) + tails));
    }

    ThreadNeed need(Machine machine, int cones, double spool) {
      return new ThreadNeed(machine, sewn, thread, cones, spool);
    }
  }

  private void add(Step step, double length, int lines, Sum sewing, Sum overlock) {
    List<Stitch> own = step.sewing().choices();
    List<Stitch> stitches =
        step.act() instanceof Act.Fasten fasten && own.isEmpty() ? fastening(fasten) : own;
    List<Stitch> machine = stitches.stream().filter(stitch -> !onCones(stitch)).toList();
    List<Stitch> cones = stitches.stream().filter(ThreadCount::onCones).toList();
    boolean raw = step.sewing().raw().isPresent();
    range(machine, raw || !cones.isEmpty()).ifPresent(ratio -> sewing.add(length, ratio, lines));
    range(cones, raw || !machine.isEmpty()).ifPresent(ratio -> overlock.add(length, ratio, lines));
    cones.forEach(stitch -> overlock.threads = Math.max(overlock.threads, threads(stitch)));
  }

  private static List<Stitch> fastening(Act.Fasten fasten) {
    return switch (fasten.kind()) {
      case BUTTONHOLE, EYELET -> List.of(Stitch.of(Stitch.Kind.BUTTONHOLE));
      case BAR_TACK -> List.of(Stitch.zigzag(2, 0.5));
      case BUTTON -> List.of(Stitch.of(Stitch.Kind.STRAIGHT));
    };
  }

  private static boolean onCones(Stitch stitch) {
    return switch (stitch.kind()) {
      case OVERLOCK_THREE, OVERLOCK_FOUR, COVER -> true;
      default -> false;
    };
  }

  private static int threads(Stitch stitch) {
    return stitch.kind() == Stitch.Kind.OVERLOCK_FOUR ? 4 : 3;
  }

  /** Thread over seam for some choices; from 0 where another choice takes none of it. */
  private Optional<Range> range(List<Stitch> stitches, boolean others) {
    Optional<Range> all =
        stitches.stream()
            .map(stitch -> stitch.kind().thread().ratio(stitch, 2 * settings.clothThickness()))
            .reduce(Range::or);
    return others ? all.map(range -> new Range(0, range.most())) : all;
  }

  private static int rows(Step step) {
    return step.sewing().rows();
  }

  /** How many lines of stitching a step begins and ends. */
  private static int runs(Done done) {
    return Math.max(1, done.sewn().size()) * rows(done.step());
  }

  // --- how long the stitching is ----------------------------------------------------------------

  /** How long one row of a step's stitching is (mm); 0 where it stitches nothing. */
  double along(Done done) {
    Step step = done.step();
    Act act = step.act();
    if (act instanceof Act.Fasten fasten) {
      return fastened(fasten);
    }
    if (step.sewing().choices().isEmpty() && !(act instanceof Act.Bind)) {
      return 0;
    }
    if (act instanceof Act.JoinEnds) {
      return elastics(step).stream().mapToDouble(elastic -> BOX * elastic.width()).sum();
    } else if (act instanceof Act.InsertZip) {
      return 2 * openings(step);
    }
    double seams = seams(done);
    double edges =
        step.work(Work.OfEdge.class).stream()
            .mapToDouble(
                work ->
                    done.strips().stream()
                        .filter(strip -> isOf(strip, work))
                        .mapToDouble(this::length)
                        .sum())
            .sum();
    if (act instanceof Act.Finish) {
      for (Work.OfPiece work : step.work(Work.OfPiece.class)) {
        edges +=
            done.strips().stream()
                .filter(strip -> strip.piece().equals(work.piece()))
                .mapToDouble(this::length)
                .sum();
      }
    }
    double left =
        step.leaves().stream()
            .map(Step.Opening::length)
            .mapToDouble(amount -> Notions.mm(amount, sized).orElse(0))
            .sum();
    return Math.max(0, seams + edges - left) + openings(step) + intakes(step) + marks(step);
  }

  private static boolean isOf(Strip strip, Work.OfEdge work) {
    return strip.piece().equals(work.piece())
        && strip.edge().equals(work.edge())
        && work.copy().stream().allMatch(strip.copy()::equals);
  }

  /** The seams of a step: one line where they are sewn in one pass, else one for each. */
  private double seams(Done done) {
    Step step = done.step();
    List<Double> lengths =
        done.work().stream()
            .filter(Work.OfSeam.class::isInstance)
            .map(work -> seam(((Work.OfSeam) work).seam(), apart(step)))
            .toList();
    boolean together =
        step.act() instanceof Act.Attach || (step.act() instanceof Act.Sew sew && sew.onePass());
    return together
        ? lengths.stream().mapToDouble(Double::doubleValue).max().orElse(0)
        : lengths.stream().mapToDouble(Double::doubleValue).sum();
  }

  private static boolean apart(Step step) {
    return step.act() instanceof Act.Finish finish && !finish.together();
  }

  /** All passes of a seam (mm): the longest layer of each, or every layer. */
  private double seam(String name, boolean everyLayer) {
    double sum = 0;
    for (Seam seam : sized.seams()) {
      if (seam.name().equals(name)) {
        for (Seam.Join join : seam.joins()) {
          List<Double> layers =
              join.layers().stream().map(layer -> LayerWalk.of(layer, sized).length()).toList();
          sum +=
              everyLayer
                  ? layers.stream().mapToDouble(Double::doubleValue).sum()
                  : layers.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        }
      }
    }
    return sum;
  }

  private double length(Strip strip) {
    return LayerWalk.of(
            new Seam.Layer(
                List.of(
                    new EdgePlace(
                        strip.piece(),
                        strip.copy(),
                        strip.half(),
                        strip.edge(),
                        Optional.empty(),
                        Optional.empty(),
                        false))),
            sized)
        .length();
  }

  private double openings(Step step) {
    return step.work(Work.OfOpening.class).stream()
        .flatMap(work -> Notions.opening(steps, work.opening()).stream())
        .mapToDouble(opening -> Notions.mm(opening.length(), sized).orElse(0))
        .sum();
  }

  private List<Elastic> elastics(Step step) {
    return sized.elastics().stream()
        .filter(
            elastic ->
                step.work(Work.OfElastic.class).stream()
                    .anyMatch(work -> work.elastic().equals(elastic.name())))
        .toList();
  }

  /**
   * Darts from mouth to point, pleats along their folds, gathers along their stretch, on each copy.
   */
  private double intakes(Step step) {
    double sum = 0;
    for (Work.OfIntake work : step.work(Work.OfIntake.class)) {
      for (Piece piece : sized.piece(work.piece()).stream().toList()) {
        int copies = copies(work.piece());
        for (Intake intake : piece.intakes()) {
          if (intake.name().equals(work.intake())) {
            sum += copies * length(intake, piece);
          }
        }
      }
    }
    return sum;
  }

  private int copies(String piece) {
    return sized
        .piece(piece)
        .map(
            each ->
                Math.max(1, each.card().copies().size()) * (each.foldEdge().isPresent() ? 2 : 1))
        .orElse(1);
  }

  private static double length(Intake intake, Piece piece) {
    if (intake instanceof Intake.Dart dart) {
      return piece
          .edge(dart.edge())
          .map(edge -> edge.path().at(dart.from()).point().distanceTo(dart.tip()))
          .orElse(0.0);
    } else if (intake instanceof Intake.Pleat pleat) {
      return pleat.lines().stream().mapToDouble(line -> line.length()).max().orElse(0);
    }
    return intake.to() - intake.from();
  }

  /** Lines drawn on a piece that are stitched along. */
  private double marks(Step step) {
    double sum = 0;
    if (step.act() instanceof Act.Stitching) {
      for (Work.OfMark work : step.work(Work.OfMark.class)) {
        for (Piece piece : sized.piece(work.piece()).stream().toList()) {
          for (Mark mark : piece.marks()) {
            if (mark instanceof Mark.Placement line && line.name().equals(work.mark())) {
              sum += copies(work.piece()) * line.path().length();
            } else if (mark instanceof Mark.Inner line && line.name().equals(work.mark())) {
              sum += copies(work.piece()) * line.path().length();
            }
          }
        }
      }
    }
    return sum;
  }

  /**
   * Round a buttonhole, round an eyelet, along a bar tack; a button's thread as a straight line.
   */
  private double fastened(Act.Fasten fasten) {
    OptionalDouble size = Notions.mm(fasten.size(), sized);
    double one =
        switch (fasten.kind()) {
          case BUTTONHOLE -> 2 * size.orElse(0);
          case EYELET -> StrictMath.PI * size.orElse(0);
          case BAR_TACK -> size.orElse(0);
          case BUTTON ->
              settings.button()
                  / Stitch.Kind.STRAIGHT
                      .thread()
                      .ratio(Stitch.of(Stitch.Kind.STRAIGHT), 2 * settings.clothThickness())
                      .most();
        };
    return fasten.count() * one;
  }
}
