package org.hemwright.paper.nest;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.paper.label.TextBlock;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.SetLine;
import org.hemwright.paper.words.PieceWords;

/**
 * A piece's words set as blocks of several shapes, the finest first: a large figure beside the
 * title over a rule and the facts; smaller; and long low strips for narrow pieces. No words are
 * smaller than 9 points.
 */
final class PieceLabel {
  private static final double SMALLEST = 9;
  private static final double FIGURE_GAP = 3.5;
  private static final String BETWEEN = "\u00a0\u00a0|\u00a0 ";

  /** Sizes of figure, title and facts (pt), and the widest line (mm). */
  private record Setting(double figure, double title, double facts, double width) {}

  private static final List<Setting> SETTINGS =
      List.of(
          new Setting(46, 18, 10.5, 96),
          new Setting(46, 18, 10.5, 80),
          new Setting(40, 15, 10, 84),
          new Setting(40, 15, 10, 68),
          new Setting(34, 13, SMALLEST, 72),
          new Setting(34, 13, SMALLEST, 58),
          new Setting(30, 12, SMALLEST, 48),
          new Setting(28, 11, SMALLEST, 40));

  private static final double[] STRIPS = {110, 150, 200, 260, 340, 460};

  private PieceLabel() {}

  /** Blocks with a figure and a rule. */
  static List<TextBlock> blocks(PieceWords words) {
    List<TextBlock> blocks = new ArrayList<>();
    for (Setting setting : SETTINGS) {
      blocks.add(block(words, setting));
    }
    return blocks;
  }

  /** Long low blocks. */
  static List<TextBlock> strips(PieceWords words) {
    List<TextBlock> strips = new ArrayList<>();
    for (double width : STRIPS) {
      strips.add(strip(words, width));
    }
    return strips;
  }

  private static TextBlock block(PieceWords words, Setting setting) {
    SetLine figure = Face.LIGHT.set(words.number(), setting.figure());
    double column = figure.width() + FIGURE_GAP;
    List<SetLine> title =
        TextBlock.broken(words.title(), Face.SEMIBOLD, setting.title(), setting.width() - column);
    TextBlock.Builder block = new TextBlock.Builder();
    for (SetLine line : title) {
      block.line(line, Inks.BLACK, column);
    }
    block.text(
        words.design(),
        Face.REGULAR,
        setting.facts(),
        Inks.BLACK,
        column,
        setting.width() - column);
    block.at(figure, Inks.BLACK, 0, figure.capitalHeight());
    double head = Math.max(block.down(), figure.capitalHeight()) - block.down();
    block.space(head + Face.mm(setting.facts()) * 0.6);
    double rule = block.down();
    block.space(Face.mm(setting.facts()) * 0.25);
    for (String fact : words.facts()) {
      block.text(fact, Face.REGULAR, setting.facts(), Inks.BLACK, 0, setting.width());
    }
    block.space(Face.mm(setting.facts()) * 0.2);
    block.text(words.foot(), Face.ITALIC, SMALLEST, Inks.BLACK, 0, setting.width());
    TextBlock set = block.build();
    List<TextBlock.Rule> rules = List.of(new TextBlock.Rule(0, rule, set.width(), Pens.SIGN));
    return new TextBlock(set.lines(), rules, set.width(), set.height());
  }

  private static TextBlock strip(PieceWords words, double width) {
    TextBlock.Builder strip = new TextBlock.Builder();
    String head = words.number() + "\u00a0\u00a0" + words.title().replace(' ', '\u00a0');
    SetLine title = Face.SEMIBOLD.set(head, 12);
    strip.line(title, Inks.BLACK, 0);
    List<String> rest = new ArrayList<>();
    rest.add(words.design());
    rest.addAll(words.facts());
    rest.add(words.foot());
    String run = rest.get(0);
    for (String fact : rest.subList(1, rest.size())) {
      String longer = run + BETWEEN + fact;
      if (Face.REGULAR.set(longer, SMALLEST).width() > width) {
        strip.text(run, Face.REGULAR, SMALLEST, Inks.BLACK, 0, width);
        run = fact;
      } else {
        run = longer;
      }
    }
    return strip.text(run, Face.REGULAR, SMALLEST, Inks.BLACK, 0, width).build();
  }
}
