package org.hemwright.paper;

import java.util.List;
import java.util.Optional;
import org.hemwright.paper.style.House;
import org.hemwright.paper.tile.PageFormat;

/**
 * Which files are made of a run.
 *
 * @param formats the papers to print on
 * @param svg whether each group is given as one SVG drawing too
 * @param pictures whether pictures to look at are made too: of each group, and of the base size
 * @param groups whether the nests of the designer's groups are made
 * @param singles the names of the sizes that get a file of their own, drawn with unbroken lines
 * @param views the names of the views that alone are printed, each in files of its own; all pieces
 *     together, and views apart if the document says so, where none is named
 * @param stitchLines whether stitch lines are drawn; as the document says where it is left open
 * @param inColour whether sizes have inks of their own, or are all black
 * @param overlap how far neighbouring pages overlap (mm); 0 where they are laid edge to edge
 * @param proof the word that marks every page as a proof, if anything does
 * @param house what of it the pages show
 */
public record PaperOptions(
    List<PageFormat> formats,
    boolean svg,
    boolean pictures,
    boolean groups,
    List<String> singles,
    List<String> views,
    Optional<Boolean> stitchLines,
    boolean inColour,
    double overlap,
    Optional<String> proof,
    House house) {
  /** The most that pages may overlap (mm). */
  public static final double MOST_OVERLAP = 50;

  public PaperOptions {
    formats = List.copyOf(formats);
    singles = List.copyOf(singles);
    views = List.copyOf(views);
    if (!(overlap >= 0 && overlap <= MOST_OVERLAP)) {
      throw new IllegalArgumentException(
          "pages overlap by 0 to " + MOST_OVERLAP + " mm, not " + overlap);
    }
  }

  /** Everything for all groups, no single sizes. */
  public static PaperOptions everything() {
    return new PaperOptions(
        List.of(PageFormat.values()),
        true,
        false,
        true,
        List.of(),
        List.of(),
        Optional.empty(),
        true,
        0,
        Optional.empty(),
        House.PLAIN);
  }

  /** The same on some papers only, without drawings. */
  public PaperOptions on(PageFormat... papers) {
    Change change = new Change(this);
    change.formats = List.of(papers);
    change.svg = false;
    return change.made();
  }

  /** The same with a file for each of some sizes. */
  public PaperOptions withSingles(List<String> sizes) {
    Change change = new Change(this);
    change.singles = sizes;
    return change.made();
  }

  /** The same without the groups. */
  public PaperOptions withoutGroups() {
    Change change = new Change(this);
    change.groups = false;
    return change.made();
  }

  /** The same for some views alone. */
  public PaperOptions forViews(List<String> names) {
    Change change = new Change(this);
    change.views = names;
    return change.made();
  }

  /** The same with pictures to look at. */
  public PaperOptions withPictures() {
    Change change = new Change(this);
    change.pictures = true;
    return change.made();
  }

  /** The same with every page marked. */
  public PaperOptions asProof(String word) {
    Change change = new Change(this);
    change.proof = Optional.of(word);
    return change.made();
  }

  /** The same with a house's logo and fonts. */
  public PaperOptions withHouse(House shown) {
    Change change = new Change(this);
    change.house = shown;
    return change.made();
  }

  /** Options of which one thing becomes another. */
  private static final class Change {
    private final PaperOptions from;
    private List<PageFormat> formats;
    private boolean svg;
    private boolean pictures;
    private boolean groups;
    private List<String> singles;
    private List<String> views;
    private Optional<String> proof;
    private House house;

    Change(PaperOptions from) {
      this.from = from;
      formats = from.formats;
      svg = from.svg;
      pictures = from.pictures;
      groups = from.groups;
      singles = from.singles;
      views = from.views;
      proof = from.proof;
      house = from.house;
    }

    PaperOptions made() {
      return new PaperOptions(
          formats,
          svg,
          pictures,
          groups,
          singles,
          views,
          from.stitchLines,
          from.inColour,
          from.overlap,
          proof,
          house);
    }
  }
}
