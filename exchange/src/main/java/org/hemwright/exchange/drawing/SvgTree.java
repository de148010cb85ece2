package org.hemwright.exchange.drawing;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.hemwright.pattern.finding.Origin;

/** Reads the elements of a file; a file can name nothing outside itself. */
final class SvgTree {
  static final int MOST_ELEMENTS = 50_000;
  static final int DEEPEST = 100;

  private static final String SVG = "http://www.w3.org/2000/svg";

  private final String file;
  private final XMLStreamReader reader;
  private int count;

  private SvgTree(String file, XMLStreamReader reader) {
    this.file = file;
    this.reader = reader;
  }

  static SvgElement root(String file, String text) {
    refuseEntities(file, text);
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    factory.setXMLResolver(
        (publicId, systemId, base, namespace) -> {
          throw new XMLStreamException("nothing outside the file is read");
        });
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(text));
      try {
        return new SvgTree(file, reader).read();
      } finally {
        reader.close();
      }
    } catch (XMLStreamException broken) {
      Location at = broken.getLocation();
      Origin origin =
          at == null
              ? new Origin(file, 1, 1)
              : new Origin(
                  file, Math.max(1, at.getLineNumber()), Math.max(1, at.getColumnNumber()));
      throw new DrawingRefused("drawing-broken", file, origin);
    }
  }

  private static void refuseEntities(String file, String text) {
    int doctype = text.indexOf("<!DOCTYPE");
    if (doctype < 0) {
      return;
    }
    int end = text.indexOf('>', doctype);
    int inside = text.indexOf('[', doctype);
    if (inside >= 0 && (end < 0 || inside < end)) {
      throw new DrawingRefused("drawing-entities", file, origin(file, text, inside));
    }
  }

  private static Origin origin(String file, String text, int at) {
    int line = (int) text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
    return new Origin(file, line, at - text.lastIndexOf('\n', at - 1));
  }

  private SvgElement read() throws XMLStreamException {
    Deque<SvgElement> open = new ArrayDeque<>();
    SvgElement root = null;
    while (reader.hasNext()) {
      switch (reader.next()) {
        case XMLStreamConstants.START_ELEMENT -> {
          SvgElement element = element();
          if (!open.isEmpty()) {
            open.peek().add(element);
          } else {
            root = element;
          }
          open.push(element);
          if (open.size() > DEEPEST) {
            throw new DrawingRefused("drawing-too-deep", file, here());
          }
        }
        case XMLStreamConstants.END_ELEMENT -> open.pop();
        case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
          if (!open.isEmpty()) {
            open.peek().addText(reader.getText());
          }
        }
        case XMLStreamConstants.ENTITY_REFERENCE ->
            throw new DrawingRefused("drawing-entities", file, here());
        case XMLStreamConstants.PROCESSING_INSTRUCTION -> {
          if ("xml-stylesheet".equals(reader.getPITarget())) {
            throw new DrawingRefused("drawing-outside", file, here()).with("what", "a style sheet");
          }
        }
        default -> {}
      }
    }
    if (root == null || !root.kind().equals("svg")) {
      throw new DrawingRefused("drawing-not-svg", file, new Origin(file, 1, 1));
    }
    return root;
  }

  private SvgElement element() {
    if (++count > MOST_ELEMENTS) {
      throw new DrawingRefused("drawing-too-many", file, here());
    }
    Map<String, String> attributes = new LinkedHashMap<>();
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String name = reader.getAttributeLocalName(i);
      boolean own =
          reader.getAttributeNamespace(i) == null || reader.getAttributeNamespace(i).isEmpty();
      if (own || name.equals("href") || name.equals("label")) {
        attributes.putIfAbsent(name, reader.getAttributeValue(i));
      }
    }
    String namespace = reader.getNamespaceURI();
    boolean drawn = namespace == null || namespace.isEmpty() || namespace.equals(SVG);
    return new SvgElement(drawn ? reader.getLocalName() : "", attributes, here());
  }

  private Origin here() {
    Location at = reader.getLocation();
    return new Origin(file, Math.max(1, at.getLineNumber()), Math.max(1, at.getColumnNumber()));
  }
}
