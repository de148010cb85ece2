package org.hemwright.paper.reprint;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.sheet.Clip;
import org.hemwright.paper.sheet.Fill;
import org.hemwright.paper.sheet.Hatch;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Picture;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.sheet.Stroke;
import org.hemwright.paper.sheet.Words;
import org.hemwright.paper.tile.PageName;

/**
 * The ink of one page within its frame, moved so that the frame's upper left corner is the origin.
 *
 * @param kind what the page shows
 * @param frame the part of the page that is looked at
 * @param items what shows in it
 */
record PageInk(PageName.Kind kind, Box frame, List<Inked> items) {
  /** Lines are looked at in steps of this length (mm). */
  private static final double STEP = 2;

  /** The ink of a page without its header, which stands above the frame. */
  static PageInk of(Sheet sheet, PageName.Kind kind) {
    Box frame = new Box(sheet.frame().minX(), sheet.frame().minY(), sheet.frame().maxX(), 0);
    List<Item> items = new ArrayList<>();
    if (!sheet.items().isEmpty() && sheet.items().get(0) instanceof Clip clip) {
      frame = clip.window();
      items.addAll(clip.items());
    } else {
      double top = frame.maxY();
      sheet.items().stream().filter(item -> item.bounds().maxY() <= top).forEach(items::add);
    }
    Vector move = new Vector(-frame.minX(), -frame.maxY());
    List<Inked> inked = new Sheet(frame, items).inked();
    return new PageInk(
        kind,
        new Box(0, -frame.height(), frame.width(), 0),
        inked.stream().map(item -> item.moved(move)).toList());
  }

  /** How two pages differ. */
  enum Difference {
    /** Nothing. */
    NONE,
    /** Words stand elsewhere. */
    PLACES,
    /** Lines or marks, or what words say. */
    SUBSTANCE
  }

  /**
   * What differs from another page.
   *
   * @param difference the worst of it
   * @param sizes the sizes whose ink differs; none for ink that all sizes share
   * @param shared whether ink that all sizes share differs
   */
  record Answer(Difference difference, Set<String> sizes, boolean shared) {}

  /**
   * Compares with another page.
   *
   * @param texts all that is written anywhere in either file in both versions
   */
  Answer against(PageInk other, Set<String> texts) {
    Found found = new Found();
    differing(this, other, texts, found);
    differing(other, this, texts, found);
    return new Answer(found.worst, found.sizes, found.shared);
  }

  private static final class Found {
    private Difference worst = Difference.NONE;
    private final Set<String> sizes = new LinkedHashSet<>();
    private boolean shared;

    void add(Inked item, Difference difference) {
      worst = difference.compareTo(worst) > 0 ? difference : worst;
      sizes.addAll(item.layer().sizes());
      shared |= item.layer().isCommon();
    }
  }

  private static void differing(PageInk one, PageInk other, Set<String> texts, Found found) {
    for (int i = 0; i < one.items.size(); i++) {
      Inked item = one.items.get(i);
      boolean same = i < other.items.size() && same(item, other.items.get(i));
      if (!same && other.items.stream().noneMatch(each -> same(item, each))) {
        if (item instanceof Stroke stroke) {
          if (!covered(stroke, one.frame, other)) {
            found.add(item, Difference.SUBSTANCE);
          }
        } else if (item.bounds().overlaps(one.frame)) {
          found.add(item, one.isOnlyAPlace(item, texts) ? Difference.PLACES : Difference.SUBSTANCE);
        }
      }
    }
  }

  /** Words of a piece, or of a page without pieces, that stand elsewhere; a mark does not. */
  private boolean isOnlyAPlace(Inked item, Set<String> texts) {
    boolean mark = kind == PageName.Kind.PIECES && item.subject().piece().isEmpty();
    return !mark && (!(item instanceof Words words) || texts.contains(words.line().text()));
  }

  private static boolean same(Inked one, Inked other) {
    if (!one.layer().equals(other.layer())) {
      return false;
    }
    if (one instanceof Stroke here && other instanceof Stroke there) {
      return here.pen().equals(there.pen()) && samePath(here.path(), there.path());
    } else if (one instanceof Words here && other instanceof Words there) {
      return here.line().text().equals(there.line().text())
          && here.ink().equals(there.ink())
          && near(here.at(), there.at())
          && Math.abs(here.angle() - there.angle()) <= Tolerance.SAME_POINT;
    } else if (one instanceof Fill here && other instanceof Fill there) {
      return here.ink().equals(there.ink())
          && samePath(here.outline().path(), there.outline().path());
    } else if (one instanceof Hatch here && other instanceof Hatch there) {
      return here.pen().equals(there.pen())
          && here.spacing() == there.spacing()
          && here.angle() == there.angle()
          && samePath(here.outline().path(), there.outline().path());
    } else if (one instanceof Picture && other instanceof Picture) {
      return one.equals(other);
    }
    return false;
  }

  private static boolean near(Point one, Point other) {
    return one.distanceTo(other) <= Tolerance.PRINTED_AS_ONE;
  }

  private static boolean samePath(Path one, Path other) {
    if (one.curves().size() != other.curves().size()
        || !near(one.start(), other.start())
        || !near(one.end(), other.end())) {
      return false;
    }
    for (int i = 0; i < one.curves().size(); i++) {
      for (double t = 0; t <= 1; t += 0.25) {
        if (!near(one.curves().get(i).at(t), other.curves().get(i).at(t))) {
          return false;
        }
      }
    }
    return true;
  }

  /** Whether all of a line that shows in the frame is drawn by lines like it on the other page. */
  private static boolean covered(Stroke stroke, Box frame, PageInk other) {
    List<Path> like = new ArrayList<>();
    for (Inked item : other.items) {
      if (item instanceof Stroke each
          && each.layer().equals(stroke.layer())
          && each.pen().equals(stroke.pen())) {
        like.add(each.path());
      }
    }
    double length = stroke.path().length();
    int parts = Math.max(1, (int) Math.ceil(length / STEP));
    for (int i = 0; i <= parts; i++) {
      Point point = stroke.path().at(length * i / parts).point();
      if (frame.contains(point) && like.stream().noneMatch(path -> passes(path, point))) {
        return false;
      }
    }
    return true;
  }

  private static boolean passes(Path path, Point point) {
    return path.bounds().grown(Tolerance.PRINTED_AS_ONE).contains(point)
        && path.nearest(point).point().distanceTo(point) <= Tolerance.PRINTED_AS_ONE;
  }
}
