package org.hemwright.exchange.photograph;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hemwright.exchange.photograph.PieceEdges.Loop;
import org.hemwright.exchange.photograph.ReadPhotograph.SeenPiece;
import org.hemwright.geometry.GeometryProblem;
import org.hemwright.geometry.Path;
import org.hemwright.geometry.Point;
import org.hemwright.geometry.Tolerance;
import org.hemwright.pattern.finding.Argument;
import org.hemwright.pattern.finding.Finding;
import org.hemwright.pattern.finding.Messages;
import org.hemwright.pattern.finding.Origin;
import org.hemwright.pattern.traced.ReferenceCard;

/** Reads the outlines of paper pieces off a photograph or scan. */
public final class PhotographReader {
  /** What covers less of the picture is no piece but a pin, a pencil, a scrap. */
  private static final double LEAST_SHARE = 0.004;

  /** What is shorter round is no piece (mm). */
  private static final double SHORTEST = 60;

  /** More than this is worth a word (mm). */
  private static final double MUCH_DOUBT = 1;

  /** Fewer pixels than this show a millimetre too coarsely. */
  private static final double COARSE = 1;

  /**
   * The card's sheet is no larger than its frame made larger by this (A4 and Letter, with room).
   */
  private static final double SHEET = 1.8;

  private PhotographReader() {}

  /**
   * Reads a photograph.
   *
   * @param file the name that findings carry
   * @param guide what tells how large things are
   */
  public static ReadPhotograph read(String file, byte[] content, Guide guide) {
    List<Finding> findings = new ArrayList<>();
    return PictureReader.read(file, content, findings)
        .map(picture -> read(file, picture, guide))
        .orElseGet(() -> new ReadPhotograph(Optional.empty(), List.of(), findings));
  }

  /** The same of a picture that has been read. */
  public static ReadPhotograph read(String file, Picture picture, Guide guide) {
    List<Finding> findings = new ArrayList<>();
    Optional<Straightening> straightening = straightening(file, picture, guide, findings);
    List<SeenPiece> pieces = new ArrayList<>();
    if (straightening.isPresent()) {
      boolean card = !(guide instanceof Guide.Ruler);
      for (Loop loop : PieceEdges.find(picture, LEAST_SHARE)) {
        if (!(card && isSheet(loop, straightening.get()))) {
          piece(file, loop, straightening.get(), findings).ifPresent(pieces::add);
        }
      }
      if (pieces.isEmpty() && findings.stream().noneMatch(PhotographReader::isCutOff)) {
        findings.add(Finding.fail("photograph-no-piece", file).at(start(file)).build());
      }
    }
    return new ReadPhotograph(straightening, pieces, findings);
  }

  private static Optional<Straightening> straightening(
      String file, Picture picture, Guide guide, List<Finding> findings) {
    try {
      if (guide instanceof Guide.Ruler ruler) {
        return Optional.of(Straightening.byRuler(ruler.from(), ruler.to(), ruler.length()));
      }
      if (guide instanceof Guide.CardCorners pointed) {
        if (!pointed.areApart()) {
          throw new IllegalArgumentException("four places in a row");
        }
        List<Sighting> sightings = new ArrayList<>();
        for (int k = 0; k < 4; k++) {
          sightings.add(new Sighting(frame().get(k), pointed.corners().get(k)));
        }
        return Optional.of(Straightening.of(sightings, picture.width(), picture.height()));
      }
    } catch (IllegalArgumentException flat) {
      findings.add(Finding.fail("photograph-guide", file).at(start(file)).build());
      return Optional.empty();
    }
    Optional<List<Sighting>> card = CardFinder.find(picture);
    if (card.isEmpty()) {
      findings.add(Finding.fail("photograph-no-card", file).at(start(file)).build());
    }
    return card.map(seen -> Straightening.of(seen, picture.width(), picture.height()));
  }

  private static List<Point> frame() {
    return List.of(
        Point.ORIGIN,
        new Point(ReferenceCard.WIDTH, 0),
        new Point(ReferenceCard.WIDTH, ReferenceCard.HEIGHT),
        new Point(0, ReferenceCard.HEIGHT));
  }

  /** Whether an edge is that of the card's own sheet: all squares within, and little else. */
  private static boolean isSheet(Loop loop, Straightening straightening) {
    for (Point corner : frame()) {
      if (!loop.holds(straightening.pixel(corner))) {
        return false;
      }
    }
    List<Pixel> frame = frame().stream().map(straightening::pixel).toList();
    return loop.area() < SHEET * new Loop(frame, false).area();
  }

  private static Optional<SeenPiece> piece(
      String file, Loop loop, Straightening straightening, List<Finding> findings) {
    if (loop.cutOff()) {
      findings.add(Finding.warn("photograph-cut-off", file).at(start(file)).build());
      return Optional.empty();
    }
    try {
      List<Point> places = loop.places().stream().map(straightening::place).toList();
      if (FewCurves.length(places) < SHORTEST) {
        return Optional.empty();
      }
      Path outline = FewCurves.through(places);
      double doubt = 0;
      double coarsest = Double.POSITIVE_INFINITY;
      for (Point point : outline.flattened(Tolerance.SEEN_CURVE)) {
        doubt = Math.max(doubt, straightening.doubt(point));
        coarsest = Math.min(coarsest, straightening.pixelsPerMm(point));
      }
      if (doubt > MUCH_DOUBT) {
        findings.add(
            Finding.warn("photograph-doubtful", file)
                .with("doubt", Argument.mm(doubt))
                .at(start(file))
                .build());
      }
      if (coarsest < COARSE) {
        findings.add(
            Finding.warn("photograph-coarse", file)
                .with("pixel", Argument.mm(1 / coarsest))
                .at(start(file))
                .build());
      }
      return Optional.of(new SeenPiece(outline, doubt));
    } catch (GeometryProblem beyond) {
      // A place near the vanishing line of a steep view falls farther out than any piece reaches.
      findings.add(Finding.fail("photograph-steep", file).at(start(file)).build());
      return Optional.empty();
    }
  }

  private static boolean isCutOff(Finding finding) {
    return finding.code().equals("photograph-cut-off");
  }

  private static Origin start(String file) {
    return new Origin(file, 1, 1);
  }

  /** The sentences for every finding of a photograph. */
  public static Messages messages() {
    return Messages.beside(PhotographReader.class, "photograph.properties");
  }
}
