package org.hemwright.booklet.figure;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Telling;
import org.hemwright.pattern.make.Amount;
import org.hemwright.pattern.make.Sewing;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.make.Work;
import org.hemwright.pattern.piece.Edge;
import org.hemwright.pattern.piece.Intake;
import org.hemwright.pattern.quantity.LengthKind;
import org.hemwright.pattern.seam.EdgePlace;
import org.hemwright.pattern.seam.Seam;

/**
 * The step that a close-up shows, with its depths and distances in the drawn size.
 *
 * @param telling what is told, and in which words
 */
record ShownStep(Telling telling, Step step) {
  /** Where no edge of a seam has an allowance of its own, as of a patch (mm). */
  static final double USUAL_ALLOWANCE = 10;

  /** A length (mm); empty where none is said, or where it has no value in this size. */
  OptionalDouble mm(Optional<Amount> amount) {
    return amount.map(each -> each.in(telling.drawn().numbers())).orElse(OptionalDouble.empty());
  }

  /** How far the step says that it is stitched from an edge (mm), or what is usual. */
  double distance(double usual) {
    return mm(step.sewing().distance().map(Sewing.Distance::amount)).orElse(usual);
  }

  /** A length as a maker reads it. */
  String text(double mm, LengthKind kind) {
    return telling.words().lengthText(mm, kind);
  }

  /** The stitch that it is sewn in. */
  Stitch.Kind stitch() {
    return step.sewing().stitch().map(Stitch::kind).orElse(Stitch.Kind.STRAIGHT);
  }

  /** How wide the stitch is drawn (mm of paper). */
  double amplitude(double scale) {
    return Math.max(1.2, step.sewing().stitch().map(Stitch::widthOrUsual).orElse(2.5) * scale);
  }

  /** The first pass of the first seam that it sews. */
  Optional<Seam.Join> join() {
    return step.work(Work.OfSeam.class).stream()
        .findFirst()
        .flatMap(work -> telling.seam(work.seam()))
        .map(seam -> seam.joins().get(0));
  }

  private Optional<Edge> edge(EdgePlace place) {
    return telling.drawn().piece(place.piece()).flatMap(piece -> piece.edge(place.edge()));
  }

  /** The allowance of a seam (mm): that of its first edge that has one, or what is usual. */
  double allowance(Seam.Join join) {
    for (Seam.Layer layer : join.layers()) {
      Optional<Edge> edge = edge(layer.run().get(0));
      if (edge.isPresent() && edge.get().allowance().width() > 0) {
        return edge.get().allowance().width();
      }
    }
    return USUAL_ALLOWANCE;
  }

  /** The number of a piece, as its label has it. */
  String number(String piece) {
    return telling.card(piece).map(card -> Integer.toString(card.number())).orElse("");
  }

  /**
   * The scale at which a length (mm) fits into so much room on paper (mm), at most its true size.
   */
  static double scale(double mm, double room) {
    return mm <= room ? 1 : room / mm;
  }

  /** The first edge that it works on. */
  Optional<Edge> worked() {
    return step.work(Work.OfEdge.class).stream()
        .findFirst()
        .flatMap(
            work -> telling.drawn().piece(work.piece()).flatMap(piece -> piece.edge(work.edge())));
  }

  /** The first dart or pleat that it works on. */
  Optional<Intake> intake() {
    return step.work(Work.OfIntake.class).stream().findFirst().flatMap(telling::intake);
  }

  /** The rows of stitching, the first on the line, others towards the cut edge. */
  void rows(NearBy near, double line, double scale, double left, double right) {
    double apart = mm(step.sewing().apart()).orElse(2) * scale;
    for (int i = 0; i < step.sewing().rows(); i++) {
      near.stitch(stitch(), left, right, line + i * Math.max(1.2, apart), amplitude(scale));
    }
  }

  /**
   * What was put down, as a close-up.
   *
   * @param key of the sentence that says what it shows
   */
  Optional<CloseUp> closeUp(NearBy near, String key) {
    return Optional.of(new CloseUp(near.items(), Inline.plain(telling.say("close-up." + key))));
  }
}
