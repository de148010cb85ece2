package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.List;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.nest.Signs;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.sheet.Raster;
import org.hemwright.paper.sheet.Subject;
import org.hemwright.paper.style.House;
import org.hemwright.paper.style.Inks;
import org.hemwright.paper.style.Pens;
import org.hemwright.paper.style.SizeStyle;
import org.hemwright.paper.style.SizeStyles;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.HouseType;
import org.hemwright.paper.type.SetLine;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.body.Size;

/**
 * What the maker reads first: title, test squares, how to print, and the key to lines and signs. It
 * fills a frame of {@link #WIDTH} by {@link #HEIGHT}, counted from its upper left corner.
 */
final class KeyPanel {
  /** Its width and the most it reaches down (mm). */
  static final double WIDTH = 190;

  static final double HEIGHT = 254;

  /** The sides of the test squares, outside edge to outside edge (mm): 10 cm and 1 in. */
  static final double TEN_CENTIMETRES = 100;

  static final double ONE_INCH = 25.4;

  private static final double TITLE = 34;
  private static final double TEXT = 10;
  private static final double SMALL = 9;
  private static final double COLUMN = 112;
  private static final double HALF = WIDTH / 2 + 2;
  private static final double ROW = 8.2;
  private static final double SAMPLE = 24;

  /** The room of the logo, above the title. */
  private static final double LOGO_WIDTH = 60;

  private static final double LOGO_HEIGHT = 11;
  private static final double LOGO_FOOT = 12;

  private final Leaf leaf;
  private final Speech speech;
  private final KeyFacts facts;

  private final House shown;

  private KeyPanel(Leaf leaf, Speech speech, KeyFacts facts, House house) {
    this.leaf = leaf;
    this.speech = speech;
    this.facts = facts;
    this.shown = house;
  }

  /**
   * Sets the panel on a leaf.
   *
   * @param house whose logo stands before its name, and whose fonts it is set in
   */
  static void draw(Leaf leaf, Speech speech, KeyFacts facts, House house) {
    KeyPanel panel = new KeyPanel(leaf, speech, facts, house);
    double down = panel.head();
    down = panel.squares(down);
    down = panel.signs(down);
    panel.sizes(down);
  }

  private double head() {
    HouseType type = shown.type();
    double house = 0;
    if (shown.logo().isPresent()) {
      Raster raster = shown.logo().get();
      double scale = Math.min(LOGO_WIDTH / raster.width(), LOGO_HEIGHT / raster.height());
      double height = raster.height() * scale;
      leaf.picture(raster, 0, LOGO_FOOT - height, raster.width() * scale, height);
      house = raster.width() * scale + 4;
    }
    leaf.line(house, 10, type.line(speech.details().by(), 11));
    String title = speech.details().title();
    leaf.line(0, 24, type.title(title, titlePoints(title)));
    String version = "Version " + speech.details().version() + ", " + speech.date();
    SetLine told = type.line(version, 11);
    leaf.line(WIDTH - told.width(), 10, told);
    facts.view().ifPresent(view -> leaf.wordsBefore(WIDTH, 17, view, Face.REGULAR, 11));
    leaf.wordsBefore(WIDTH, 24, facts.sizes(), Face.REGULAR, 11);
    leaf.rule(0, 29, WIDTH, Pens.SIGN);
    return 36;
  }

  /** As large as leaves room for what stands at the right. */
  private double titlePoints(String title) {
    double right = Face.REGULAR.set(facts.sizes(), 11).width();
    if (facts.view().isPresent()) {
      right = Math.max(right, Face.REGULAR.set(facts.view().get(), 11).width());
    }
    double points = TITLE;
    while (points > SMALL && shown.type().title(title, points).width() > WIDTH - right - 6) {
      points -= 1;
    }
    return points;
  }

  private double squares(double top) {
    leaf.frame(0, top, TEN_CENTIMETRES, TEN_CENTIMETRES, Pens.SIGN);
    double middle = top + TEN_CENTIMETRES / 2;
    leaf.wordsAbout(
        TEN_CENTIMETRES / 2, middle - 1.5, "10 cm × 10 cm", Face.SEMIBOLD, 14, Inks.BLACK);
    leaf.wordsAbout(
        TEN_CENTIMETRES / 2,
        middle + 4.5,
        "from outside edge to outside edge",
        Face.REGULAR,
        TEXT,
        Inks.BLACK);
    leaf.frame(COLUMN, top, ONE_INCH, ONE_INCH, Pens.SIGN);
    leaf.words(COLUMN + ONE_INCH + 4, top + 11.5, "1 in × 1 in", Face.SEMIBOLD, 14);
    leaf.text(
        COLUMN + ONE_INCH + 4,
        top + 17.5,
        "from\u00a0outside\u00a0edge to\u00a0outside\u00a0edge",
        Face.REGULAR,
        TEXT,
        WIDTH - COLUMN - ONE_INCH - 4);
    double down = top + ONE_INCH + 9;
    leaf.words(COLUMN, down, "Before you print", Face.SEMIBOLD, 12);
    down += 6;
    for (String paragraph : facts.advice()) {
      down = leaf.text(COLUMN, down, paragraph, Face.REGULAR, TEXT, WIDTH - COLUMN) + 6.2;
    }
    return Math.max(top + TEN_CENTIMETRES, down - 6.2) + 10;
  }

  private double signs(double top) {
    leaf.words(0, top, "Lines and signs", Face.SEMIBOLD, 12);
    List<Entry> entries = entries();
    int rows = (entries.size() + 1) / 2;
    double start = top + 7;
    for (int i = 0; i < entries.size(); i++) {
      double x = i < rows ? 0 : HALF;
      double down = start + (i % rows) * ROW;
      leaf.add(entries.get(i).sample().at(x, down - 1.1));
      leaf.words(x + SAMPLE + 5, down, entries.get(i).text(), Face.REGULAR, SMALL);
    }
    return start + rows * ROW + 4;
  }

  private void sizes(double top) {
    if (facts.styles().isPresent() && facts.styles().get().sizes().size() > 1) {
      leaf.words(0, top, "Sizes", Face.SEMIBOLD, 12);
      List<Size> sizes = facts.styles().get().sizes();
      int rows = (sizes.size() + 2) / 3;
      for (int i = 0; i < sizes.size(); i++) {
        int column = i / rows;
        double x = column * (WIDTH / 3 + 2);
        double down = top + 7 + (i % rows) * 6.4;
        sizeSample(leaf, x, down, SAMPLE + 10, facts.styles().get(), sizes.get(i));
        leaf.words(x + SAMPLE + 14, down, "Size " + sizes.get(i).name(), Face.REGULAR, SMALL);
      }
      return;
    }
    boolean choice = !facts.views().isEmpty();
    if (!facts.contents().isEmpty()) {
      list(0, top, choice ? HALF - 8 : WIDTH, "In this file", facts.contents());
    }
    if (choice) {
      list(HALF, top, WIDTH - HALF, "Views", facts.views());
    }
  }

  private void list(double x, double top, double width, String head, List<String> lines) {
    leaf.words(x, top, head, Face.SEMIBOLD, 12);
    double down = top + 6;
    for (String line : lines) {
      down = leaf.text(x, down, line, Face.REGULAR, TEXT, width) + 5;
    }
  }

  /** A size's line with its name set in it, as it runs on the pieces. */
  static void sizeSample(
      Leaf leaf, double x, double down, double length, SizeStyles styles, Size size) {
    SizeStyle style = styles.of(size);
    double name = Face.SEMIBOLD.set(size.name(), SMALL).width();
    double middle = x + length / 2;
    double gap = name / 2 + 1.3;
    leaf.line(x, down - 1.1, middle - gap, down - 1.1, style.cut());
    leaf.line(middle + gap, down - 1.1, x + length, down - 1.1, style.cut());
    leaf.wordsAbout(middle, down, size.name(), Face.SEMIBOLD, SMALL, style.ink());
  }

  /** A sample drawn with its left end at a place. */
  private interface Sample {
    List<Inked> at(double x, double down);
  }

  private record Entry(Sample sample, String text) {}

  private List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    boolean nest = facts.nested();
    entries.add(
        new Entry(line(Pens.CUT), nest ? "Cut, in all the sizes named on the line" : "Cut here"));
    if (nest) {
      Pen one = new Pen(Pens.CUT.width(), List.of(9.0, 1.5, 0.7, 1.5), Inks.ramp(0.4));
      entries.add(new Entry(line(one), "Cut, in the one size named on the line"));
    }
    if (facts.has(KeyFacts.Sign.STITCH)) {
      entries.add(new Entry(line(Pens.STITCH), "Sew here"));
    }
    if (facts.has(KeyFacts.Sign.HEM)) {
      entries.add(new Entry(line(Pens.HEM_FOLD), "Fold the hem back here"));
    }
    if (facts.has(KeyFacts.Sign.FOLD)) {
      entries.add(
          new Entry(
              (x, down) -> {
                List<Inked> all = new ArrayList<>(line(Pens.FOLD).at(x, down + 2));
                all.addAll(
                    signs().fold(point(x + 3, down + 2), point(x + SAMPLE - 3, down + 2), UP, 4));
                return all;
              },
              "Edge on the fold of the " + speech.cloth()));
    }
    entries.add(
        new Entry(
            (x, down) -> signs().grain(point(x, down), point(x + SAMPLE, down), facts.oneWay()),
            facts.oneWay()
                ? "Grain, along the selvedge, all pieces one way"
                : "Grain, along the selvedge"));
    if (facts.has(KeyFacts.Sign.STRETCH)) {
      entries.add(
          new Entry(
              (x, down) -> signs().stretch(point(x, down), point(x + SAMPLE, down)),
              "The way the " + speech.cloth() + " must stretch most"));
    }
    if (facts.has(KeyFacts.Sign.NOTCH)) {
      entries.add(
          new Entry(
              (x, down) -> {
                List<Inked> all = new ArrayList<>(line(Pens.CUT).at(x, down + 2));
                double middle = x + SAMPLE / 2;
                all.add(signs().notch(point(middle - 6, down + 2), point(middle - 6, down - 2)));
                all.add(signs().notch(point(middle + 4, down + 2), point(middle + 4, down - 2)));
                all.add(signs().notch(point(middle + 8, down + 2), point(middle + 8, down - 2)));
                return all;
              },
              "Notches, single and double: like meets like"));
    }
    if (facts.has(KeyFacts.Sign.LENGTHEN)) {
      entries.add(
          new Entry(
              (x, down) -> {
                List<Inked> all = new ArrayList<>(line(Pens.LENGTHEN).at(x, down - 1.5));
                all.addAll(line(Pens.LENGTHEN).at(x, down + 1.5));
                return all;
              },
              "Lengthen or shorten here"));
    }
    if (facts.has(KeyFacts.Sign.SPLIT)) {
      entries.add(new Entry(line(Pens.SPLIT), "Cut apart where the piece's words say so"));
    }
    if (facts.has(KeyFacts.Sign.PLACEMENT)) {
      entries.add(new Entry(line(Pens.PLACEMENT), "Another piece lies here"));
    }
    if (facts.has(KeyFacts.Sign.INNER)) {
      entries.add(new Entry(line(Pens.INNER), "Line to mark, not to cut"));
    }
    if (facts.has(KeyFacts.Sign.LEVEL)) {
      entries.add(
          new Entry(
              (x, down) ->
                  List.of(
                      signs()
                          .line(
                              point(x + SAMPLE / 2 - 4.5, down),
                              point(x + SAMPLE / 2 + 4.5, down),
                              Pens.INNER)),
              "Height of that line of the body"));
    }
    if (facts.has(KeyFacts.Sign.DRILL)) {
      entries.add(
          new Entry(
              (x, down) -> signs().drill(point(x + SAMPLE / 2, down)),
              "Point to mark on the " + speech.cloth()));
    }
    if (facts.diamonds()) {
      entries.add(
          new Entry(
              (x, down) -> MatchMark.key(point(x + SAMPLE / 2, down)),
              "Pages meet here, number to number"));
    }
    return entries;
  }

  private static final Vector UP = new Vector(0, 1);

  private static Point point(double x, double down) {
    return new Point(x, -down);
  }

  private static Signs signs() {
    return Signs.common(Subject.NONE);
  }

  private static Sample line(Pen pen) {
    return (x, down) -> {
      Path path = Path.straight(point(x, down), point(x + SAMPLE, down));
      return List.of(signs().line(path.start(), path.end(), pen).in(pen));
    };
  }
}
