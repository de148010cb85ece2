package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.paper.label.Room;
import org.hemwright.paper.label.TextBlock;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.words.AllowanceWords;
import org.hemwright.paper.words.PieceWords;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.Check;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.SizedPattern;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Place;
import org.hemwright.pattern.piece.Mark;
import org.hemwright.pattern.piece.Piece;

/**
 * The designer's own words find room on the piece in the smallest size that it has: those beside a
 * mark on one line, a long title with what stands below it. A piece too small for any label has it
 * beside, which is no fault.
 *
 * @param most words beside a mark are no longer than this when set (mm); common practice, no source
 * @param titleFrom titles of fewer letters are not looked at
 */
public record WordsFitCheck(double most, int titleFrom) implements Check {
  /** The usual limits. */
  public static final WordsFitCheck USUAL = new WordsFitCheck(120, 40);

  private static final double LINE = 3.2;
  private static final double EDGE = 1.1;

  @Override
  public String id() {
    return "words-fit";
  }

  @Override
  public boolean asksOfParts() {
    return false;
  }

  @Override
  public List<Finding> check(SizeRun run) {
    List<Finding> findings = new ArrayList<>();
    Map<String, Piece> smallest = new LinkedHashMap<>();
    Map<String, String> sizes = new LinkedHashMap<>();
    for (SizedPattern sized : run.sizes()) {
      for (Piece piece : sized.pieces()) {
        Piece known = smallest.get(piece.name());
        if (known == null || area(piece) < area(known)) {
          smallest.put(piece.name(), piece);
          sizes.put(piece.name(), sized.size().name());
        }
      }
    }
    smallest.forEach(
        (name, piece) -> {
          List<String> size = List.of(sizes.getOrDefault(name, ""));
          marks(piece, size, findings);
          title(run, piece, size).ifPresent(findings::add);
        });
    return findings;
  }

  private static double area(Piece piece) {
    Box box = piece.stitchLine().path().bounds();
    return box.width() * box.height();
  }

  private void marks(Piece piece, List<String> size, List<Finding> findings) {
    for (Mark mark : piece.marks()) {
      Optional<String> text = text(mark);
      if (text.isPresent()) {
        double width = Face.REGULAR.set(text.get(), Canvas.POINTS).width();
        boolean fits = width <= most && fits(piece, width);
        if (!fits) {
          findings.add(
              Finding.warn("words-long", piece.name())
                  .sizes(size)
                  .with("piece", piece.name())
                  .with("words", shortened(text.get()))
                  .with("width", Argument.mm(width))
                  .values(width, Math.min(most, longest(piece)), "mm")
                  .at(Place.on(mark.origin(), piece.name(), point(mark)))
                  .build());
        }
      }
    }
  }

  /** Looks closely only where it is not plain at a glance. */
  private static boolean fits(Piece piece, double width) {
    double longest = longest(piece);
    if (width > longest) {
      return false;
    }
    Box box = piece.stitchLine().path().bounds();
    if (width < Math.min(box.width(), box.height()) / 3) {
      return true;
    }
    Room room = new Room(List.of(piece.stitchLine().path()));
    Point near = room.centre();
    return room.find(0, width, LINE, near).isPresent()
        || room.find(Math.PI / 2, width, LINE, near).isPresent();
  }

  private static double longest(Piece piece) {
    Box box = piece.stitchLine().path().bounds();
    return Math.max(box.width(), box.height()) - 2 * EDGE;
  }

  private static Optional<String> text(Mark mark) {
    if (mark instanceof Mark.Drill drill) {
      return drill.text();
    } else if (mark instanceof Mark.Inner inner) {
      return inner.text();
    } else if (mark instanceof Mark.Placement placement) {
      return placement.text();
    }
    return mark instanceof Mark.Label label ? Optional.of(label.text()) : Optional.empty();
  }

  private static Point point(Mark mark) {
    if (mark instanceof Mark.Drill drill) {
      return drill.at();
    } else if (mark instanceof Mark.Inner inner) {
      return middle(inner.path());
    } else if (mark instanceof Mark.Placement placement) {
      return middle(placement.path());
    }
    return ((Mark.Label) mark).at();
  }

  private static Point middle(Path path) {
    return path.at(path.length() / 2).point();
  }

  /** A long title that alone keeps the label off the piece. */
  private Optional<Finding> title(SizeRun run, Piece piece, List<String> size) {
    String title = piece.card().title();
    if (title.length() < titleFrom) {
      return Optional.empty();
    }
    List<String> allowances = AllowanceWords.of(Speech.of(run), Map.of(size.get(0), piece));
    PieceWords words =
        PieceWords.of(run, piece.card(), size, allowances, run.pattern().isCutWhole(piece.card()));
    PieceWords brief =
        new PieceWords(
            words.number(),
            title.substring(0, titleFrom / 2),
            words.design(),
            words.facts(),
            words.foot());
    Room room = new Room(List.of(piece.stitchLine().path()));
    if (stands(room, words) || !stands(room, brief)) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warn("title-long", piece.name())
            .sizes(size)
            .with("piece", piece.name())
            .with("words", shortened(title))
            .with("count", Argument.of(title.length()))
            .values(title.length(), titleFrom, "")
            .at(piece.card().origin())
            .build());
  }

  private static boolean stands(Room room, PieceWords words) {
    List<TextBlock> blocks = new ArrayList<>(PieceLabel.blocks(words));
    blocks.addAll(PieceLabel.strips(words));
    Point near = room.centre();
    return blocks.stream()
        .anyMatch(
            block ->
                room.find(0, block.width(), block.height(), near).isPresent()
                    || room.find(Math.PI / 2, block.width(), block.height(), near).isPresent());
  }

  private static String shortened(String text) {
    int most = 40;
    return text.length() <= most ? text : text.substring(0, most) + "…";
  }
}
