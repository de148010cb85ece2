package org.hemwright.booklet.prose;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.hemwright.booklet.words.OwnWords;

/** Reads the tables of two columns under {@code # Words}: what the document says, and how here. */
public final class OwnWordsReader {
  /** The part of a text that holds them. */
  static final String PART = "words";

  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  private OwnWordsReader() {}

  /** The words of a text; none where it has no such part. */
  public static OwnWords read(String text) {
    Map<String, String> said = new LinkedHashMap<>();
    boolean here = false;
    for (Node node = PARSER.parse(text).getFirstChild(); node != null; node = node.getNext()) {
      if (node instanceof Heading heading && heading.getLevel() == 1) {
        here = ProseReader.partNamed(plain(heading)).equals(PART);
      } else if (here && node instanceof TableBlock table) {
        rows(table, said);
      }
    }
    return new OwnWords(said);
  }

  private static void rows(CustomBlock table, Map<String, String> said) {
    for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
      for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
        if (part instanceof TableBody
            && row instanceof TableRow
            && row.getFirstChild() instanceof TableCell first
            && first.getNext() instanceof TableCell second
            && !plain(second).isBlank()) {
          said.put(plain(first), plain(second));
        }
      }
    }
  }

  private static String plain(Node node) {
    StringBuilder text = new StringBuilder();
    node.accept(
        new AbstractVisitor() {
          @Override
          public void visit(Text part) {
            text.append(part.getLiteral());
          }

          @Override
          public void visit(Code part) {
            text.append(part.getLiteral());
          }

          @Override
          public void visit(SoftLineBreak part) {
            text.append(' ');
          }
        });
    return text.toString();
  }
}
