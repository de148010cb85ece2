package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Outline;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.label.TextBlock;
import org.hemwright.paper.label.TurnedBox;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.words.AllowanceWords;
import org.hemwright.paper.words.PieceWords;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.piece.Piece;

/**
 * One nest, drawn: everything the maker needs to cut this piece (handbook section 6).
 *
 * @param nest what is drawn
 * @param items in the order in which they are put down (mm; the stack point is the origin)
 * @param beside the label where it did not fit inside and stands beside the piece
 * @param findings words that found no room
 */
public record PieceDrawing(
    Nest nest, List<Inked> items, Optional<Beside> beside, List<Finding> findings) {
  /**
   * A label beside its piece.
   *
   * @param kept the paper kept for it: over twice its length along the piece, so that it finds a
   *     place there that no edge of a page crosses
   * @param box where it stands
   */
  public record Beside(TurnedBox kept, TurnedBox box) {}

  private static final double BESIDE_GAP = 7;
  private static final int BESIDE_STEPS = 20;
  private static final double DOT = 3;
  private static final double FAR_DOT = 60;
  private static final double BEHIND_EDGE = 6;

  public PieceDrawing {
    items = List.copyOf(items);
    findings = List.copyOf(findings);
  }

  /**
   * Draws a nest.
   *
   * @param stitchLines whether stitch lines are drawn
   */
  public static PieceDrawing of(SizeRun run, Nest nest, boolean stitchLines) {
    return of(run, nest, stitchLines, List.of());
  }

  /**
   * Draws a nest for pages.
   *
   * @param stitchLines whether stitch lines are drawn
   * @param seams where pages meet on it; words are set across them only where they must be
   */
  public static PieceDrawing of(SizeRun run, Nest nest, boolean stitchLines, List<Path> seams) {
    Speech speech = Speech.of(run);
    Canvas canvas = new Canvas(nest, seams);
    LineDrawing lines = new LineDrawing(nest, canvas);
    MarkDrawing marks = new MarkDrawing(nest, canvas, speech);
    lines.draw(stitchLines);
    marks.draw();
    canvas.draw(CutDrawing.of(nest, speech, canvas.lines(), seams));
    nest.shapes().forEach(shape -> canvas.keepOff(shape.cutLine()));
    marks.words();
    lines.words();
    PieceWords words =
        PieceWords.of(run, nest.card(), nest.sizeNames(), allowances(speech, nest), nest.whole());
    Optional<Beside> beside = label(nest, canvas, words);
    ArrowDrawing.draw(run, nest, canvas, speech);
    return new PieceDrawing(nest, canvas.items(), beside, canvas.findings());
  }

  private static List<String> allowances(Speech speech, Nest nest) {
    Map<String, Piece> pieces = new LinkedHashMap<>();
    nest.shapes().forEach(shape -> pieces.put(shape.size().name(), shape.piece()));
    return AllowanceWords.of(speech, pieces);
  }

  /** Sets the piece's words inside it, or beside it with a leader. */
  private static Optional<Beside> label(Nest nest, Canvas canvas, PieceWords words) {
    List<TextBlock> blocks = PieceLabel.blocks(words);
    List<TextBlock> small = blocks.subList(blocks.size() / 2, blocks.size());
    List<TextBlock> large = blocks.subList(0, blocks.size() / 2);
    List<TextBlock> strips = PieceLabel.strips(words);
    Point near = canvas.wide().centre();
    double up = Math.PI / 2;
    for (Room room : List.of(canvas.wideOnPages(), canvas.wide())) {
      boolean put =
          put(canvas, room, large, 0, near)
              || put(canvas, room, small, 0, near)
              || put(canvas, room, large, up, near)
              || put(canvas, room, small, up, near)
              || put(canvas, room, strips, 0, near)
              || put(canvas, room, strips, up, near);
      if (put) {
        return Optional.empty();
      }
    }
    canvas.beside(words.title());
    TextBlock block = small.get(0);
    TurnedBox kept = besideBox(nest.bounds(), block);
    TurnedBox box = clearOfPages(canvas, kept, block);
    List<Inked> items = new ArrayList<>(block.in(box, Layer.COMMON, canvas.subject()));
    items.addAll(leader(nest, canvas, box));
    canvas.overlay(items);
    return Optional.of(new Beside(kept, box));
  }

  private static boolean put(
      Canvas canvas, Room room, List<TextBlock> blocks, double angle, Point near) {
    for (TextBlock block : blocks) {
      Optional<TurnedBox> box = room.find(angle, block.width(), block.height(), near);
      if (box.isPresent()) {
        canvas.draw(block.in(box.get(), Layer.COMMON, canvas.subject()), box.get());
        return true;
      }
    }
    return false;
  }

  /** To the right of an upright piece, above a lying one. */
  private static TurnedBox besideBox(Box piece, TextBlock block) {
    if (piece.height() >= piece.width()) {
      return new TurnedBox(
          new Point(piece.maxX() + BESIDE_GAP, piece.centre().y() - twice(block.height()) / 2),
          0,
          block.width(),
          twice(block.height()));
    }
    return new TurnedBox(
        new Point(piece.centre().x() - twice(block.width()) / 2, piece.maxY() + BESIDE_GAP),
        0,
        twice(block.width()),
        block.height());
  }

  /** Room for a length on either side of a page's edge. */
  private static double twice(double length) {
    return 2 * (length + 2 * Canvas.NARROW);
  }

  /** The block's place in the paper kept for it: nearest to the middle, across no page's edge. */
  private static TurnedBox clearOfPages(Canvas canvas, TurnedBox kept, TextBlock block) {
    double acrossFree = (kept.width() - block.width()) / 2;
    double upFree = (kept.height() - block.height()) / 2;
    TurnedBox middle = block(kept, block, acrossFree, upFree);
    for (int i = 0; i <= BESIDE_STEPS; i++) {
      double share = (double) i / BESIDE_STEPS;
      for (double way : new double[] {1 - share, 1 + share}) {
        TurnedBox box = block(kept, block, acrossFree * way, upFree * way);
        if (!canvas.isAcrossPages(box)) {
          return box;
        }
      }
    }
    return middle;
  }

  private static TurnedBox block(TurnedBox kept, TextBlock block, double across, double up) {
    return new TurnedBox(kept.at(across, up), 0, block.width(), block.height());
  }

  private static List<Inked> leader(Nest nest, Canvas canvas, TurnedBox box) {
    Signs signs = Signs.common(canvas.subject());
    Point middle = insidePoint(nest, box.centre());
    Point inside = canvas.near(middle, 0, DOT, DOT, FAR_DOT).map(TurnedBox::centre).orElse(middle);
    Path way = Path.straight(inside, box.centre());
    Point end = inside;
    for (double share = 0; share <= 1; share += 0.01) {
      Point at = inside.toward(box.centre(), share);
      if (new Box(
              box.corner().x() - 2,
              box.corner().y() - 2,
              box.corner().x() + box.width() + 2,
              box.corner().y() + box.height() + 2)
          .contains(at)) {
        break;
      }
      end = at;
    }
    return end.isAt(inside) || way.length() == 0 ? List.of() : signs.leader(inside, end);
  }

  /** A point inside the smallest shape, a little behind its edge as seen from another point. */
  private static Point insidePoint(Nest nest, Point from) {
    Outline cut = nest.smallest().cut();
    Point edge = cut.path().nearest(from).point();
    for (double behind = BEHIND_EDGE; !edge.isAt(from) && behind >= 1; behind /= 2) {
      Point at = edge.plus(edge.minus(from).unit().times(behind));
      if (cut.contains(at)) {
        return at;
      }
    }
    return edge;
  }
}
