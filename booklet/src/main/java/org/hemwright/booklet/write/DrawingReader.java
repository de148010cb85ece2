package org.hemwright.booklet.write;

import java.io.ByteArrayInputStream;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads an SVG drawing through, before it is painted or handed on: it may hold nothing that acts or
 * that reaches beyond the drawing itself.
 */
final class DrawingReader {
  private static final Set<String> ACTING =
      Set.of("script", "foreignobject", "iframe", "object", "embed", "audio", "video", "handler");
  private static final Set<String> POINTING = Set.of("href", "src", "data", "action");

  private DrawingReader() {}

  /**
   * What a drawing says of itself.
   *
   * @param title of the whole drawing; empty where it has none
   */
  record Drawing(String title) {}

  /** What is wrong with a drawing, as the last part of a message's key. */
  @SuppressWarnings("serial")
  static final class Refused extends Exception {
    Refused(String reason) {
      super(reason);
    }
  }

  /** Reads a drawing. */
  static Drawing read(byte[] bytes) throws Refused {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    StringBuilder title = new StringBuilder();
    StringBuilder style = new StringBuilder();
    int depth = 0;
    String within = "";
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new ByteArrayInputStream(bytes));
      while (reader.hasNext()) {
        switch (reader.next()) {
          case XMLStreamConstants.START_ELEMENT -> {
            String name = reader.getLocalName().toLowerCase(Locale.ROOT);
            if (depth == 0 && !name.equals("svg")) {
              throw new Refused("unreadable");
            }
            element(reader, name);
            depth++;
            within = name.equals("title") && depth > 2 ? "" : name;
          }
          case XMLStreamConstants.END_ELEMENT -> {
            depth--;
            within = "";
          }
          case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
            if (within.equals("title")) {
              title.append(reader.getText());
            } else if (within.equals("style")) {
              style.append(reader.getText()).append(' ');
            }
          }
          case XMLStreamConstants.ENTITY_REFERENCE -> throw new Refused("unreadable");
          default -> {}
        }
      }
    } catch (XMLStreamException broken) {
      throw new Refused("unreadable");
    }
    styled(style.toString());
    return new Drawing(title.toString().strip().replaceAll("\\s+", " "));
  }

  private static void element(XMLStreamReader reader, String name) throws Refused {
    if (ACTING.contains(name)) {
      throw new Refused("acts");
    }
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String attribute = reader.getAttributeLocalName(i).toLowerCase(Locale.ROOT);
      String value = reader.getAttributeValue(i).strip();
      if (attribute.startsWith("on")) {
        throw new Refused("acts");
      }
      boolean link = name.equals("a");
      if (POINTING.contains(attribute) && !link && !isWithin(value)) {
        throw new Refused("reaches");
      }
      if (link && value.toLowerCase(Locale.ROOT).startsWith("javascript:")) {
        throw new Refused("acts");
      }
      styled(value);
    }
  }

  /** A part of the drawing, or a picture that lies in it. */
  private static boolean isWithin(String value) {
    return value.isEmpty()
        || value.startsWith("#")
        || value.startsWith("data:image/png")
        || value.startsWith("data:image/jpeg");
  }

  private static void styled(String css) throws Refused {
    String plain = css.toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
    if (plain.contains("@import")) {
      throw new Refused("reaches");
    }
    for (int at = plain.indexOf("url("); at >= 0; at = plain.indexOf("url(", at + 1)) {
      String value = plain.substring(at + 4).replaceFirst("^[\"']", "");
      if (!isWithin(value)) {
        throw new Refused("reaches");
      }
    }
  }

  /** The title of a drawing; absent where it has none or is refused. */
  static Optional<String> title(byte[] bytes) {
    try {
      String title = read(bytes).title();
      return title.isEmpty() ? Optional.empty() : Optional.of(title);
    } catch (Refused refused) {
      return Optional.empty();
    }
  }
}
