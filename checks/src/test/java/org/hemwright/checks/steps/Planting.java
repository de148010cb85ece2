package org.hemwright.checks.steps;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Needle;
import org.hemwright.pattern.make.PressDirection;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Allowance;
import org.hemwright.pattern.piece.BodyOpening;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * What the mistakes in steps are planted with: what to look for, how to spoil it, what it is about.
 */
final class Planting {
  static final String EDGES = "making-edges";
  static final String ORDER = "making-order";
  static final String OPENINGS = "making-openings";
  static final String PRESSING = "making-pressing";
  static final String STITCHES = "making-stitches";
  static final String MARKS = "making-marks";
  static final String CLOSURES = "closure-length";
  static final String CLOTHS = "cloth-role";
  static final String SETTINGS = "stitch-settings";
  static final Stitch BASTING = Stitch.of(Stitch.Kind.BASTING, 4.5);
  static final Stitch STRAIGHT = Stitch.of(Stitch.Kind.STRAIGHT, 2.5);

  private Planting() {}

  /** The name of a step that is done again. */
  static final class Again {
    static Set<String> of(Step step) {
      return Set.of(step.id() + "_again");
    }
  }

  static Function<Step, List<Step>> twice(Workbook book) {
    return step -> book.added(Workbook.again(step));
  }

  // --- what it is about -------------------------------------------------------------------------

  static Set<String> itself(Step step) {
    return Set.of(step.id());
  }

  static Set<String> seams(Step step) {
    return step.work(Work.OfSeam.class).stream()
        .map(work -> "seam " + work.seam())
        .collect(Collectors.toSet());
  }

  static Set<String> edges(Step step) {
    return texts(step.work(Work.OfEdge.class));
  }

  static Set<String> texts(List<? extends Work> works) {
    return works.stream().map(Work::text).collect(Collectors.toSet());
  }

  static Set<String> all(Set<String> one, Set<String> other) {
    Set<String> all = new HashSet<>(one);
    all.addAll(other);
    return all;
  }

  static Set<String> held(String word, Step step) {
    return Set.of(word + step.work().get(0).text(), step.work().get(0).text());
  }

  static Set<String> elastics(Workbook book) {
    return book.sized().elastics().stream()
        .map(elastic -> "elastic " + elastic.name())
        .collect(Collectors.toSet());
  }

  // --- edges and finishes
  // -------------------------------------------------------------------------

  static Stream<SpoiltSteps> hemmed(Workbook book, Seam seam) {
    EdgePlace place = seam.joins().get(0).layers().get(0).run().get(0);
    return book.sewn(seam.name()).stream()
        .filter(step -> place.from().isEmpty() && place.to().isEmpty())
        .map(
            step ->
                Workbook.copy(
                    step,
                    "hem_it",
                    new Act.Hem(),
                    List.of(new Work.OfEdge(place.piece(), Optional.empty(), place.edge())),
                    new Sewing(
                        List.of(Stitch.zigzag(2.5, 2.5)),
                        Optional.empty(),
                        Optional.empty(),
                        1,
                        Optional.empty(),
                        Optional.empty()),
                    Optional.empty(),
                    List.of()))
        .map(
            step ->
                book.spoilt(
                    "hem " + place.piece() + "." + place.edge(),
                    book.added(step),
                    EDGES,
                    Set.of("hem_it")));
  }

  /** Whether what a step finishes lies open to the end. */
  static boolean isNeeded(Workbook book, Step step) {
    return step.work().stream()
        .noneMatch(
            work ->
                work instanceof Work.OfEdge edge
                    && book.seamsOf(edge.piece(), edge.edge()).stream()
                        .flatMap(name -> book.seam(name).stream())
                        .anyMatch(book::isPlaced));
  }

  static Set<String> finished(Workbook book, Step step) {
    Set<String> names = new HashSet<>(seams(step));
    for (Work.OfEdge edge : step.work(Work.OfEdge.class)) {
      names.add(edge.text());
      book.seamsOf(edge.piece(), edge.edge()).forEach(seam -> names.add("seam " + seam));
    }
    return names;
  }

  static Optional<Step> finishOf(Workbook book, Step step) {
    return book.acts(Act.Finish.class)
        .filter(
            finish ->
                finish.work(Work.OfSeam.class).stream().anyMatch(step.work()::contains)
                    && finish.sewing().raw().isEmpty())
        .findFirst();
  }

  static Set<String> intakeEdges(Workbook book, Step step) {
    Set<String> names = new HashSet<>();
    for (Work.OfIntake work : step.work(Work.OfIntake.class)) {
      book.sized().piece(work.piece()).stream()
          .flatMap(piece -> piece.intakes().stream())
          .filter(intake -> intake.name().equals(work.intake()))
          .forEach(intake -> names.add(work.piece() + "." + intake.edge()));
    }
    return names;
  }

  static boolean isHemmedLater(Workbook book, Step step) {
    return step.work(Work.OfEdge.class).stream()
        .anyMatch(
            work ->
                book.acts(Act.Hem.class)
                    .filter(hem -> book.place(hem) > book.place(step))
                    .anyMatch(hem -> hem.work().contains(work)));
  }

  // --- seams
  // ----------------------------------------------------------------------------------------

  static boolean runsOver(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .filter(seam -> !book.isPlaced(seam))
        .flatMap(seam -> seam.joins().stream())
        .flatMap(join -> join.layers().stream())
        .anyMatch(
            layer ->
                layer.run().stream()
                        .map(place -> place.piece() + "." + place.copy())
                        .distinct()
                        .count()
                    > 1);
  }

  /** The steps that join a band's ends: of two seams within one piece, the shorter. */
  static Stream<Step> rings(Workbook book) {
    return book.acts(Act.Sew.class)
        .filter(
            step ->
                step.work(Work.OfSeam.class).size() == 1
                    && step.work(Work.OfSeam.class).stream()
                        .flatMap(work -> book.seam(work.seam()).stream())
                        .anyMatch(
                            seam ->
                                isRing(book, seam)
                                    && book.acts(Act.Fold.class)
                                        .anyMatch(
                                            fold -> piece(fold).equals(pieceOf(book, step)))));
  }

  /** Whether it joins two edges of one piece that are shorter than two others so joined. */
  static boolean isRing(Workbook book, Seam seam) {
    return joinsTwoEdges(book, seam)
        && book.sized().seams().stream()
            .filter(other -> joinsTwoEdges(book, other))
            .anyMatch(
                other ->
                    firstOf(other).piece().equals(firstOf(seam).piece())
                        && length(book, other) > length(book, seam));
  }

  static boolean joinsTwoEdges(Workbook book, Seam seam) {
    return book.isWithinOnePiece(seam)
        && Workbook.places(seam).map(EdgePlace::edge).distinct().count() == 2;
  }

  static EdgePlace firstOf(Seam seam) {
    return seam.joins().get(0).layers().get(0).run().get(0);
  }

  static double length(Workbook book, Seam seam) {
    EdgePlace place = firstOf(seam);
    return book.sized().piece(place.piece()).stream()
        .flatMap(piece -> piece.edge(place.edge()).stream())
        .mapToDouble(edge -> edge.path().length())
        .sum();
  }

  static String pieceOf(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .flatMap(Workbook::places)
        .map(EdgePlace::piece)
        .findFirst()
        .orElse("");
  }

  static String piece(Step step) {
    return step.work(Work.OfPiece.class).stream().map(Work.OfPiece::piece).findFirst().orElse("-");
  }

  /** The steps that sew a band to the garment. */
  static List<Step> on(Workbook book, Step ring) {
    String band = pieceOf(book, ring);
    return book.sewing()
        .filter(step -> !step.equals(ring))
        .filter(
            step ->
                step.work(Work.OfSeam.class).stream()
                    .flatMap(work -> book.seam(work.seam()).stream())
                    .anyMatch(
                        seam ->
                            !book.isWithinOnePiece(seam)
                                && Workbook.places(seam)
                                    .anyMatch(place -> place.piece().equals(band))))
        .toList();
  }

  static Set<String> foldSeams(Workbook book, Step fold) {
    return book.sized().seams().stream()
        .filter(book::isWithinOnePiece)
        .filter(seam -> Workbook.places(seam).anyMatch(p -> p.piece().equals(piece(fold))))
        .map(seam -> "seam " + seam.name())
        .collect(Collectors.toSet());
  }

  static boolean endsInSeams(Workbook book, Step hem) {
    return hem.work(Work.OfEdge.class).stream()
        .anyMatch(
            work ->
                beside(book, work)
                    .anyMatch(
                        seam ->
                            !book.isPlaced(seam)
                                && book.sewn(seam.name()).isPresent()
                                && runsOn(book, seam, work.piece())));
  }

  /** Whether the piece on a seam's other side has a hem too. */
  static boolean runsOn(Workbook book, Seam seam, String piece) {
    boolean within = book.isWithinOnePiece(seam);
    return Workbook.places(seam)
        .filter(place -> within || !place.piece().equals(piece))
        .flatMap(place -> book.sized().piece(place.piece()).stream())
        .flatMap(other -> other.edges().stream())
        .anyMatch(edge -> edge.allowance() instanceof Allowance.TurnedBack);
  }

  static boolean endsInPlaced(Workbook book, Step hem) {
    return hem.work(Work.OfEdge.class).stream()
        .anyMatch(work -> beside(book, work).anyMatch(book::isPlaced));
  }

  static Stream<Seam> beside(Workbook book, Work.OfEdge work) {
    return book.beside(work.piece(), work.edge()).stream()
        .flatMap(edge -> book.seamsOf(work.piece(), edge).stream())
        .flatMap(name -> book.seam(name).stream());
  }

  /** Whether a patch goes on a piece that two seams join to one other, or to itself: a tube. */
  static boolean placedOnTube(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .filter(book::isPlaced)
        .flatMap(Workbook::places)
        .filter(
            place -> book.sized().piece(place.piece()).flatMap(p -> p.edge(place.edge())).isEmpty())
        .map(EdgePlace::piece)
        .anyMatch(piece -> isTube(book, piece));
  }

  private static boolean isTube(Workbook book, String piece) {
    List<Seam> joining =
        book.sized().seams().stream()
            .filter(seam -> !book.isPlaced(seam) && pieces(seam).contains(piece))
            .filter(seam -> seam.joins().get(0).layers().size() == 2)
            .toList();
    return joining.stream()
        .filter(seam -> pieces(seam).size() == 2)
        .flatMap(seam -> seam.joins().stream().map(join -> pieces(seam)))
        .collect(Collectors.groupingBy(each -> each, Collectors.counting()))
        .values()
        .stream()
        .anyMatch(count -> count > 1);
  }

  static boolean placed(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .anyMatch(book::isPlaced);
  }

  static boolean turnsUnder(Workbook book, Step press) {
    return press.work(Work.OfEdge.class).stream()
        .anyMatch(
            work ->
                book.seamsOf(work.piece(), work.edge()).stream()
                    .flatMap(name -> book.seam(name).stream())
                    .anyMatch(
                        seam ->
                            book.isPlaced(seam)
                                && book.sewn(seam.name())
                                    .filter(sewn -> book.place(sewn) > book.place(press))
                                    .isPresent()));
  }

  /** Whether the edges of a patch are turned under one by one, not as a bag is turned out. */
  static boolean isTurnedUnder(Workbook book, Step sewn) {
    return book.acts(Act.Press.class)
        .filter(press -> turnsUnder(book, press))
        .flatMap(press -> press.work(Work.OfEdge.class).stream())
        .anyMatch(work -> piecesOf(book, sewn).contains(work.piece()));
  }

  static boolean isCrossed(Workbook book, Work.OfSeam work, Step finish) {
    return book.seam(work.seam())
        .filter(seam -> !book.isPlaced(seam))
        .filter(seam -> !book.crossing(seam, finish).isEmpty())
        .isPresent();
  }

  static boolean isCrossed(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream().anyMatch(work -> isCrossed(book, work, step))
        && book.acts(Act.Press.class)
            .noneMatch(press -> press.work().stream().anyMatch(step.work()::contains))
        && book.acts(Act.Finish.class)
            .noneMatch(
                finish ->
                    finish.press().isPresent()
                        && finish.work().stream().anyMatch(step.work()::contains));
  }

  static boolean isShutIn(Workbook book, Step cut) {
    boolean understitched =
        book.lines(Act.Line.UNDERSTITCH)
            .anyMatch(step -> step.work().stream().anyMatch(cut.work()::contains));
    boolean cased =
        book.acts(Act.FormCasing.class)
            .anyMatch(
                casing ->
                    on(book, casing).stream()
                        .anyMatch(step -> step.work().stream().anyMatch(cut.work()::contains)));
    return understitched || cased;
  }

  static boolean marksPlace(Workbook book, Step mark) {
    return mark.work(Work.OfMark.class).stream()
        .anyMatch(
            work ->
                book.sized().seams().stream()
                    .flatMap(Workbook::places)
                    .anyMatch(
                        place ->
                            place.piece().equals(work.piece())
                                && place.edge().equals(work.mark())));
  }

  static boolean isButton(Step step) {
    return step.act() instanceof Act.Fasten fasten && fasten.kind() == Act.Fastening.BUTTON;
  }

  static Step fastener(Workbook book, Act.Fastening kind, int count, String id) {
    Step any = book.steps().get(0);
    String piece = book.pattern().views().get(0).pieces().get(0);
    return Workbook.copy(
        any,
        id,
        new Act.Fasten(kind, count, Amount.mm(12)),
        List.of(new Work.OfPiece(piece, Optional.empty())),
        Sewing.NONE,
        Optional.empty(),
        List.of());
  }

  // --- openings
  // --------------------------------------------------------------------------------------

  static Stream<Step> closing(Workbook book) {
    return book.steps().stream()
        .filter(
            step ->
                step.act() instanceof Act.Close
                    || step.act() instanceof Act.InsertZip
                    || step.act() instanceof Act.HandSew)
        .filter(step -> !step.work(Work.OfOpening.class).isEmpty());
  }

  static Set<String> leaving(Workbook book, Step close) {
    return close.work(Work.OfOpening.class).stream()
        .flatMap(
            work ->
                book.steps().stream()
                    .filter(
                        step ->
                            step.leaves().stream()
                                .anyMatch(left -> left.name().equals(work.opening()))))
        .map(Step::id)
        .collect(Collectors.toSet());
  }

  static boolean opens(Step close, Step thread) {
    return thread.act() instanceof Act.ThreadThrough through
        && close.work().contains(new Work.OfOpening(through.opening()));
  }

  static boolean leaves(Step step, Step thread) {
    return thread.act() instanceof Act.ThreadThrough through
        && step.leaves().stream().anyMatch(left -> left.name().equals(through.opening()));
  }

  static Step narrowed(Step step) {
    return Workbook.copy(
        step,
        step.id(),
        step.act(),
        step.work(),
        step.sewing(),
        step.press(),
        step.leaves().stream()
            .map(left -> new Step.Opening(left.name(), Amount.mm(8), left.where()))
            .toList());
  }

  /** Whether it is the one fitting between the elastic's going in and its closing. */
  static boolean triesElastic(Workbook book, Step tryOn) {
    return book.acts(Act.ThreadThrough.class)
        .anyMatch(
            thread ->
                book.place(thread) < book.place(tryOn)
                    && closing(book)
                        .anyMatch(
                            close ->
                                opens(close, thread) && book.place(tryOn) < book.place(close)));
  }

  // --- pressing and stitches
  // -----------------------------------------------------------------------

  /**
   * Two legs whose inseams are pressed open, pressed to one side; and a turn of the allowances
   * beside each other, left out.
   */
  static Stream<SpoiltSteps> stacked(Workbook book) {
    Stream<SpoiltSteps> turned =
        book.acts(Act.Press.class)
            .filter(
                press ->
                    press.work(Work.OfEdge.class).stream()
                        .anyMatch(
                            work ->
                                book.seamsOf(work.piece(), work.edge()).stream()
                                    .flatMap(name -> book.sewn(name).stream())
                                    .anyMatch(sewn -> book.place(sewn) < book.place(press))))
            .map(
                press ->
                    book.spoilt(
                        "without " + press.id(),
                        book.without(press),
                        PRESSING,
                        book.steps().stream()
                            .filter(step -> book.place(step) > book.place(press))
                            .map(Step::id)
                            .collect(Collectors.toSet())));
    Stream<SpoiltSteps> legs =
        book.steps().stream()
            .filter(step -> step.press().filter(PressDirection.Open.class::isInstance).isPresent())
            .flatMap(
                step ->
                    step.work(Work.OfSeam.class).stream()
                        .flatMap(work -> book.seam(work.seam()).stream())
                        .filter(seam -> meetsItself(book, seam, step))
                        .map(
                            seam ->
                                book.spoilt(
                                    "to one side " + step.id(),
                                    book.with(
                                        step,
                                        Workbook.pressed(
                                            step,
                                            Optional.of(
                                                new PressDirection.Toward(
                                                    seam.joins()
                                                        .get(0)
                                                        .layers()
                                                        .get(0)
                                                        .run()
                                                        .get(0)
                                                        .piece(),
                                                    Optional.empty(),
                                                    PressDirection.Side.WRONG)))),
                                    PRESSING,
                                    book.crossing(seam, step).stream()
                                        .map(Step::id)
                                        .collect(Collectors.toSet()))));
    return Stream.concat(turned, legs);
  }

  static Set<String> pieces(Seam seam) {
    return Workbook.places(seam).map(EdgePlace::piece).collect(Collectors.toSet());
  }

  /** Whether a later seam joins a copy to its mirror where this seam ends on both. */
  static boolean meetsItself(Workbook book, Seam seam, Step after) {
    Set<String> own = pieces(seam);
    return own.size() > 1
        && seam.joins().size() > 1
        && seam.joins().stream().allMatch(join -> join.layers().size() == 2)
        && book.crossing(seam, after).stream()
            .flatMap(step -> step.work(Work.OfSeam.class).stream())
            .flatMap(work -> book.seam(work.seam()).stream())
            .filter(over -> !pieces(over).equals(own))
            .anyMatch(
                over ->
                    over.joins().stream()
                        .anyMatch(
                            join -> {
                              List<EdgePlace> places =
                                  join.layers().stream()
                                      .flatMap(layer -> layer.run().stream())
                                      .toList();
                              return places.size() == 2
                                  && places.get(0).piece().equals(places.get(1).piece())
                                  && places.get(0).edge().equals(places.get(1).edge())
                                  && !places.get(0).copy().equals(places.get(1).copy());
                            }));
  }

  /** Steps on knits that sew what goes round the body, or join two pieces. */
  static Stream<Step> mustStretch(Workbook book) {
    Stream<Step> seams =
        Stream.concat(book.sewing(), book.lines(Act.Line.TOPSTITCH))
            .filter(book::isKnit)
            .filter(
                step ->
                    step.work(Work.OfSeam.class).stream()
                        .flatMap(work -> book.seam(work.seam()).stream())
                        .anyMatch(seam -> !book.isPlaced(seam) && !book.isWithinOnePiece(seam)));
    Stream<Step> hems =
        book.acts(Act.Hem.class).filter(book::isKnit).filter(step -> !endsInPlaced(book, step));
    Stream<Step> closes =
        closing(book)
            .filter(step -> step.act() instanceof Act.Close && closesSeam(book, step))
            .filter(book::isKnit);
    return Stream.of(seams, hems, closes).flatMap(each -> each);
  }

  private static boolean closesSeam(Workbook book, Step close) {
    Set<String> leaving = leaving(book, close);
    return book.steps().stream()
        .filter(step -> leaving.contains(step.id()))
        .anyMatch(step -> !step.work(Work.OfSeam.class).isEmpty());
  }

  static Step beyond(Step step) {
    Sewing own = step.sewing();
    return Workbook.copy(
        step,
        step.id(),
        step.act(),
        step.work(),
        new Sewing(
            own.choices(),
            own.raw(),
            own.needle(),
            own.rows(),
            own.apart(),
            Optional.of(new Sewing.Distance(Amount.mm(90), own.distance().orElseThrow().from()))),
        step.press(),
        step.leaves());
  }

  // --- sewn for good, left, turned
  // ---------------------------------------------------------------

  /** Whether nothing else is sewn along the edges of a step's seams. */
  static boolean sewsForGood(Workbook book, Step step) {
    return !step.work(Work.OfSeam.class).isEmpty()
        && step.work(Work.OfSeam.class).stream()
            .flatMap(work -> book.seam(work.seam()).stream())
            .allMatch(
                seam ->
                    Workbook.places(seam)
                        .allMatch(place -> book.seamsOf(place.piece(), place.edge()).size() == 1));
  }

  /** Whether nothing shuts in what a hem turns. */
  static boolean liesOpen(Workbook book, Step hem) {
    return hem.work(Work.OfEdge.class).stream()
        .allMatch(work -> book.seamsOf(work.piece(), work.edge()).isEmpty());
  }

  /** Without any step that finishes the edges of a hem, which are left raw in its place. */
  static List<Step> leftRaw(Workbook book, Step hem) {
    Step raw =
        Workbook.copy(
            hem,
            "leave_it",
            new Act.LeaveRaw(Optional.empty()),
            hem.work(),
            Sewing.NONE,
            Optional.empty(),
            List.of());
    return book.with(hem, raw).stream()
        .filter(
            step ->
                !(step.act() instanceof Act.Finish)
                    || step.work().stream().noneMatch(hem.work()::contains))
        .toList();
  }

  /** Two seams sewn by two steps that have no piece in common, sewn in one pass. */
  static Stream<SpoiltSteps> strangers(Workbook book) {
    List<Step> single =
        book.acts(Act.Sew.class)
            .filter(step -> step.work().size() == 1 && step.work(Work.OfSeam.class).size() == 1)
            .filter(step -> step.leaves().isEmpty() && !placed(book, step))
            .toList();
    return single.stream()
        .flatMap(
            one ->
                single.stream()
                    .filter(other -> book.place(other) > book.place(one))
                    .filter(
                        other -> other.views().equals(one.views()) && isStranger(book, one, other))
                    .limit(1)
                    .map(
                        other ->
                            book.spoilt(
                                one.id() + " with " + other.id(),
                                together(book, one, other),
                                ORDER,
                                all(seams(one), seams(other)))));
  }

  private static boolean isStranger(Workbook book, Step one, Step other) {
    Set<String> own = new HashSet<>(piecesOf(book, one));
    return piecesOf(book, other).stream().noneMatch(own::contains);
  }

  private static List<Step> together(Workbook book, Step one, Step other) {
    Step both =
        Workbook.copy(
            one,
            one.id(),
            new Act.Sew(true),
            Stream.concat(one.work().stream(), other.work().stream()).toList(),
            one.sewing(),
            one.press(),
            List.of());
    return book.with(one, both).stream().filter(step -> !step.equals(other)).toList();
  }

  static Set<String> piecesOf(Workbook book, Step step) {
    return step.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .flatMap(seam -> pieces(seam).stream())
        .collect(Collectors.toSet());
  }

  /** Whether a later seam runs over an end of a step's seam, so that it is sewn flat. */
  static boolean liesFlat(Workbook book, Step step) {
    List<Step> sewing = book.sewing().toList();
    return step.work(Work.OfSeam.class).size() == 1
        && step.work(Work.OfSeam.class).stream()
            .flatMap(work -> book.seam(work.seam()).stream())
            .filter(seam -> !book.isPlaced(seam) && !book.isWithinOnePiece(seam))
            .filter(
                seam ->
                    Workbook.places(seam)
                        .allMatch(place -> place.from().isEmpty() && place.to().isEmpty()))
            .anyMatch(seam -> book.crossing(seam, step).stream().anyMatch(sewing::contains));
  }

  // --- fastening and turning
  // ---------------------------------------------------------------------

  static Stream<Step> fastened(Workbook book, Act.Fastening kind) {
    return book.acts(Act.Fasten.class).filter(step -> ((Act.Fasten) step.act()).kind() == kind);
  }

  /** Whether something folds, fuses or turns a piece that is fastened. */
  static boolean isLayered(Workbook book, Step step) {
    return Stream.of(
            book.acts(Act.Fold.class),
            book.acts(Act.Fuse.class),
            book.handled(Act.Handling.TURN_OUT))
        .flatMap(each -> each)
        .anyMatch(other -> other.work().stream().anyMatch(step.work()::contains));
  }

  /** Whether there are as many buttons as buttonholes. */
  static boolean isCountedOut(Workbook book) {
    return count(book, Act.Fastening.BUTTON) == count(book, Act.Fastening.BUTTONHOLE);
  }

  private static int count(Workbook book, Act.Fastening kind) {
    return fastened(book, kind).mapToInt(step -> ((Act.Fasten) step.act()).count()).sum();
  }

  static boolean isTurnedLater(Workbook book, Step fold) {
    return !turnsOf(book, fold).isEmpty();
  }

  /** The steps that turn out what a step folds. */
  static Set<String> turnsOf(Workbook book, Step fold) {
    return book.handled(Act.Handling.TURN_OUT)
        .filter(turn -> turn.work().stream().anyMatch(fold.work()::contains))
        .map(Step::id)
        .collect(Collectors.toSet());
  }

  /** A bag that is turned through an opening. */
  record Turning(Step leave, Step turn, Step close) {}

  /** Those whose opening leads to nothing but the bag. */
  static Stream<Turning> turnings(Workbook book) {
    return book.handled(Act.Handling.TURN_OUT)
        .flatMap(
            turn ->
                closing(book)
                    .filter(close -> book.place(close) > book.place(turn))
                    .flatMap(
                        close ->
                            book.steps().stream()
                                .filter(step -> leaving(book, close).contains(step.id()))
                                .filter(
                                    step ->
                                        turn.work(Work.OfPiece.class).stream()
                                            .map(Work.OfPiece::piece)
                                            .collect(Collectors.toSet())
                                            .equals(piecesOf(book, step)))
                                .map(leave -> new Turning(leave, turn, close))));
  }

  static List<Step> without(Workbook book, Turning turning) {
    Step shut =
        Workbook.copy(
            turning.leave(),
            turning.leave().id(),
            turning.leave().act(),
            turning.leave().work(),
            turning.leave().sewing(),
            turning.leave().press(),
            List.of());
    return book.with(turning.leave(), shut).stream()
        .filter(step -> !step.equals(turning.close()))
        .toList();
  }

  // --- elastics elsewhere
  // ------------------------------------------------------------------------

  /** With an elastic joined and sewn on before anything else. */
  static List<Step> ringFirst(Workbook book, Step apply) {
    List<Step> joins =
        book.acts(Act.JoinEnds.class)
            .filter(join -> apply.work().contains(join.work().get(0)))
            .toList();
    List<Step> all = new ArrayList<>(joins);
    all.add(apply);
    book.steps().stream().filter(step -> !all.contains(step)).forEach(all::add);
    return all;
  }

  /** A step that sews a seam without the piece that holds an elastic, before it goes in. */
  static Optional<Step> elsewhere(Workbook book, Step step) {
    Set<String> holding =
        book.sized().elastics().stream()
            .map(elastic -> elastic.piece())
            .collect(Collectors.toSet());
    return book.sewing()
        .filter(other -> book.place(other) < book.place(step) && other.leaves().isEmpty())
        .filter(other -> other.act() instanceof Act.Sew && !placed(book, other))
        .filter(other -> piecesOf(book, other).stream().noneMatch(holding::contains))
        .filter(other -> holdsElastic(book, step))
        .findFirst();
  }

  static boolean holdsElastic(Workbook book, Step step) {
    String name =
        step.act() instanceof Act.FormCasing casing ? casing.holds() : step.work().get(0).text();
    return book.sized().elastics().stream().anyMatch(elastic -> elastic.name().equals(name));
  }

  static List<Step> through(Workbook book, Step thread, Step other) {
    Step slit =
        Workbook.copy(
            other,
            other.id(),
            other.act(),
            other.work(),
            other.sewing(),
            other.press(),
            List.of(new Step.Opening("slit", Amount.mm(60), Optional.empty())));
    Step drawn = Workbook.acting(thread, new Act.ThreadThrough("slit"));
    return book.steps().stream()
        .map(step -> step.equals(other) ? slit : step.equals(thread) ? drawn : step)
        .toList();
  }

  /** The slits that a zip closes, as the document names them. */
  static Set<String> zipped(Workbook book) {
    return book.sized().pieces().stream()
        .flatMap(
            piece ->
                piece.bodyOpenings().stream()
                    .filter(
                        opening ->
                            opening
                                .closure()
                                .filter(closure -> closure.kind() == BodyOpening.Kind.ZIP)
                                .isPresent())
                    .map(opening -> piece.name() + "." + opening.edge()))
        .collect(Collectors.toSet());
  }

  static boolean closesByZip(Workbook book) {
    return !zipped(book).isEmpty();
  }

  // --- other settings
  // ----------------------------------------------------------------------------

  static Step leaving(Step step, double length) {
    Step.Opening left = step.leaves().get(0);
    return Workbook.copy(
        step,
        step.id(),
        step.act(),
        step.work(),
        step.sewing(),
        step.press(),
        List.of(new Step.Opening(left.name(), Amount.mm(length), left.where())));
  }

  static Step at(Step step, double mm, Sewing.Distance.From from) {
    Sewing own = step.sewing();
    return Workbook.sewn(
        step,
        new Sewing(
            own.choices(),
            own.raw(),
            own.needle(),
            own.rows(),
            own.apart(),
            Optional.of(new Sewing.Distance(Amount.mm(mm), from))));
  }

  static Step rows(Step step, double apart) {
    Sewing own = step.sewing();
    return Workbook.sewn(
        step,
        new Sewing(
            own.choices(),
            own.raw(),
            own.needle(),
            2,
            Optional.of(Amount.mm(apart)),
            own.distance()));
  }

  static Step needle(Step step) {
    Sewing own = step.sewing();
    Needle leather = new Needle(Needle.Point.LEATHER, 90, 90, false, Optional.empty());
    return Workbook.sewn(
        step,
        new Sewing(
            own.choices(),
            own.raw(),
            Optional.of(leather),
            own.rows(),
            own.apart(),
            own.distance()));
  }

  static double allowance(Workbook book, Work.OfEdge work) {
    return book.sized().piece(work.piece()).stream()
        .flatMap(piece -> piece.edge(work.edge()).stream())
        .mapToDouble(edge -> edge.allowance().width())
        .sum();
  }

  static List<Step> byEdgeFirst(Workbook book, Step cut) {
    List<Work> edges =
        cut.work(Work.OfSeam.class).stream()
            .flatMap(work -> book.seam(work.seam()).stream())
            .flatMap(Workbook::places)
            .map(place -> new Work.OfEdge(place.piece(), Optional.empty(), place.edge()))
            .distinct()
            .map(Work.class::cast)
            .toList();
    List<Step> all = new ArrayList<>(book.without(cut));
    all.add(0, Workbook.dealing(cut, edges));
    return all;
  }

  /** Whether a facing that a step understitches is sewn down by hand. */
  static boolean isSewnDown(Workbook book, Step understitch) {
    Set<String> pieces = piecesOf(book, understitch);
    return book.acts(Act.HandSew.class)
        .flatMap(step -> step.work(Work.OfEdge.class).stream())
        .anyMatch(work -> pieces.contains(work.piece()));
  }

  /** The steps that sew what is understitched, and press it. */
  static Stream<Step> understitched(Workbook book) {
    return book.lines(Act.Line.UNDERSTITCH)
        .flatMap(step -> step.work(Work.OfSeam.class).stream())
        .flatMap(work -> book.sewn(work.seam()).stream())
        .filter(step -> step.press().isPresent());
  }

  static boolean isTopstitched(Workbook book, Step sewn) {
    return book.lines(Act.Line.TOPSTITCH)
            .anyMatch(line -> sewn.work().stream().anyMatch(line.work()::contains))
        && book.handled(Act.Handling.TURN_OUT)
            .flatMap(turn -> turn.work(Work.OfPiece.class).stream())
            .noneMatch(work -> piecesOf(book, sewn).contains(work.piece()))
        && book.acts(Act.Finish.class)
            .noneMatch(
                finish ->
                    finish.press().isPresent()
                        && finish.work().stream().anyMatch(sewn.work()::contains));
  }

  /** A step that presses a seam to the other side than a step does. */
  static Optional<Step> otherSide(Workbook book, Step step) {
    if (!(step.press().orElse(null) instanceof PressDirection.Toward toward)
        || step.work(Work.OfSeam.class).size() != 1
        || step.work().size() != 1) {
      return Optional.empty();
    }
    Seam seam = book.seam(step.work(Work.OfSeam.class).get(0).seam()).orElseThrow();
    return seam.joins().get(0).layers().stream()
        .flatMap(layer -> layer.run().stream())
        .filter(place -> seam.joins().get(0).layers().size() == 2)
        .filter(place -> !place.piece().equals(toward.piece()))
        .filter(place -> pieces(seam).contains(toward.piece()))
        .findFirst()
        .map(
            place ->
                Workbook.copy(
                    step,
                    "press_back",
                    new Act.Press(),
                    step.work(),
                    Sewing.NONE,
                    Optional.of(
                        new PressDirection.Toward(
                            place.piece(), Optional.empty(), PressDirection.Side.WRONG)),
                    List.of()));
  }

  /** Whether what is cut into bends one way: it has no darts. */
  static boolean isPlainCurve(Workbook book, Step cut) {
    return cut.work(Work.OfSeam.class).stream()
        .flatMap(work -> book.seam(work.seam()).stream())
        .flatMap(Workbook::places)
        .allMatch(
            place ->
                book.sized().piece(place.piece()).stream()
                    .flatMap(piece -> piece.intakes().stream())
                    .noneMatch(intake -> intake.edge().equals(place.edge())));
  }

  static Step otherCut(Step step) {
    Act.CutInto cut = (Act.CutInto) step.act();
    Act.Cutting other = cut.kind() == Act.Cutting.CLIP ? Act.Cutting.NOTCH : Act.Cutting.CLIP;
    return Workbook.acting(step, new Act.CutInto(other, cut.to()));
  }

  /** A piece that no interfacing is cut for. */
  static Optional<String> bare(Workbook book) {
    return book.sized().pieces().stream()
        .filter(piece -> piece.card().cuts().size() == 1)
        .map(Piece::name)
        .findFirst();
  }
}
