package org.hemwright.booklet.figure;

import static org.hemwright.booklet.figure.CloseUp.BEYOND;
import static org.hemwright.booklet.figure.CloseUp.WIDE;

import java.util.Optional;
import org.hemwright.paper.sheet.Pen;
import org.hemwright.paper.style.Inks;
import org.hemwright.pattern.make.Act;
import org.hemwright.pattern.make.Stitch;
import org.hemwright.pattern.quantity.LengthKind;

/** Buttons, buttonholes, eyelets, bar tacks and zips. */
final class FastenerCloseUps {
  private final ShownStep shown;
  private final NearBy near = new NearBy();

  FastenerCloseUps(ShownStep shown) {
    this.shown = shown;
  }

  /** A button, a buttonhole, an eyelet or a bar tack in the size that the step says. */
  Optional<CloseUp> fastened(Act.Fasten fasten) {
    double size = fasten.size().in(shown.telling().drawn().numbers()).orElse(10);
    double scale = ShownStep.scale(size, 30) * (size < 10 ? 2 : 1);
    double half = size * scale / 2;
    near.whole(false);
    switch (fasten.kind()) {
      case BUTTONHOLE -> {
        double wide = 2.2;
        near.stitch(Stitch.Kind.ZIGZAG, 31 - half, 31 + half, 23 + wide, wide);
        near.stitch(Stitch.Kind.ZIGZAG, 31 - half, 31 + half, 23 - wide, wide);
        for (double end : new double[] {31 - half, 31 + half}) {
          for (double x = -0.6; x <= 0.6; x += 0.6) {
            near.line(end + x, 19.6, end + x, 26.4, Pen.solid(0.45, Inks.CHALK));
          }
        }
        near.line(31 - half + 1.2, 23, 31 + half - 1.2, 23, Draw.EDGE);
        near.pin(31 + half - 1.6, 23);
        near.measureAcross(31 - half, 31 + half, 33, shown.text(size, LengthKind.NOTION));
        return shown.closeUp(near, "buttonhole");
      }
      case BUTTON -> {
        near.ring(31, 23, half).ring(29, 23, 0.7).ring(33, 23, 0.7);
        near.line(29, 23, 33, 23, Draw.STITCH);
      }
      case EYELET -> near.ring(31, 23, half).ring(31, 23, half * 1.5);
      case BAR_TACK -> {
        near.cloth(20, -BEYOND, WIDE + BEYOND, 27, false);
        near.line(20, -BEYOND, 20, 27, Draw.EDGE).line(20, 27, WIDE + BEYOND, 27, Draw.EDGE);
        for (int i = 0; i <= 9; i++) {
          double x = 20.8 + i * half * 2 / 9;
          near.line(x, 23.6, x + 0.5, 26.6, Pen.solid(0.4, Inks.CHALK));
        }
        near.measureAcross(20.8, 20.8 + half * 2, 31, shown.text(size, LengthKind.NOTION));
        return shown.closeUp(near, "bar-tack");
      }
    }
    near.measureAcross(31 - half, 31 + half, 33, shown.text(size, LengthKind.NOTION));
    return shown.closeUp(near, "fasten");
  }

  /** A zip set in between two edges. */
  Optional<CloseUp> zipped() {
    near.whole(false);
    near.across(24.5, Draw.EDGE);
    near.across(21.5, Draw.EDGE);
    for (int i = 0; i < 20; i++) {
      near.line(i * 3.4, 21.8, i * 3.4, 24.2, Draw.FINE);
    }
    near.line(-BEYOND, 30, 54, 30, Draw.STITCH).line(-BEYOND, 16, 54, 16, Draw.STITCH);
    near.line(54, 16, 54, 30, Draw.STITCH);
    return shown.closeUp(near, "zip");
  }
}
