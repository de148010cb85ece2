package org.hemwright.booklet.write;

import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Booklet;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.geometry.Box;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.svg.SvgWriter;

/** The booklet as one page that stands by itself: no scripts, nothing from elsewhere. */
public final class BookletHtml {
  /** Leaves words half the width of a page (mm). */
  private static final double WIDEST_BESIDE = 92;

  private static final String STYLE = Styles.file("screen.css");

  private BookletHtml() {}

  /**
   * The page.
   *
   * @param proof the word that marks it, if anything does
   */
  public static String of(Booklet booklet, Optional<String> proof) {
    Dress dress =
        new Dress(
            booklet.facts().author(), booklet.logo(), booklet.footer(), booklet.type(), proof);
    Markup out = begun(booklet.facts(), dress);
    BlockWriter blocks = new BlockWriter(out, new OnPage(), true);
    out.open("h1");
    blocks.inlines(booklet.title());
    out.close("h1");
    blocks.blocks(booklet.cover());
    out.close("header");
    out.open("nav", "aria-label", booklet.contents()).open("ul");
    for (Section section : booklet.sections()) {
      out.open("li").open("a", "href", "#" + section.id());
      out.text(Inline.plain(section.title()));
      out.close("a").close("li");
    }
    out.close("ul").close("nav").open("main");
    for (Section section : booklet.sections()) {
      out.open("section", "id", section.id()).open("h2");
      blocks.inlines(section.title());
      out.close("h2");
      blocks.blocks(section.blocks());
      out.close("section");
    }
    out.close("main");
    return ended(out, blocks, dress);
  }

  /**
   * A page of some blocks under a title, as posts are.
   *
   * @param dress what of the house it shows
   */
  public static String page(
      DocumentFacts facts, List<Inline> title, List<Block> content, Dress dress) {
    Markup out = begun(facts, dress);
    BlockWriter blocks = new BlockWriter(out, new OnPage(), false);
    out.open("h1");
    blocks.inlines(title);
    out.close("h1").close("header").open("main");
    blocks.blocks(content);
    out.close("main");
    return ended(out, blocks, dress);
  }

  /** All before the title. */
  private static Markup begun(DocumentFacts facts, Dress dress) {
    Markup out = new Markup();
    out.written("<!DOCTYPE html>\n").open("html", "lang", facts.language()).open("head");
    out.open("meta", "charset", "utf-8");
    out.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    out.open("meta", "name", "description", "content", facts.about());
    out.open("link", "rel", "icon", "href", "data:,");
    out.open("title").text(facts.title()).close("title");
    out.open("style").written(STYLE).written(Fonts.shown(dress.type()));
    out.close("style").close("head").open("body").open("header");
    dress.proof().ifPresent(word -> out.open("p", "class", "proof").text(word).close("p"));
    dress
        .logo()
        .ifPresent(
            logo -> out.open("img", "class", "logo", "alt", dress.house(), "src", data(logo)));
    return out;
  }

  private static String ended(Markup out, BlockWriter blocks, Dress dress) {
    out.open("footer").open("p");
    blocks.inlines(dress.footer());
    out.close("p").close("footer");
    return out.close("body").close("html").whole();
  }

  /** A picture as the address that holds it. */
  static String data(Picture picture) {
    return "data:"
        + picture.kind().mime()
        + ";base64,"
        + Base64.getEncoder().encodeToString(picture.bytes());
  }

  /** A length as style sheets write it. */
  static String mm(double mm) {
    return Math.round(mm * 100) / 100.0 + "mm";
  }

  /** Figures as drawings within the page; her pictures as data. */
  private static final class OnPage implements BlockWriter.Pictures {
    private int count;

    @Override
    public int mostColumns() {
      return Integer.MAX_VALUE;
    }

    @Override
    public boolean onScreen() {
      return true;
    }

    @Override
    public Optional<Box> frame(Figure figure) {
      return figure.own().isPresent() ? Optional.empty() : Optional.of(figure.sheet().frame());
    }

    @Override
    public double roomBeside(double figureWidth) {
      return figureWidth > WIDEST_BESIDE ? -1 : WIDEST_BESIDE;
    }

    @Override
    public double high(int letters, double columnWidth) {
      return letters / columnWidth;
    }

    @Override
    public double lineWidth() {
      return 2 * WIDEST_BESIDE;
    }

    @Override
    public String besideStyle(double figureWidth) {
      return "";
    }

    @Override
    public void put(Markup out, Figure figure) {
      if (figure.own().isPresent()) {
        out.open("img", "alt", figure.alt(), "src", data(figure.own().get()));
        return;
      }
      count++;
      boolean exact = figure.id().startsWith("gauge-");
      String width = (exact ? "width:" : "max-width:") + mm(figure.sheet().frame().width());
      out.open("div", "class", "drawn", "style", width);
      out.written(SvgWriter.inline("f" + count + "-", figure.alt(), figure.sheet(), ""));
      out.close("div");
    }
  }
}
