package org.hemwright.paper.label;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Ink;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Layer;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;

/**
 * Words set in lines, with rules between them if wanted, measured from the block's upper left
 * corner.
 *
 * @param lines the lines and where each starts
 * @param rules horizontal rules
 * @param width of the widest line or rule (mm)
 * @param height from the top of the first capitals to the foot of the last line (mm)
 */
public record TextBlock(List<Placed> lines, List<Rule> rules, double width, double height) {
  public TextBlock {
    lines = List.copyOf(lines);
    rules = List.copyOf(rules);
  }

  /**
   * A line in the block.
   *
   * @param x from the block's left edge (mm)
   * @param down from the block's top to the baseline (mm)
   */
  public record Placed(SetLine line, Ink ink, double x, double down) {}

  /**
   * A rule in the block.
   *
   * @param x of its left end, from the block's left edge (mm)
   * @param down from the block's top (mm)
   * @param length to the right (mm)
   */
  public record Rule(double x, double down, double length, Pen pen) {}

  /** The block's ink, in a box of its own size or larger, at the box's upper left. */
  public List<Inked> in(TurnedBox box, Layer layer, Subject subject) {
    List<Inked> items = new ArrayList<>();
    for (Rule rule : rules) {
      Point from = box.at(rule.x(), box.height() - rule.down());
      Vector along = Vector.atAngle(box.angle()).times(rule.length());
      items.add(new Stroke(Path.straight(from, from.plus(along)), rule.pen(), layer, subject));
    }
    for (Placed placed : lines) {
      if (!placed.line().text().isEmpty()) {
        Point at = box.at(placed.x(), box.height() - placed.down());
        items.add(new Words(placed.line(), at, box.angle(), placed.ink(), layer, subject));
      }
    }
    return items;
  }

  /**
   * A text broken into lines no wider than a width (mm) where its words allow it.
   *
   * <p>Lines break at blanks only; what hangs together is written with no-break blanks (U+00A0).
   */
  public static List<SetLine> broken(String text, Face face, double points, double width) {
    List<SetLine> lines = new ArrayList<>();
    String run = "";
    for (String word : text.split(" ", -1)) {
      String longer = run.isEmpty() ? word : run + " " + word;
      if (!run.isEmpty() && face.set(longer, points).width() > width) {
        lines.add(face.set(run, points));
        run = word;
      } else {
        run = longer;
      }
    }
    lines.add(face.set(run, points));
    return List.copyOf(lines);
  }

  /** Collects lines downward. */
  public static final class Builder {
    private final List<Placed> lines = new ArrayList<>();
    private final List<Rule> rules = new ArrayList<>();
    private double down;
    private double width;

    /** A line below what is there; the first line's capitals touch the top. */
    public Builder line(SetLine line, Ink ink, double x) {
      double size = Face.mm(line.points());
      down += lines.isEmpty() && rules.isEmpty() ? line.capitalHeight() : size * Face.LEADING;
      lines.add(new Placed(line, ink, x, down));
      width = Math.max(width, x + line.width());
      return this;
    }

    /** A text below what is there, broken to a width. */
    public Builder text(String text, Face face, double points, Ink ink, double x, double widest) {
      for (SetLine line : broken(text, face, points, widest)) {
        line(line, ink, x);
      }
      return this;
    }

    /** Free space below what is there (mm). */
    public Builder space(double mm) {
      down += mm;
      return this;
    }

    /** A line at a height of its own choosing (mm from the top). */
    public Builder at(SetLine line, Ink ink, double x, double baseline) {
      lines.add(new Placed(line, ink, x, baseline));
      width = Math.max(width, x + line.width());
      return this;
    }

    /** How far down the last line's baseline is (mm). */
    public double down() {
      return down;
    }

    /** The block. */
    public TextBlock build() {
      double foot = down;
      for (Placed placed : lines) {
        foot = Math.max(foot, placed.down() + placed.line().descent());
      }
      return new TextBlock(lines, rules, width, foot);
    }
  }
}
