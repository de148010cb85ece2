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
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.svg.SvgWriter;

/** The booklet as one page that stands by itself: no scripts, nothing from elsewhere. */
public final class BookletHtml {
  private static final String STYLE = Styles.file("screen.css");

  private BookletHtml() {}

  /**
   * The page.
   *
   * @param proof the word that marks it, if anything does
   */
  public static String of(Booklet booklet, Optional<String> proof) {
    Markup out = begun(booklet.facts());
    BlockWriter blocks = new BlockWriter(out, new OnPage(), true);
    out.open("header");
    proof.ifPresent(word -> out.open("p", "class", "proof").text(word).close("p"));
    booklet
        .logo()
        .ifPresent(
            logo ->
                out.open(
                    "img", "class", "logo", "alt", booklet.facts().author(), "src", data(logo)));
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
    out.close("main").open("footer").open("p");
    blocks.inlines(booklet.footer());
    out.close("p").close("footer");
    return ended(out);
  }

  /** A page of some blocks under a title, as posts are. */
  public static String page(DocumentFacts facts, List<Inline> title, List<Block> content) {
    Markup out = begun(facts);
    BlockWriter blocks = new BlockWriter(out, new OnPage(), false);
    out.open("header").open("h1");
    blocks.inlines(title);
    out.close("h1").close("header").open("main");
    blocks.blocks(content);
    out.close("main");
    return ended(out);
  }

  private static Markup begun(DocumentFacts facts) {
    Markup out = new Markup();
    out.written("<!DOCTYPE html>\n").open("html", "lang", facts.language()).open("head");
    out.open("meta", "charset", "utf-8");
    out.open("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    out.open("meta", "name", "description", "content", facts.about());
    out.open("link", "rel", "icon", "href", "data:,");
    out.open("title").text(facts.title()).close("title");
    out.open("style").written(STYLE).close("style").close("head").open("body");
    return out;
  }

  private static String ended(Markup out) {
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
