package org.hemwright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.Pattern;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.View;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.finding.Status;
import org.hemwright.pattern.measure.BodyEase;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;
import org.hemwright.pattern.quantity.Quantity;

/**
 * At each level that pieces name the garment goes round the body: a woven with ease, a knit without
 * using up more of its stretch than is comfortable (handbook sections 1, "Ease", and 4, "Required
 * stretch to wear"). Asked where the chart has the girth of that name; of openings too that have
 * the name of one, as a waist.
 */
record GirthEaseCheck(CheckSettings settings) implements EachSizeCheck {
  @Override
  public String id() {
    return "girth-ease";
  }

  @Override
  public List<Finding> check(SizedPattern sized, Pattern pattern) {
    List<Finding> findings = new ArrayList<>();
    for (View view : pattern.views()) {
      for (LevelRound round : LevelRound.of(view, sized, pattern)) {
        if (round.body().isPresent() && round.body().getAsDouble() > 0) {
          judge(round, pattern).ifPresent(findings::add);
        }
      }
      for (LevelRound round : LevelRound.openings(view, sized, pattern, settings)) {
        if (round.body().orElseThrow() > 0) {
          judge(round, pattern)
              .filter(finding -> !finding.code().equals("girth-large"))
              .ifPresent(findings::add);
        }
      }
    }
    return findings;
  }

  private Optional<Finding> judge(LevelRound round, Pattern pattern) {
    String level = round.level();
    List<Piece> pieces = round.pieces();
    BodyEase ease = new BodyEase(round.body().orElseThrow(), round.girth().girth());
    double stretch = round.stretch();
    WearLimits limits = settings.wear();
    double usable = stretch * limits.comfort();
    if (ease.finished() > ease.body() * limits.girthMost()) {
      return Optional.of(problem("girth-large", level, ease, pieces, usable, Status.WARN));
    }
    if (ease.stretchToWear() > usable + limits.rounding()) {
      Status status = ease.stretchToWear() > stretch ? Status.FAIL : Status.WARN;
      String code = stretch == 0 ? "girth-small" : "girth-stretched";
      return Optional.of(
          problem(code, level, ease, pieces, usable, stretch == 0 ? Status.FAIL : status));
    }
    boolean woven = pieces.stream().noneMatch(piece -> Cloth.isKnit(piece, pattern));
    return woven && ease.amount() < limits.easeWoven() - Tolerance.DRAWN_LENGTH
        ? Optional.of(problem("girth-tight", level, ease, pieces, usable, Status.WARN))
        : Optional.empty();
  }

  private Finding problem(
      String code, String level, BodyEase ease, List<Piece> pieces, double usable, Status status) {
    double least =
        code.equals("girth-tight")
            ? ease.body() + settings.wear().easeWoven()
            : code.equals("girth-large")
                ? ease.body() * settings.wear().girthMost()
                : ease.body() / (1 + usable);
    Finding.Builder finding =
        Finding.fail(code, "level " + level)
            .with("level", level)
            .with("pieces", Argument.of(pieces.stream().map(Piece::name).distinct().toList()))
            .with("finished", Argument.mm(ease.finished()))
            .with("body", Argument.mm(ease.body()))
            .with("needed", Argument.of(Quantity.ratio(ease.stretchToWear())))
            .with("usable", Argument.of(Quantity.ratio(usable)))
            .with("wanted", Argument.mm(least))
            .values(ease.finished(), least, "mm");
    for (Piece piece : pieces) {
      piece
          .edge(level)
          .filter(edge -> piece.openings().contains(edge.name()))
          .ifPresent(
              edge ->
                  finding.at(
                      Place.on(
                          edge.origin(),
                          piece.name(),
                          edge.path().at(edge.path().length() / 2).point())));
      piece.marks(Mark.Level.class).stream()
          .filter(mark -> mark.name().equals(level))
          .forEach(mark -> finding.at(Place.on(mark.origin(), piece.name(), mark.at())));
    }
    return finding.build().as(status);
  }
}
