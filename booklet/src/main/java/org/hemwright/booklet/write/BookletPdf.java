package org.hemwright.booklet.write;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.render.RenderingContext;
import com.openhtmltopdf.util.XRLog;
import java.awt.Shape;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Booklet;
import org.hemwright.booklet.leaf.Figure;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Picture;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.geometry.Box;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.pdf.PdfFacts;
import org.hemwright.paper.png.SheetPainter;
import org.hemwright.paper.sheet.DocumentFacts;
import org.hemwright.paper.sheet.Sheet;
import org.hemwright.paper.type.Face;
import org.hemwright.paper.type.HouseFont;
import org.hemwright.paper.type.HouseType;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** The booklet as a tagged PDF file (PDF/UA-1, ISO 14289-1). */
public final class BookletPdf {
  private static final String OURS = "House";
  private static final String FIGURE = "hemwright/figure";
  private static final String STYLE = Styles.file("print.css");
  private static final String LARGE = Styles.file("large.css");
  private static final int FEW_BLOCKS = 5;
  private static final int FEW_ROWS = 26;

  /** Columns of lengths in both units that fit the page, the first one of sizes. */
  private static final int MOST_COLUMNS = 6;

  private static final int MOST_COLUMNS_LARGE = 4;
  private static final double WIDEST = 168;

  /** A column of words beside a figure has room for five or six of them (mm). */
  private static final double LEAST_COLUMN = 48;

  private static final double LEAST_COLUMN_LARGE = 84;

  /**
   * A letter's width, a line's height and what follows a paragraph, as the style sets them (mm).
   */
  private static final double LETTER = 1.72;

  private static final double LINE = 5.1;
  private static final double AFTER = 2;

  /** Large print beside the usual one. */
  private static final double LARGER = 18 / 10.5;

  private static final double GUTTER = 6;
  private static final double HIGHEST_OWN = 90;

  static {
    XRLog.setLoggingEnabled(false);
  }

  private final Booklet booklet;
  private final PrintForm form;
  private final Optional<String> proof;
  private final Map<String, Figure> figures = new HashMap<>();

  private BookletPdf(Booklet booklet, PrintForm form, Optional<String> proof) {
    this.booklet = booklet;
    this.form = form;
    this.proof = proof;
  }

  /**
   * A printed booklet.
   *
   * @param bytes the file
   * @param pages how many
   */
  @SuppressWarnings("ArrayRecordComponent")
  public record Printed(byte[] bytes, int pages) {}

  /**
   * Writes the file.
   *
   * @param proof the word that marks every page, if anything does
   */
  public static Printed write(Booklet booklet, PrintForm form, Optional<String> proof) {
    return new BookletPdf(booklet, form, proof).write();
  }

  private Printed write() {
    try (PDDocument document = new PDDocument()) {
      CRC32 id = new CRC32();
      id.update((booklet.facts() + form.toString()).getBytes(StandardCharsets.UTF_8));
      document.setDocumentId(id.getValue());
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.usePDDocument(document);
      builder.usePdfUaAccessibility(true);
      builder.usePdfVersion(1.7f);
      builder.withProducer(PdfFacts.PRODUCER);
      fonts(builder, document);
      builder.useUriResolver(
          (base, uri) -> uri.startsWith("data:") || uri.startsWith("#") ? uri : null);
      DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
      drawers.registerDrawer(FIGURE, new Drawer());
      builder.useObjectDrawerFactory(drawers);
      builder.withHtmlContent(markup(), "");
      try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
        renderer.createPDFWithoutClosing();
        PdfFacts facts = new PdfFacts(booklet.facts(), true);
        facts.inform(document);
        facts.packet(document);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        document.save(bytes);
        return new Printed(bytes.toByteArray(), document.getNumberOfPages());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Ours, and under names of their own those of the house, ours in the place of what it lacks. */
  private void fonts(PdfRendererBuilder builder, PDDocument document) throws IOException {
    FontStyle plain = FontStyle.NORMAL;
    Map<Face, PDFont> loaded = new LinkedHashMap<>();
    font(builder, document, loaded, OURS, Face.REGULAR, 400, plain);
    font(builder, document, loaded, OURS, Face.SEMIBOLD, 700, plain);
    font(builder, document, loaded, OURS, Face.LIGHT, 300, plain);
    font(builder, document, loaded, OURS, Face.ITALIC, 400, FontStyle.ITALIC);
    HouseType type = booklet.type();
    if (!type.isOurs()) {
      Face words = type.words().map(HouseFont::face).orElse(Face.REGULAR);
      Face bold = type.bold().map(HouseFont::face).orElse(Face.SEMIBOLD);
      Face italic = type.italic().map(HouseFont::face).orElse(Face.ITALIC);
      Face titles = type.forTitles().map(HouseFont::face).orElse(Face.LIGHT);
      font(builder, document, loaded, Fonts.WORDS, words, 400, plain);
      font(builder, document, loaded, Fonts.WORDS, bold, 700, plain);
      font(builder, document, loaded, Fonts.WORDS, italic, 400, FontStyle.ITALIC);
      font(builder, document, loaded, Fonts.TITLES, titles, 400, plain);
    }
  }

  /** Without the font's own glyph substitution, so that each glyph stands for a character. */
  private static void font(
      PdfRendererBuilder builder,
      PDDocument document,
      Map<Face, PDFont> loaded,
      String family,
      Face face,
      int weight,
      FontStyle style)
      throws IOException {
    PDFont font = loaded.get(face);
    if (font == null) {
      font = PDType0Font.load(document, face.open(), face.inParts());
      loaded.put(face, font);
    }
    builder.useFont(new PDFontSupplier(font), family, weight, style, true);
  }

  /** Paints a figure where the page leaves room for it. */
  private final class Drawer implements FSObjectDrawer {
    @Override
    public @Nullable Map<Shape, String> drawObject(
        Element e,
        double x,
        double y,
        double width,
        double height,
        OutputDevice device,
        RenderingContext context,
        int dotsPerPixel) {
      Figure figure = figures.get(e.getAttribute("data"));
      if (figure != null) {
        double wide = width / dotsPerPixel;
        double high = height / dotsPerPixel;
        device.drawWithGraphics(
            (float) x,
            (float) y,
            (float) wide,
            (float) high,
            graphics -> {
              if (figure.own().isPresent()) {
                VectorPicture.paint(figure.own().get(), graphics, wide, high);
              } else {
                SheetPainter.paint(figure.sheet(), graphics, wide / figure.sheet().frame().width());
              }
            });
      }
      return null;
    }
  }

  // --- the markup -----------------------------------------------------------------------------

  private String markup() {
    DocumentFacts facts = booklet.facts();
    Markup out = new Markup();
    out.open("html", "lang", facts.language(), "xml:lang", facts.language()).open("head");
    out.open("title").text(facts.title()).close("title");
    out.open("meta", "name", "description", "content", facts.about());
    out.open("meta", "name", "subject", "content", facts.about());
    out.open("meta", "name", "author", "content", facts.author());
    out.open("style").written("/*<![CDATA[*/\n");
    out.written(page()).written(STYLE).written(form.large() ? LARGE : "");
    out.written(Fonts.printed(booklet.type()));
    out.written("/*]]>*/").close("style").open("bookmarks");
    for (Section section : booklet.sections()) {
      out.open("bookmark", "name", Inline.plain(section.title()), "href", "#" + section.id());
      out.close("bookmark");
    }
    out.close("bookmarks").close("head").open("body");
    OnPaper paper = new OnPaper();
    BlockWriter blocks = new BlockWriter(out, paper, false);
    booklet
        .logo()
        .ifPresent(logo -> paper.picture(out, "logo", booklet.facts().author(), logo, "logo"));
    out.open("h1");
    blocks.inlines(booklet.title());
    out.close("h1");
    blocks.blocks(booklet.cover());
    out.open("div", "class", "contents").open("h2").text(booklet.contents()).close("h2");
    for (Section section : booklet.sections()) {
      String title = Inline.plain(section.title());
      out.open("p", "class", "entry");
      out.open("a", "class", "to", "href", "#" + section.id(), "title", title);
      out.text(title).close("a").close("p");
    }
    out.close("div");
    for (Section section : booklet.sections()) {
      out.open("div", "class", kind(section));
      blocks.section(section);
      out.close("div");
    }
    return out.close("body").close("html").whole();
  }

  /** A short section stays on one page. */
  private static String kind(Section section) {
    boolean small =
        section.blocks().size() <= FEW_BLOCKS
            && section.blocks().stream()
                .noneMatch(
                    block ->
                        block instanceof Block.Gallery
                            || (block instanceof Block.Table table
                                && table.rows().size() > FEW_ROWS));
    return section.startsPage() ? "section page" : small ? "section small" : "section";
  }

  /** One rule: a second one for pages would take these boxes' contents away. */
  private String page() {
    boolean metric = form.paper() == PrintForm.Paper.A4;
    String family = booklet.type().isOurs() ? OURS : Fonts.WORDS + ", " + OURS;
    return """
    @page { size: %s; margin: %s;
      @top-right { content: "%s"; font-family: %s; font-weight: 700; font-size: 11pt; }
      @bottom-left { content: "%s"; font-family: %s; font-size: 8.5pt; color: #444; }
      @bottom-right { content: "%s " counter(page); font-family: %s; font-size: 8.5pt;
        color: #444; } }
    """
        .formatted(
            metric ? "A4" : "8.5in 11in",
            metric ? "18mm 20mm 20mm 20mm" : "17mm 23mm 19mm 23mm",
            quoted(proof.orElse("")),
            family,
            quoted(Inline.plain(booklet.footer())),
            family,
            quoted(booklet.page()),
            family);
  }

  /** Text within quotes of a style sheet. */
  private static String quoted(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\' || c == '<' || c < ' ' || c == ']') {
                safe.append('\\').append(Integer.toHexString(c)).append(' ');
              } else {
                safe.appendCodePoint(c);
              }
            });
    return safe.toString();
  }

  /** Figures drawn by us from the sheet itself; her pictures as data. */
  private final class OnPaper implements BlockWriter.Pictures {
    @Override
    public int mostColumns() {
      return form.large() ? MOST_COLUMNS_LARGE : MOST_COLUMNS;
    }

    @Override
    public boolean onScreen() {
      return false;
    }

    @Override
    public Optional<Box> frame(Figure figure) {
      if (figure.own().isEmpty()) {
        return Optional.of(figure.sheet().frame());
      }
      return figure.own().filter(own -> own.kind() == Picture.Kind.SVG).map(OnPaper::frame);
    }

    private static Box frame(Picture drawing) {
      double[] size = VectorPicture.size(drawing);
      double scale = Math.min(1, Math.min(HIGHEST_OWN / size[1], WIDEST / size[0]));
      return new Box(0, 0, size[0] * scale, size[1] * scale);
    }

    @Override
    public double roomBeside(double figureWidth) {
      double room = WIDEST - figureWidth - GUTTER;
      return room < (form.large() ? LEAST_COLUMN_LARGE : LEAST_COLUMN) ? -1 : room;
    }

    @Override
    public double high(int letters, double columnWidth) {
      double scale = form.large() ? LARGER : 1;
      double lines = StrictMath.ceil(letters * LETTER * scale / columnWidth);
      return (lines * LINE + AFTER) * scale;
    }

    @Override
    public double lineWidth() {
      return WIDEST;
    }

    @Override
    public String besideStyle(double figureWidth) {
      return "width:" + BookletHtml.mm(roomBeside(figureWidth));
    }

    @Override
    public void put(Markup out, Figure figure) {
      if (figure.own().isPresent()) {
        picture(out, figure.id(), figure.alt(), figure.own().get(), "own");
        return;
      }
      object(out, figure, figure.sheet().frame().width(), figure.sheet().frame().height(), "");
    }

    private void object(Markup out, Figure figure, double wide, double high, String kind) {
      String key = figure.id() + "-" + figures.size();
      figures.put(key, figure);
      double scale = Math.min(1, WIDEST / wide);
      String size =
          "width:%s;height:%s"
              .formatted(BookletHtml.mm(wide * scale), BookletHtml.mm(high * scale));
      out.open(
          "object",
          "type",
          FIGURE,
          "data",
          key,
          "alt",
          figure.alt(),
          "title",
          figure.alt(),
          "class",
          kind,
          "style",
          size);
      out.close("object");
    }

    void picture(Markup out, String id, String alt, Picture picture, String kind) {
      if (picture.kind() == Picture.Kind.SVG) {
        Box box = frame(picture);
        Figure figure =
            new Figure(id, new Sheet(box, List.of()), alt, List.of(), Optional.of(picture));
        object(out, figure, box.width(), box.height(), kind);
      } else {
        out.open("img", "class", kind, "alt", alt, "src", BookletHtml.data(picture));
      }
    }
  }
}
