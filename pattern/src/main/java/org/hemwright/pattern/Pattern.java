package org.hemwright.pattern;

import java.util.List;
import java.util.Optional;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.body.SizeChart;
import org.hemwright.pattern.fabric.Fabric;
import org.hemwright.pattern.make.Making;
import org.hemwright.pattern.piece.PieceCard;

/**
 * What is the same in every size.
 *
 * @param details title, version, date, house
 * @param chart the body measurements of all sizes
 * @param base the size that the designer drafts in
 * @param fabrics in the order of the document
 * @param dials in the order of the document
 * @param views at least one; the whole pattern where the document names none
 * @param pieces a card for each piece; two of one name have separate size ranges
 * @param paper what the designer decides about the printed pattern
 * @param acceptances the findings that the designer has judged, in the order of the document
 * @param making how it is made; {@link Making#NONE} where the document does not say
 * @param measured the chart's measurements that the document names, in the chart's order; empty
 *     where that is not known
 */
public record Pattern(
    Details details,
    SizeChart chart,
    Size base,
    List<Fabric> fabrics,
    List<Dial> dials,
    List<View> views,
    List<PieceCard> pieces,
    PaperChoices paper,
    List<Acceptance> acceptances,
    Making making,
    List<String> measured) {
  public Pattern {
    fabrics = List.copyOf(fabrics);
    dials = List.copyOf(dials);
    views = List.copyOf(views);
    pieces = List.copyOf(pieces);
    acceptances = List.copyOf(acceptances);
    measured = List.copyOf(measured);
  }

  /** A pattern of which it is not known which measurements it takes. */
  public Pattern(
      Details details,
      SizeChart chart,
      Size base,
      List<Fabric> fabrics,
      List<Dial> dials,
      List<View> views,
      List<PieceCard> pieces,
      PaperChoices paper,
      List<Acceptance> acceptances,
      Making making) {
    this(
        details, chart, base, fabrics, dials, views, pieces, paper, acceptances, making, List.of());
  }

  /** A pattern that does not say how it is made. */
  public Pattern(
      Details details,
      SizeChart chart,
      Size base,
      List<Fabric> fabrics,
      List<Dial> dials,
      List<View> views,
      List<PieceCard> pieces,
      PaperChoices paper,
      List<Acceptance> acceptances) {
    this(details, chart, base, fabrics, dials, views, pieces, paper, acceptances, Making.NONE);
  }

  /** A pattern in which no finding is accepted. */
  public Pattern(
      Details details,
      SizeChart chart,
      Size base,
      List<Fabric> fabrics,
      List<Dial> dials,
      List<View> views,
      List<PieceCard> pieces,
      PaperChoices paper) {
    this(details, chart, base, fabrics, dials, views, pieces, paper, List.of());
  }

  /** The view of that name. */
  public Optional<View> view(String name) {
    return views.stream().filter(view -> view.name().equals(name)).findFirst();
  }

  /** The same pattern of other cloth; fabrics of the same names. */
  public Pattern ofCloth(List<Fabric> others) {
    return new Pattern(
        details, chart, base, others, dials, views, pieces, paper, acceptances, making, measured);
  }

  /** The same pattern, saying something else of itself. */
  public Pattern with(Details other) {
    return new Pattern(
        other, chart, base, fabrics, dials, views, pieces, paper, acceptances, making, measured);
  }

  /** The fabric of that name. */
  public Optional<Fabric> fabric(String name) {
    return fabrics.stream().filter(fabric -> fabric.name().equals(name)).findFirst();
  }

  /**
   * Whether a piece that is drawn as a half is cut whole, since a cloth that it is cut from is
   * never folded.
   */
  public boolean isCutWhole(PieceCard card) {
    return card.cuts().stream()
        .filter(cut -> cut.onFold())
        .flatMap(cut -> fabric(cut.fabric()).stream())
        .anyMatch(fabric -> !fabric.liesFolded());
  }
}
