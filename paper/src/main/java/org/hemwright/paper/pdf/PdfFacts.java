package org.hemwright.paper.pdf;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.hemwright.paper.markup.Markup;
import org.hemwright.paper.sheet.DocumentFacts;

/**
 * What a PDF file says of itself, twice over: in its information dictionary (ISO 32000-1, 14.3.3)
 * and as an XMP packet (ISO 16684-1).
 *
 * @param accessible whether the file claims to hold to PDF/UA-1 (ISO 14289-1)
 */
public record PdfFacts(DocumentFacts facts, boolean accessible) {
  /** The program that writes the files. */
  public static final String PRODUCER = "Hemwright";

  /** What ends the description's tag where the claim is made, and the claim. */
  private static final String CLAIM =
      """

          xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
         <pdfuaid:part>1</pdfuaid:part>\
      """;

  /** Puts the facts and the language into a file. */
  public void inform(PDDocument document) {
    Calendar dated = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
    dated.clear();
    dated.set(
        facts.dated().getYear(), facts.dated().getMonthValue() - 1, facts.dated().getDayOfMonth());
    PDDocumentInformation information = new PDDocumentInformation();
    information.setTitle(facts.title());
    information.setAuthor(facts.author());
    information.setSubject(facts.about());
    information.setCreator(PRODUCER);
    information.setProducer(PRODUCER);
    information.setCreationDate(dated);
    information.setModificationDate(dated);
    document.setDocumentInformation(information);
    document.getDocumentCatalog().setLanguage(facts.language());
  }

  /**
   * Puts the packet into a file.
   *
   * @throws IOException where the file cannot take it
   */
  public void packet(PDDocument document) throws IOException {
    PDMetadata metadata = new PDMetadata(document);
    metadata.importXMPMetadata(xmp().getBytes(StandardCharsets.UTF_8));
    document.getDocumentCatalog().setMetadata(metadata);
  }

  private String xmp() {
    String date = facts.dated() + "T00:00:00Z";
    return """
    <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
    <x:xmpmeta xmlns:x="adobe:ns:meta/">
     <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
      <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
        xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"%s
       <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
       <dc:creator><rdf:Seq><rdf:li>%s</rdf:li></rdf:Seq></dc:creator>
       <dc:description><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:description>
       <dc:language><rdf:Bag><rdf:li>%s</rdf:li></rdf:Bag></dc:language>
       <xmp:CreateDate>%s</xmp:CreateDate>
       <xmp:ModifyDate>%s</xmp:ModifyDate>
       <xmp:CreatorTool>%s</xmp:CreatorTool>
       <pdf:Producer>%s</pdf:Producer>
      </rdf:Description>
     </rdf:RDF>
    </x:xmpmeta>
    <?xpacket end="w"?>
    """
        .formatted(
            accessible ? CLAIM : ">",
            Markup.escaped(facts.title()),
            Markup.escaped(facts.author()),
            Markup.escaped(facts.about()),
            Markup.escaped(facts.language()),
            date,
            date,
            PRODUCER,
            PRODUCER);
  }
}
