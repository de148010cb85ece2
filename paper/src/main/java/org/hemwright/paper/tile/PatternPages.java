package org.hemwright.paper.tile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hemwright.geometry.Box;
import org.hemwright.geometry.Vector;
import org.hemwright.paper.arrange.TileGrid.Tile;
import org.hemwright.paper.nest.GroupDrawing;
import org.hemwright.paper.nest.Nest;
import org.hemwright.paper.sheet.Inked;
import org.hemwright.paper.sheet.Item;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.style.House;
import org.hemwright.paper.type.HouseType;
import org.hemwright.paper.words.Speech;
import org.hemwright.pattern.SizeRun;
import org.hemwright.pattern.View;
import org.hemwright.pattern.body.Size;
import org.hemwright.pattern.piece.PieceCard;

/**
 * All pages of one file: the key, the pieces to cut by measure, then for each group its map and its
 * pages; or, on large paper, a sheet for each group with the key lying among the pieces.
 *
 * @param sheets the pages
 * @param names what each page is called, one for each sheet
 * @param groups how many pages each group takes
 */
public record PatternPages(List<Sheet> sheets, List<PageName> names, List<GroupCount> groups) {
  /** The size of the word that marks a drawing as a proof (1/72 in). */
  private static final double PROOF = 36;

  public PatternPages {
    sheets = List.copyOf(sheets);
    names = List.copyOf(names);
    groups = List.copyOf(groups);
  }

  /**
   * The pages with pieces of one group, and those of them that each of its sizes needs, for all
   * pieces and for each view that a maker may choose.
   *
   * @param sizes the names of the group's sizes
   * @param pages how many pages hold its pieces
   * @param tilesOfSize by the size's name, the names of the pages that it needs
   * @param pagesOfSize how many those are
   * @param pagesOfView the same for each view
   */
  public record GroupCount(
      List<String> sizes,
      int pages,
      Map<String, List<String>> tilesOfSize,
      Map<String, Integer> pagesOfSize,
      Map<String, Map<String, Integer>> pagesOfView) {}

  /**
   * What the pages are made of.
   *
   * @param run the pattern
   * @param view the view that alone is drawn, if only one is
   * @param groups drawn, without the rectangles that are cut by measure
   * @param rectangles for each group its pieces that may be cut by measure, if they are to be
   * @param stitchLines whether stitch lines are drawn
   * @param overlap of neighbouring pages (mm)
   * @param proof the word that marks every page as a proof
   * @param house whose logo and fonts the pages show
   */
  public record Content(
      SizeRun run,
      Optional<View> view,
      List<GroupDrawing> groups,
      List<Nest> rectangles,
      boolean stitchLines,
      double overlap,
      Optional<String> proof,
      House house) {
    public Content {
      groups = List.copyOf(groups);
      rectangles = List.copyOf(rectangles);
    }
  }

  /** Page numbers as a printing dialogue takes them: "2–5, 7, 9". */
  public static String ranges(List<Integer> pages) {
    return PageNumbers.ranges(pages);
  }

  /** Whether a house's line is too long for the foot of a page. */
  public static boolean isTooLong(String footer, HouseType type) {
    return PageNumbers.isTooLong(footer, type);
  }

  /** The pieces of a nest list that can be cut by measure. */
  public static List<Nest> rectangles(List<Nest> nests) {
    return nests.stream().filter(nest -> PlainRectangle.of(nest).isPresent()).toList();
  }

  /** The pieces that are too wide for a roll, whichever way they lie. */
  public static List<PieceCard> tooWide(GroupDrawing group, PageFormat format) {
    if (format != PageFormat.ROLL) {
      return List.of();
    }
    double widest = format.grid(0).width() - 2;
    return group.nests().stream()
        .filter(nest -> Math.min(nest.bounds().width(), nest.bounds().height()) > widest)
        .map(Nest::card)
        .toList();
  }

  /** The pages on a paper. */
  public static PatternPages of(Content content, PageFormat format) {
    return format.isLarge() ? large(content, format) : small(content, format);
  }

  private static PatternPages small(Content content, PageFormat format) {
    Speech speech = Speech.of(content.run());
    List<GroupSheet> laid = new ArrayList<>();
    for (GroupDrawing group : content.groups()) {
      GroupSheet.of(group, format, content.overlap(), Optional.empty()).ifPresent(laid::add);
    }
    List<Leaf> tables =
        CuttingTable.pages(
            content.run(),
            content.rectangles().stream()
                .flatMap(nest -> PlainRectangle.of(nest).stream())
                .toList());
    List<MapPage> maps = laid.stream().map(sheet -> new MapPage(sheet, speech)).toList();
    double high = Leaf.frame(format).height();
    int all = 1 + tables.size();
    List<String> contents = new ArrayList<>();
    if (!tables.isEmpty()) {
      contents.add("Pieces to cut by measure: page 2");
    }
    for (int i = 0; i < laid.size(); i++) {
      int tiles = laid.get(i).tiles().size();
      int first = all + maps.get(i).count(high) + 1;
      String sizes = speech.sizes(laid.get(i).group().sizeNames());
      contents.add(
          "%s: map on page %d, pieces on pages %d to %d"
              .formatted(sizes, all + 1, first, first + tiles - 1));
      all = first + tiles - 1;
    }
    PageNumbers numbers =
        new PageNumbers(speech, content.view(), all, content.proof(), content.house().type());
    List<String> sizes = sizes(content);
    List<Sheet> pages = new ArrayList<>();
    Leaf key = new Leaf();
    KeyPanel.draw(
        key,
        speech,
        KeyFacts.ofPages(
            speech, content.view(), content.groups(), content.stitchLines(), format, contents),
        content.house());
    Box frame = Leaf.frame(format);
    pages.add(key.on(format, numbers.header(frame, Optional.empty(), sizes, 1)));
    List<PageName> names = new ArrayList<>();
    names.add(new PageName(PageName.Kind.KEY, sizes, ""));
    for (Leaf table : tables) {
      List<Item> header = numbers.header(frame, Optional.empty(), sizes, pages.size() + 1);
      pages.add(table.on(format, header));
      names.add(new PageName(PageName.Kind.TABLE, sizes, Integer.toString(names.size())));
    }
    List<GroupCount> counts = new ArrayList<>();
    for (MapPage map : maps) {
      GroupSheet sheet = map.sheet();
      List<String> group = sheet.group().sizeNames();
      List<Leaf> leaves = map.leaves(pages.size() + 1, high);
      for (int i = 0; i < leaves.size(); i++) {
        List<Item> header = numbers.header(frame, Optional.empty(), group, pages.size() + 1);
        pages.add(leaves.get(i).on(format, header));
        names.add(new PageName(PageName.Kind.MAP, group, i == 0 ? "" : Integer.toString(i + 1)));
      }
      pages.addAll(new TilePages(sheet, List.of(), format, numbers).sheets(pages.size() + 1));
      names.addAll(tiles(sheet));
      counts.add(count(sheet));
    }
    return new PatternPages(pages, names, counts);
  }

  private static PatternPages large(Content content, PageFormat format) {
    Speech speech = Speech.of(content.run());
    Box panel = new Box(0, -KeyPanel.HEIGHT, KeyPanel.WIDTH, 0);
    List<GroupSheet> laid = new ArrayList<>();
    for (GroupDrawing group : content.groups()) {
      if (tooWide(group, format).isEmpty()) {
        GroupSheet.of(group, format, 0, Optional.of(panel)).ifPresent(laid::add);
      }
    }
    int all = laid.stream().mapToInt(sheet -> sheet.tiles().size()).sum();
    PageNumbers numbers =
        new PageNumbers(speech, content.view(), all, content.proof(), content.house().type());
    List<Sheet> pages = new ArrayList<>();
    List<PageName> names = new ArrayList<>();
    List<GroupCount> counts = new ArrayList<>();
    for (GroupSheet sheet : laid) {
      List<Inked> key = key(sheet, speech, content.view(), content.stitchLines(), content.house());
      pages.addAll(new TilePages(sheet, key, format, numbers).sheets(pages.size() + 1));
      names.addAll(tiles(sheet));
      counts.add(count(sheet));
    }
    return new PatternPages(pages, names, counts);
  }

  /** What the pages with pieces are called, row by row. */
  private static List<PageName> tiles(GroupSheet sheet) {
    return sheet.tiles().stream()
        .map(tile -> new PageName(PageName.Kind.PIECES, sheet.group().sizeNames(), tile.name()))
        .toList();
  }

  /** The key where it lies on a large sheet. */
  private static List<Inked> key(
      GroupSheet sheet, Speech speech, Optional<View> view, boolean stitchLines, House house) {
    Leaf leaf = new Leaf();
    KeyFacts facts = KeyFacts.ofSheet(speech, view, sheet.group(), stitchLines);
    KeyPanel.draw(leaf, speech, facts, house);
    Vector move = sheet.panel().map(box -> new Vector(box.minX(), box.maxY())).orElse(Vector.ZERO);
    List<Inked> key = new ArrayList<>();
    for (Item item : leaf.items()) {
      if (item instanceof Inked inked) {
        key.add(inked.moved(move));
      }
    }
    return key;
  }

  /**
   * One drawing of a group, pieces and key, as it would lie on a roll.
   *
   * @param proof the word that marks it as a proof, above and below
   */
  public static Optional<Sheet> drawing(
      GroupDrawing group,
      Optional<View> view,
      boolean stitchLines,
      House house,
      Optional<String> proof) {
    Speech speech = Speech.of(group.run());
    Box panel = new Box(0, -KeyPanel.HEIGHT, KeyPanel.WIDTH, 0);
    PageFormat format = tooWide(group, PageFormat.ROLL).isEmpty() ? PageFormat.ROLL : PageFormat.A0;
    return GroupSheet.of(group, format, 0, Optional.of(panel))
        .map(
            sheet -> {
              List<Item> items = new ArrayList<>(sheet.items());
              items.addAll(key(sheet, speech, view, stitchLines, house));
              Sheet drawn = new Sheet(sheet.bounds().grown(10), items);
              return proof.map(word -> ProofMark.on(drawn, word, PROOF)).orElse(drawn);
            });
  }

  private static GroupCount count(GroupSheet sheet) {
    Map<String, Integer> pages = new LinkedHashMap<>();
    Map<String, List<String>> names = new LinkedHashMap<>();
    for (Size size : sheet.group().sizes()) {
      List<Tile> tiles = sheet.tiles(size);
      names.put(size.name(), tiles.stream().map(Tile::name).toList());
      pages.put(size.name(), tiles.size());
    }
    Map<String, Map<String, Integer>> ofViews = new LinkedHashMap<>();
    for (View view : sheet.group().views()) {
      Map<String, Integer> ofView = new LinkedHashMap<>();
      for (Size size : sheet.group().sizes()) {
        ofView.put(size.name(), sheet.tiles(size, view).size());
      }
      ofViews.put(view.name(), ofView);
    }
    return new GroupCount(sheet.group().sizeNames(), sheet.tiles().size(), names, pages, ofViews);
  }

  private static List<String> sizes(Content content) {
    List<String> names = new ArrayList<>();
    for (Size size : content.run().pattern().chart().sizes()) {
      if (content.groups().stream().anyMatch(group -> group.sizes().contains(size))) {
        names.add(size.name());
      }
    }
    return names;
  }
}
