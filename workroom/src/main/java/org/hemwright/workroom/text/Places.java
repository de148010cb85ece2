package org.hemwright.workroom.text;

import com.fasterxml.jackson.databind.node.ArrayNode;
import java.util.List;
import org.hemwright.draft.syntax.Document;
import org.hemwright.draft.syntax.Source;
import org.hemwright.draft.syntax.Span;
import org.hemwright.draft.syntax.Statement;

/**
 * Where each thing that can be selected is said in the document: {@code [name, kind, from, to,
 * line]}, offsets in UTF-16 units, in the order of the text.
 */
final class Places {
  private final Source source;
  private final ArrayNode places;

  private Places(Source source, ArrayNode places) {
    this.source = source;
    this.places = places;
  }

  static void write(Document document, ArrayNode places) {
    Places all = new Places(Source.of(document), places);
    document.statements().forEach(all::statement);
  }

  private void statement(Statement statement) {
    if (statement instanceof Statement.PieceSection piece) {
      section(piece.name().text(), "piece", piece.span(), piece.body());
    } else if (statement instanceof Statement.PartSection part) {
      section(part.name().text(), "part", part.span(), part.body());
    } else if (statement instanceof Statement.SeamSection seam) {
      section(seam.name().text(), "seam", seam.span(), seam.body());
    } else if (statement instanceof Statement.FabricSection fabric) {
      add(fabric.name().text(), "fabric", fabric.span());
    } else if (statement instanceof Statement.Elastic elastic) {
      add(elastic.name().text(), "elastic", elastic.span());
    } else if (statement instanceof Statement.Definition definition) {
      add(definition.name().text(), kind(definition), statement.span());
    }
  }

  private void section(String name, String kind, Span span, List<Statement> body) {
    add(name, kind, span);
    int notch = 0;
    for (Statement line : body) {
      if (line instanceof Statement.Outline outline) {
        for (Statement.OutlineEdge edge : outline.edges()) {
          add(name + "." + edge.name().text(), "edge", edge.span());
        }
      } else if (line instanceof Statement.Rectangle rectangle) {
        rectangle.edges().forEach(edge -> add(name + "." + edge.text(), "edge", rectangle.span()));
      } else if (line instanceof Statement.NotchAt notched) {
        add(name + "#" + notch++, "notch", notched.span());
      } else if (line instanceof Statement.Grain grain) {
        add(name + ".grain", "grain", grain.span());
      } else if (line instanceof Statement.Definition definition) {
        add(name + "." + definition.name().text(), kind(definition), line.span());
      }
    }
  }

  private static String kind(Statement.Definition definition) {
    if (definition instanceof Statement.Dial) {
      return "dial";
    } else if (definition instanceof Statement.Point) {
      return "point";
    } else if (definition instanceof Statement.Path) {
      return "path";
    } else if (definition instanceof Statement.Level) {
      return "level";
    }
    return definition instanceof Statement.Let || definition instanceof Statement.Solve
        ? "number"
        : "line";
  }

  private void add(String name, String kind, Span span) {
    places
        .addArray()
        .add(name)
        .add(kind)
        .add(span.start())
        .add(span.end())
        .add(source.line(span.start()));
  }
}
