package org.hemwright.booklet.write;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.render.DefaultObjectDrawerFactory;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.hemwright.booklet.leaf.Block;
import org.hemwright.booklet.leaf.Booklet;
import org.hemwright.booklet.leaf.Inline;
import org.hemwright.booklet.leaf.Section;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.pdf.PdfFacts;
import org.hemwright.paper.sheet.DocumentFacts;

/** The booklet as a tagged PDF file (PDF/UA-1, ISO 14289-1). */
public final class BookletPdf {
  private static final String STYLE = Styles.file("print.css");
  private static final String LARGE = Styles.file("large.css");
  private static final int FEW_BLOCKS = 5;
  private static final int FEW_ROWS = 26;

  static {
    XRLog.setLoggingEnabled(false);
  }

  private final Booklet booklet;
  private final PrintForm form;
  private final Optional<String> proof;
  private final OnPaper paper;

  private BookletPdf(Booklet booklet, PrintForm form, Optional<String> proof) {
    this.booklet = booklet;
    this.form = form;
    this.proof = proof;
    this.paper = new OnPaper(form);
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
      PrintedFonts.put(builder, document, booklet.type());
      builder.useUriResolver(
          (base, uri) -> uri.startsWith("data:") || uri.startsWith("#") ? uri : null);
      DefaultObjectDrawerFactory drawers = new DefaultObjectDrawerFactory();
      drawers.registerDrawer(OnPaper.FIGURE, paper.new Drawer());
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
    String family =
        booklet.type().isOurs() ? PrintedFonts.OURS : Fonts.WORDS + ", " + PrintedFonts.OURS;
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
}
