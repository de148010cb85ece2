package org.hemwright.booklet.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.words.Slots;
import org.hemwright.booklet.words.Telling;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Clip;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.style.Inks;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Step;
import org.hemwright.pattern.make.Work;

/**
 * The figure of a step: on the left the pieces as they lie, on the right a close-up of what is
 * done.
 */
public final class StepFigures {
  private static final double WIDE = 168;
  private static final double WIDEST_SCENE = 102;
  private static final double SMALL_SCENE = 52;
  private static final double BETWEEN = 2;

  /** How high a drawing of several rows may be on paper (mm). */
  private static final double ROWS_HIGH = 76;

  private static final Pen WINDOW = Pen.solid(0.2, Inks.QUIET);

  private final StepScene table;
  private boolean rows;

  private StepFigures(StepScene table) {
    this.table = table;
  }

  /**
   * The figure of a step.
   *
   * @param title of the step, for its alt text
   */
  public static Optional<Figure> of(Telling telling, Step step, List<Inline> title) {
    return new StepFigures(StepScene.of(telling, step)).figure(title);
  }

  private Optional<Figure> figure(List<Inline> title) {
    if (table.step().act() instanceof Act.LeaveRaw) {
      return Optional.empty(); // There is nothing to do, and nothing to see.
    }
    List<CloseUp> close = CloseUps.of(table.telling(), table.step());
    if (needsTable(close)) {
      draw();
    }
    if (table.scene().isEmpty() && close.isEmpty()) {
      return Optional.empty();
    }
    double taken = close.size() * (CloseUp.WIDE + BETWEEN);
    double sceneWide = close.size() == 2 ? CloseUp.WIDE : Math.min(WIDE - taken, WIDEST_SCENE);
    boolean below = close.size() == 2 && !table.scene().isEmpty();
    List<Item> items = new ArrayList<>();
    double left = 0;
    double high = CloseUp.HIGH;
    if (!table.scene().isEmpty()) {
      boolean several = rows && close.isEmpty();
      Box paper =
          table
              .scene()
              .paper(
                  below ? SMALL_SCENE : several ? WIDE * 0.8 : sceneWide,
                  several ? ROWS_HIGH : CloseUp.HIGH);
      if (!close.isEmpty()) {
        double down = (CloseUp.HIGH - paper.height()) / 2;
        paper = new Box(0, down, paper.width(), down + paper.height());
      } else {
        high = paper.height();
      }
      items.add(new Clip(paper, table.scene().within(paper)));
      left = paper.width() + BETWEEN;
    }
    for (CloseUp each : close) {
      Box window = new Box(left, 0, left + CloseUp.WIDE, CloseUp.HIGH);
      List<Item> moved =
          each.items().stream().map(item -> item.moved(new Vector(window.minX(), 0))).toList();
      items.add(new Clip(window, moved));
      items.add(Draw.line(window.outline().path(), WINDOW));
      left = window.maxX() + BETWEEN;
    }
    return Optional.of(
        new Figure(
            "step-" + table.step().id(),
            new Sheet(new Box(-0.5, -0.5, left - BETWEEN + 0.5, high + 0.5), items),
            alt(title, close),
            List.of()));
  }

  /** Whether the pieces are shown beside the close-up: not where only an elastic is handled. */
  private boolean needsTable(List<CloseUp> close) {
    boolean elastics =
        !table.step().work().isEmpty()
            && table.step().work().stream()
                .allMatch(work -> work instanceof Work.OfElastic || work instanceof Work.OfOpening);
    return close.isEmpty() || !elastics;
  }

  private String alt(List<Inline> title, List<CloseUp> close) {
    List<List<Inline>> pieces = table.shown().stream().map(table.telling()::piece).toList();
    Slots named = Slots.of("title", List.of(new Inline.Own(Inline.plain(title))));
    StringBuilder text = new StringBuilder(Inline.plain(table.telling().say("figure.alt", named)));
    if (!pieces.isEmpty()) {
      Slots listed = Slots.of("pieces", table.telling().words().listed(pieces));
      text.append(' ').append(Inline.plain(table.telling().say("figure.shows", listed)));
    }
    close.forEach(each -> text.append(' ').append(each.alt()));
    return text.toString();
  }

  private void draw() {
    List<Work.OfSeam> seams = table.step().work(Work.OfSeam.class);
    PieceScene pieces = new PieceScene(table);
    if (table.step().act() instanceof Act.Fold fold) {
      table.step().work(Work.OfPiece.class).forEach(piece -> pieces.fold(piece, fold));
    } else if (!seams.isEmpty()) {
      table.telling().seam(seams.get(0).seam()).ifPresent(new SeamScene(table)::draw);
    } else {
      rows = pieces.draw();
    }
  }
}
